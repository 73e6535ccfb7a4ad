import { existsSync, mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, it } from 'vitest';
import own from '../../package.json' with { type: 'json' };

/** No more than what a page of ours needs: the package's own flags would switch web security off. */
const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** The Chromium that `CHROMIUM` names, else the system's, else the one that the development packages bring. */
async function chromiumPath(): Promise<string | undefined> {
  const known = [
    process.env['CHROMIUM'],
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
  ];
  const found = known.find((path) => path !== undefined && existsSync(path));
  return found ?? packagedChromium().catch(() => undefined);
}

/** It unpacks itself into the temporary folder and takes any file of its name there for its own: so a folder a version. */
async function packagedChromium(): Promise<string> {
  const version = own.devDependencies['@sparticuz/chromium'];
  const before = process.env['TMPDIR'];
  const folder = join(tmpdir(), `benchwright-chromium-${version}`);
  mkdirSync(folder, { recursive: true });
  process.env['TMPDIR'] = folder;
  try {
    const packaged = await import('@sparticuz/chromium');
    return await packaged.default.executablePath();
  } finally {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
  }
}

async function start(): Promise<Browser> {
  const executablePath = await chromiumPath();
  if (executablePath === undefined) throw new Error('no Chromium is here');
  return chromium.launch({ executablePath, args: flags, timeout: 60_000 });
}

/**
 * A suite that needs a real Chromium. Where none can start, it says what was skipped; where `CI` is set, it fails.
 *
 * @param body  Takes a function that gives the browser once the suite runs.
 */
export async function inChromium(name: string, body: (browser: () => Browser) => void): Promise<void> {
  let trouble = '';
  const probe = await start().catch((error: unknown) => {
    trouble = error instanceof Error ? error.message.split('\n')[0]! : String(error);
    return undefined;
  });
  await probe?.close();
  if (!probe && !process.env['CI']) {
    console.warn(`skipped, since no Chromium could start (${trouble}): ${name}`);
    describe.skip(name, () => body(() => undefined as never));
    return;
  }
  describe(name, () => {
    let browser: Browser | undefined;
    beforeAll(async () => {
      browser = await start();
    }, 120_000);
    afterAll(() => browser?.close());
    if (probe) body(() => browser!);
    else it('finds a Chromium', () => Promise.reject(new Error(trouble)));
  });
}
