import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { preparePictures } from '../../src/publishing/pictures/pictures.ts';
import { makeSite } from '../../src/publishing/site.ts';
import { read } from '../../src/reading/read.ts';
import { shippedNow } from '../publishing/demo-site.ts';
import { writeAll } from './write-all.ts';

/** A site of a few small guides on the disk, for suites that want more than one edition of a guide. */
export interface SmallSite {
  readonly address: (path: string) => string;
  readonly remove: () => void;
}

/** @param guides  The text of each `guide.md`, by the guide's id. */
export async function smallSite(guides: Readonly<Record<string, string>>, at?: string): Promise<SmallSite> {
  const text = (lines: string): Uint8Array => new TextEncoder().encode(lines);
  const program = text('name: Invented Skills Room\ncurrency: GBP\ntime-zone: Europe/London\n');
  const files = Object.entries(guides).map(([id, guide]) => [`guides/${id}/guide.md`, text(guide)] as const);
  const workspace = read(new Map([['program.yaml', program], ...files]));
  if (workspace.diagnostics.length > 0) throw new Error(JSON.stringify(workspace.diagnostics));
  const pictures = await preparePictures(workspace);
  if ('refused' in pictures) throw new Error(JSON.stringify(pictures));
  const shipped = await shippedNow();
  const site = makeSite({ read: workspace, pictures, today: '2026-11-25', shipped, editions: ['trainees'] });
  if ('refused' in site) throw new Error(JSON.stringify(site));
  const folder = at ?? mkdtempSync(join(tmpdir(), 'benchwright-small-'));
  writeAll(folder, site);
  return {
    address: (path) => `${pathToFileURL(folder).href}/trainees/${path}`,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
