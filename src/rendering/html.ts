import type { Root } from 'hast';
import rehypeStringify from 'rehype-stringify';
import { unified } from 'unified';

const stringifier = unified()
  .use(rehypeStringify, { omitOptionalTags: false, characterReferences: { useNamedReferences: false } })
  .freeze();

/** A whole page as the bytes of its file. UTF-8, one newline at the end. */
export function htmlBytes(page: Root): Uint8Array {
  return new TextEncoder().encode(`${stringifier.stringify(page)}\n`);
}
