import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { planQuery } from '../../../src/cli/plan-query.ts';
import type { PlanSettings } from '../../../src/core/plan/demand.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import { workspaceOf } from '../../../src/core/plan/own/workspace-of.ts';
import { settingsFrom } from '../../../src/exports/plan-address.ts';
import { printFiles } from '../../../src/publishing/print-files.ts';
import { sheetWords } from '../../../src/words/sheets.ts';
import { readDemo, today } from '../demo-site.ts';

const read = await readDemo();
const workspace = read.workspace!;
const guide = 'needle-block';
const line = { guide, level: 'shallow', wanted: 7 };
const quick = { today, effort: '1/50' };

/** What a phone reads from the code on the bench sheet of a plan. */
function scanned(settings: PlanSettings, values: Parameters<typeof planQuery>[3] = {}) {
  const plan = makePlan(workspace, [line], settings);
  if ('refused' in plan) throw new Error(JSON.stringify(plan.refused));
  const query = planQuery(line, plan, settings, values, workspace);
  const { files, sheets } = printFiles({ ...read, workspace }, [{ plan, query }], 'A4', ['bench-sheet']);
  const html = new TextDecoder().decode(files.get(sheets[0]!.path));
  const [, size, path] = /class="qr[^"]*" viewBox="0 0 (\d+) \d+".*?<path d="([^"]+)"/s.exec(html)!;
  return { html, address: new URL(decoded(Number(size), path!)) };
}

/** Modules of four by four pixels, as the path of the picture draws them. */
function decoded(size: number, path: string): string {
  const side = 4 * size;
  const pixels = new Uint8ClampedArray(4 * side * side).fill(255);
  for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)/g)) {
    for (let row = 4 * Number(y); row < 4 * Number(y) + 4; row++) {
      const from = 4 * (row * side + 4 * Number(x));
      for (let at = from; at < from + 16 * Number(run); at++) if (at % 4 !== 3) pixels[at] = 0;
    }
  }
  return jsQR(pixels, side, side)!.data;
}

const page = { guide, level: 'shallow', today, workspace: workspaceOf(workspace, guide) };

describe('the code on a printed sheet', () => {
  it('leads to the page with the settings of the sheet', () => {
    const { html, address } = scanned(
      { ...quick, builders: 3, start: '2026-11-30T09:00' },
      { units: 'both' },
    );
    const { settings, unread } = settingsFrom(address.search, page);
    expect(unread).toEqual([]);
    expect(settings).toEqual({ batch: 7, builders: 3, start: '2026-11-30T09:00', units: 'both' });
    expect(html).toContain(sheetWords.scanPlan);
  });

  it('counts spares among the good models, and keeps what is at hand of its own materials', () => {
    const stock = { 'gelatin-powder': { value: '240', unit: 'g' }, 'felt-3mm': { value: '1', unit: '' } };
    const { address } = scanned({ ...quick, spares: '1/10', stock });
    const { settings } = settingsFrom(address.search, page);
    expect(settings).toEqual({ batch: 8, stock: { 'gelatin-powder': stock['gelatin-powder'] } });
  });

  it('leads to the page alone where the settings would make it too dense to be read, and says so', () => {
    const own = Object.values(page.workspace.materials).flatMap(({ id, packs: [pack] }) =>
      pack && 'unit' in pack.holds.each ? [[id, { value: '1234567/500', unit: pack.holds.each.unit }]] : [],
    );
    const { html, address } = scanned({ ...quick, builders: 2, stock: Object.fromEntries(own) });
    expect(address.search).toBe('');
    expect(html).toContain(sheetWords.scan);
    expect(html).not.toContain(sheetWords.scanPlan);
  });
});
