import { execFile } from 'node:child_process';
import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';

/** Nothing but the page: no first-run questions, no requests of the browser's own. */
const flags: readonly string[] = [
  '--headless',
  '--disable-gpu',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-extensions',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-pdf-header-footer',
];
/** A page takes about two seconds; a browser that hangs is not waited for. */
const patience = 120_000;

/**
 * Prints one page as a PDF, in the size that the page itself says.
 *
 * @param folder  For the browser's own files; thrown away afterwards by whoever made it.
 * @returns Why there is no PDF: the last line of what the browser said. Undefined where there is one.
 */
export async function printPdf(
  chromium: string,
  page: string,
  pdf: string,
  folder: string,
): Promise<string | undefined> {
  const args = [
    ...flags,
    ...ofRoot(),
    `--user-data-dir=${join(folder, 'browser')}`,
    `--print-to-pdf=${pdf}`,
    pathToFileURL(page).href,
  ];
  const trouble = await promisify(execFile)(chromium, args, { timeout: patience, maxBuffer: 1e8 }).then(
    ({ stderr }) => stderr,
    (error: unknown) => (error instanceof Error ? error.message : String(error)),
  );
  return (await isPdf(pdf)) ? undefined : (trouble.trim().split('\n').at(-1) ?? '');
}

/** The browser refuses to run as root inside its sandbox; its pages here are ours alone. */
function ofRoot(): readonly string[] {
  return process.getuid?.() === 0 ? ['--no-sandbox'] : [];
}

async function isPdf(path: string): Promise<boolean> {
  const file = await open(path).catch(() => undefined);
  if (!file) return false;
  const { buffer } = await file.read(Buffer.alloc(5), 0, 5, 0);
  await file.close();
  return buffer.toString('latin1') === '%PDF-';
}
