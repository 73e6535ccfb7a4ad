import type { Root } from 'hast';
import { toHtml } from 'hast-util-to-html';

/** A whole page as the bytes of its file. UTF-8, one newline at the end. */
export function htmlBytes(page: Root): Uint8Array {
  return new TextEncoder().encode(
    `${toHtml(page, { omitOptionalTags: false, characterReferences: { useNamedReferences: false } })}\n`,
  );
}
