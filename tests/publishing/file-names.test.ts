import { describe, expect, it } from 'vitest';
import { preparePictures } from '../../src/publishing/pictures/pictures.ts';
import { makeSite } from '../../src/publishing/site.ts';
import { read } from '../../src/reading/read.ts';
import { demoSite, shippedNow, today } from './demo-site.ts';

/** Names that Windows keeps for devices, whatever ends them. @source Microsoft Learn, "Naming Files, Paths, and Namespaces" (from memory). */
const reserved = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;
/** Small letters of ASCII, digits, `-` and `_`, points within: no system and no archive writes these in another way. */
const safe = /^[a-z0-9_-]+(\.[a-z0-9_-]+)*$/;

/** Names that some system, archive or server would refuse, change, or take for another. */
function unsafeNames(paths: readonly string[]): readonly string[] {
  const parts = (path: string): readonly string[] => path.split('/');
  const folded = paths.map((path) => path.toLowerCase());
  return paths.filter(
    (path, i) =>
      path.length >= 120 ||
      parts(path).some((part) => !safe.test(part) || reserved.test(part)) ||
      folded.indexOf(folded[i]!) !== i,
  );
}

describe('the names of published files', () => {
  it('can be zipped, unzipped and served anywhere: plain letters, under 120 of them, no two alike but for capitals', async () => {
    const paths = [...(await demoSite()).keys()];
    expect(paths.length).toBeGreaterThan(200);
    expect(unsafeNames(paths)).toEqual([]);
  }, 60_000);

  it('are so whatever an author calls a picture', async () => {
    const text = (lines: string): Uint8Array => new TextEncoder().encode(lines);
    const drawing = text('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 6"><path d="M0 0"/></svg>');
    const odd = [
      'Bench (1).svg',
      'bench (1).SVG',
      'Säge & Brett.svg',
      `${'long '.repeat(30)}.svg`,
      'con.svg',
    ];
    const guide = [
      '---\ntitle: Practice strap\nstatus: draft\nmaterials: []\nsteps:\n  - id: tie-it\n    hands-on: 5 min\n---\n',
      '## Tie it\n\nTie it.\n',
      ...odd.map((file) => `![The strap, tied](${encodeURI(file).replace(/[()]/g, '\\$&')})\n`),
    ].join('\n');
    const workspace = read(
      new Map([
        ['program.yaml', text('name: Invented Skills Room\ncurrency: GBP\ntime-zone: Europe/London\n')],
        ['guides/strap/guide.md', text(guide)],
        ...odd.map((file) => [`guides/strap/${file}`, drawing] as const),
      ]),
    );
    const pictures = await preparePictures(workspace);
    if ('refused' in pictures) throw new Error(JSON.stringify(pictures.refused));
    const site = makeSite({ read: workspace, pictures, today, shipped: await shippedNow() });
    if ('refused' in site) throw new Error(JSON.stringify(site.refused));
    const paths = [...site.keys()];
    expect(paths.filter((path) => /strap\/[^/]+\.svg$/.test(path))).toHaveLength(2 * odd.length);
    expect(unsafeNames(paths)).toEqual([]);
  }, 60_000);

  it('would be found out', () => {
    expect(unsafeNames(['a.svg', 'A.svg'])).toEqual(['A.svg']);
    expect(
      unsafeNames(['a b.svg', 'x/con.svg', `${'x'.repeat(120)}`, 'ä.svg', 'a./b.svg', 'x/a.svg']),
    ).toEqual(['a b.svg', 'x/con.svg', 'x'.repeat(120), 'ä.svg', 'a./b.svg']);
  });
});
