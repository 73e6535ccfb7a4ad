import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import rehypeStringify from 'rehype-stringify';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import { unified } from 'unified';
import { bench, describe } from 'vitest';
import { preparePictures } from '../../src/publishing/pictures/pictures.ts';
import { makeSite } from '../../src/publishing/site.ts';
import { manualFiles, shippedFiles } from '../../src/publishing/disk/shipped.ts';
import { loadFolder } from '../../src/reading/from-disk.ts';
import { read } from '../../src/reading/read.ts';
import { runChecks } from '../../src/checks/checks.ts';

const today = '2026-11-25';
const folder = fileURLToPath(new URL('../../content/quillmoor', import.meta.url));
const { files } = await loadFolder(folder);
const proses = [...files.keys()]
  .filter((path) => path.endsWith('guide.md'))
  .map((path) => readFileSync(`${folder}/${path}`, 'utf8'));
const once = read(files);
const { workspace, origins, unread, files: beside } = once;
const pictures = await preparePictures(once);
if ('refused' in pictures) throw new Error(JSON.stringify(pictures.refused));
const [shipped, manual] = await Promise.all([shippedFiles(), manualFiles()]);
const bare = unified().use(remarkParse).use(remarkRehype).use(rehypeStringify);

/** What each part of making the demo's site costs, beside merely parsing and stringifying its Markdown. */
describe('the demo, from files to pages', () => {
  bench('its Markdown parsed and stringified, no more', () => {
    for (const text of proses) bare.processSync(text.replace(/^---[\s\S]*?\n---\n/, ''));
  });
  bench('read', () => {
    read(files);
  });
  bench('checked', () => {
    runChecks({ workspace: workspace!, origins, unread, files: beside, today });
  });
  bench('planned and made into pages', () => {
    makeSite({ read: once, pictures, today, shipped, manual });
  });
});
