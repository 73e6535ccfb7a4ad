import { mkdtempSync, rmSync } from 'node:fs';
import { type Server, createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { PageData } from '../../src/core/plan/own/page-data.ts';
import type { Workspace } from '../../src/core/model/workspace.ts';
import type { Files } from '../../src/publishing/paths/files.ts';
import { makeSite } from '../../src/publishing/site.ts';
import { picturesNow, readDemo, shippedNow, today } from '../publishing/demo-site.ts';
import { writeAll } from './write-all.ts';

/** Two guides of the demo, one with levels and one with parts, on the disk and on a server of this machine. */
export interface PlannerSite {
  readonly onDisk: string;
  readonly onServer: string;
  /** What the page of a guide has to plan with, the whole workspace at hand. */
  readonly data: (guide: string, level?: string) => PageData;
  readonly remove: () => void;
}

export async function plannerSite(guides: readonly string[]): Promise<PlannerSite> {
  const whole = await readDemo();
  const workspace = withGuides(whole.workspace!, guides);
  const read = { ...whole, workspace };
  const [pictures, shipped] = await Promise.all([picturesNow(read), shippedNow()]);
  const site = makeSite({ read, pictures, today, shipped, editions: ['trainees'] });
  if ('refused' in site) throw new Error(JSON.stringify(site.refused));
  const folder = mkdtempSync(join(tmpdir(), 'benchwright-planner-'));
  writeAll(folder, site);
  const server = await served(site);
  const { port } = server.address() as AddressInfo;
  return {
    onDisk: `${pathToFileURL(folder).href}/trainees/guides`,
    onServer: `http://127.0.0.1:${port}/trainees/guides`,
    data: (guide, level) => ({ guide, today, workspace, ...(level === undefined ? {} : { level }) }),
    remove: () => {
      server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function withGuides(workspace: Workspace, ids: readonly string[]): Workspace {
  const guides = Object.entries(workspace.guides).filter(([id]) => ids.includes(id));
  return { ...workspace, guides: Object.fromEntries(guides), modules: {} };
}

const kinds: Readonly<Record<string, string>> = {
  html: 'text/html',
  css: 'text/css',
  js: 'text/javascript',
  svg: 'image/svg+xml',
};

function served(site: Files): Promise<Server> {
  const server = createServer(({ url = '' }, answer) => {
    const path = new URL(url, 'http://here').pathname.slice(1);
    const bytes = site.get(path);
    const kind = kinds[path.split('.').at(-1)!] ?? 'application/octet-stream';
    // Browsers ask every host for an icon.
    const status = bytes ? 200 : path === 'favicon.ico' ? 204 : 404;
    answer.writeHead(status, { 'content-type': kind }).end(bytes);
  });
  return new Promise((ready) => server.listen(0, '127.0.0.1', () => ready(server)));
}
