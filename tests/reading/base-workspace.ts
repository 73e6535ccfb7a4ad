import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { read, type ReadWorkspace } from '../../src/reading/read.ts';

const folder = fileURLToPath(new URL('../cases/base', import.meta.url));

/** The files of the sound workspace of the cases. */
export const baseFiles: ReadonlyMap<string, Uint8Array> = new Map(
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => [path.slice(folder.length + 1), new Uint8Array(readFileSync(path))]),
);

export const guideFile = 'guides/needle-block/guide.md';
export const moduleFile = 'modules/first-access/module.md';
export const textOf = (file: string): string => new TextDecoder().decode(baseFiles.get(file));

/** The base with some files in place of its own. */
export function readWith(files: Readonly<Record<string, string | Uint8Array>>): ReadWorkspace {
  const bytes = Object.entries(files).map(([name, content]) => [name, toBytes(content)] as const);
  return read(new Map([...baseFiles, ...bytes]));
}

/** A guide of a few lines, for what only the front matter or the prose decides. */
export function readGuide(matter: string, prose = ''): ReadWorkspace {
  return readWith({ 'guides/small/guide.md': `---\ntitle: Small\n${matter}---\n${prose}` });
}

function toBytes(content: string | Uint8Array): Uint8Array {
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}

export const codesOf = ({ diagnostics }: ReadWorkspace): readonly string[] =>
  diagnostics.map(({ code, variant }) => (variant ? `${code}.${variant}` : code));
