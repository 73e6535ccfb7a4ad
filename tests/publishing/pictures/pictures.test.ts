import { beforeAll, describe, expect, it } from 'vitest';
import { type Pictures, preparePictures } from '../../../src/publishing/pictures/pictures.ts';
import type { Files } from '../../../src/publishing/paths/files.ts';
import { makeSite } from '../../../src/publishing/site.ts';
import { read, type ReadWorkspace } from '../../../src/reading/read.ts';
import { showDiagnostic } from '../../../src/showing/terminal/diagnostic.ts';
import { tagsOf } from '../html.ts';
import { phonePhoto } from '../photos.ts';

const text = (lines: string): Uint8Array => new TextEncoder().encode(lines);
const drawing = text('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 6"><path d="M0 0"/></svg>');

/** A guide of one step that shows some files of its folder. */
function workspaceWith(files: Readonly<Record<string, Uint8Array>>): ReadWorkspace {
  const shown = Object.keys(files).map((file) => `![What ${file} shows](${encodeURI(file)})\n`);
  const guide = [
    '---\ntitle: Practice strap\nstatus: draft\nmaterials: []\nsteps:\n  - id: tie-it\n    hands-on: 5 min\n---\n',
    ...shown.slice(0, 1),
    '## Tie it\n',
    'Tie it.\n',
    ...shown.slice(1),
  ].join('\n');
  const beside = Object.entries(files).map(([name, bytes]) => [`guides/strap/${name}`, bytes] as const);
  return read(
    new Map([
      ['program.yaml', text('name: Invented Skills Room\ncurrency: GBP\ntime-zone: Europe/London\n')],
      ['guides/strap/guide.md', text(guide)],
      ...beside,
    ]),
  );
}

async function prepared(workspace: ReadWorkspace): Promise<Pictures> {
  const pictures = await preparePictures(workspace);
  if ('refused' in pictures) throw new Error(pictures.refused.map(showDiagnostic).join('\n'));
  return pictures;
}

describe('the pictures of a guide', () => {
  let files: Files = new Map();
  let images: readonly Readonly<Record<string, string>>[] = [];
  beforeAll(async () => {
    const workspace = workspaceWith({
      'Pour 1.JPG': await phonePhoto(2000, 1500, 6),
      'pour-1.png': await phonePhoto(400, 300),
      'plan.svg': drawing,
    });
    expect(workspace.diagnostics).toEqual([]);
    const site = makeSite({
      read: workspace,
      pictures: await prepared(workspace),
      today: '2026-11-25',
      shipped: new Map(),
      editions: ['trainees'],
    });
    if ('refused' in site) throw new Error(JSON.stringify(site.refused));
    files = site;
    const page = new TextDecoder().decode(files.get('trainees/guides/strap/index.html'));
    images = tagsOf(page).flatMap(({ name, attributes }) => (name === 'img' ? [attributes] : []));
  });

  it('lie beside its page under plain names, photos at each width', () => {
    const names = [...files.keys()].filter((path) => /\.(jpg|png|svg)$/.test(path));
    expect(names.map((path) => path.replace('trainees/guides/strap/', ''))).toEqual([
      'plan.svg',
      'pour-1-1440.jpg',
      'pour-1-480.jpg',
      'pour-1-960.jpg',
      'pour-1.jpg',
    ]);
  });

  it('say their size and their widths', () => {
    expect(images.map(({ src, srcset, width, height }) => [src, srcset, width, height])).toEqual([
      ['pour-1-1440.jpg', 'pour-1-480.jpg 480w, pour-1-960.jpg 960w, pour-1-1440.jpg 1440w', '1440', '1080'],
      ['pour-1.jpg', undefined, '400', '300'],
      ['plan.svg', undefined, '9', '6'],
    ]);
  });

  it('load as they come near, but for the first', () => {
    expect(images.map(({ loading, decoding }) => [loading, decoding])).toEqual([
      [undefined, 'async'],
      ['lazy', 'async'],
      ['lazy', 'async'],
    ]);
  });

  it('that no guide names stay at home', async () => {
    const workspace = workspaceWith({ 'shown.svg': drawing });
    const more = {
      ...workspace,
      files: { ...workspace.files, 'guides/strap/private.jpg': await phonePhoto(60, 40) },
    };
    expect([...(await prepared(more)).keys()]).toEqual(['guides/strap/shown.svg']);
  });
});

describe('making pictures ready', () => {
  it('says which photo of how many is begun, and counts no drawing', async () => {
    const photo = await phonePhoto(60, 40);
    const told: string[] = [];
    await preparePictures(
      workspaceWith({ 'a.svg': drawing, 'b.jpg': photo, 'c.jpg': photo, 'd.jpg': photo }),
      (done, all) => told.push(`${done} of ${all}`),
    );
    expect(told).toEqual(['1 of 3', '2 of 3', '3 of 3']);
  });

  it('tells every picture that cannot be published, by file and line, and what to do', async () => {
    const photo = await phonePhoto(640, 480);
    const broken = await preparePictures(
      workspaceWith({
        'fine.jpg': photo,
        'half.jpg': photo.subarray(0, photo.length / 2),
        'open.svg': text('<svg viewBox="0 0 9 6"><g></svg>'),
      }),
    );
    if (!('refused' in broken)) throw new Error('nothing was refused');
    expect(`\n${broken.refused.map(showDiagnostic).join('\n')}\n`).toMatchInlineSnapshot(`
      "
      The photo half.jpg is broken: it cannot be read to its end.
        guides/strap/guide.md:16:1     ![What half.jpg shows](half.jpg)
                                       ================================
      Why    Most often it was copied only in part.
      Write  a whole copy in its place
      error, picture-broken
      The drawing open.svg is not sound SVG, so it is not published.
        guides/strap/guide.md:18:1     ![What open.svg shows](open.svg)
                                       ================================
      Why    Each tag has to be closed in its turn, values stand in quotes, and no
             names may be declared in it.
      Write  the drawing again from its program, saved as plain SVG
      error, picture-broken
      "
    `);
  });
});
