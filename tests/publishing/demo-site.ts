import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { type Pictures, preparePictures } from '../../src/publishing/pictures/pictures.ts';
import type { Edition, Files } from '../../src/publishing/paths/files.ts';
import { makeSite } from '../../src/publishing/site.ts';
import { readFolder } from '../../src/reading/from-disk.ts';
import type { ReadWorkspace } from '../../src/reading/read.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
export const today = '2026-11-25';

/** The demo workspace, read. */
export function readDemo(): Promise<ReadWorkspace> {
  return readFolder(join(root, 'content/quillmoor'));
}

/** The site of the demo workspace, with the styles, scripts and fonts as they are in the sources now. */
export async function demoSite(editions?: readonly Edition[]): Promise<Files> {
  const [read, shipped, manual] = await Promise.all([readDemo(), shippedNow(), manualNow()]);
  const pictures = await picturesNow(read);
  const site = makeSite({ read, pictures, today, shipped, manual, ...(editions ? { editions } : {}) });
  if ('refused' in site) throw new Error(JSON.stringify(site.refused));
  return site;
}

export async function picturesNow(read: ReadWorkspace): Promise<Pictures> {
  const pictures = await preparePictures(read);
  if ('refused' in pictures) throw new Error(JSON.stringify(pictures.refused));
  return pictures;
}

export async function manualNow(): Promise<Files> {
  const folder = join(root, 'content/manual');
  const names = (await readdir(folder)).filter((name) => name.endsWith('.md'));
  return new Map(
    await Promise.all(names.map(async (name) => [name, await readFile(join(folder, name))] as const)),
  );
}

export async function shippedNow(): Promise<Files> {
  const entries = (await readdir(join(root, 'src/browser'))).filter((name) => name.endsWith('.entry.ts'));
  const names = entries.map((name) => name.replace('.entry.ts', ''));
  const styles = (await readdir(join(root, 'templates/styles'))).filter((name) => !name.startsWith('_'));
  const [sheets, scripts] = await Promise.all([
    Promise.all(styles.map(style)),
    Promise.all(names.map(script)),
  ]);
  const fonts = ['atkinson-hyperlegible-next', 'sofia-sans-condensed'];
  const faces = await Promise.all(
    fonts.map(async (name) => [`fonts/${name}.woff2`, await readFile(fontOf(name))] as const),
  );
  return new Map([
    ...styles.map((name, i) => [`styles/${name}`, sheets[i]!] as const),
    ...names.map((name, i) => [`scripts/${name}.js`, scripts[i]!] as const),
    ...faces,
  ]);
}

function fontOf(name: string): string {
  return join(root, `node_modules/@fontsource-variable/${name}/files/${name}-latin-wght-normal.woff2`);
}

async function style(name: string): Promise<Uint8Array> {
  const entryPoints = [join(root, `templates/styles/${name}`)];
  const made = await build({
    entryPoints,
    bundle: true,
    minify: true,
    external: ['../fonts/*'],
    write: false,
  });
  return made.outputFiles[0]!.contents;
}

async function script(name: string): Promise<Uint8Array> {
  const entryPoints = [join(root, `src/browser/${name}.entry.ts`)];
  const made = await build({
    entryPoints,
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    write: false,
  });
  return made.outputFiles[0]!.contents;
}
