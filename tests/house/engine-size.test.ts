import { build } from 'esbuild';
import { gzipSync } from 'node:zlib';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const folder = fileURLToPath(new URL('../../src/core/', import.meta.url));

/** What a reader's browser loads of it: bundled, minified and compressed, in bytes. */
async function weightOf(...lines: readonly string[]): Promise<number> {
  const { outputFiles } = await build({
    stdin: { contents: lines.join('\n'), resolveDir: folder },
    bundle: true,
    minify: true,
    format: 'iife',
    globalName: 'engine',
    write: false,
  });
  return gzipSync(outputFiles[0]!.contents, { level: 9 }).length;
}

it('the engine of schedules, cutting plans and packs is lighter than 28 kB', async () => {
  const weight = await weightOf(
    "export { schedule } from './solve/schedule/schedule.ts';",
    "export { cutSheets } from './solve/cutting/sheets.ts';",
    "export { cutLengths } from './solve/cutting/lengths.ts';",
    "export { cutStrip } from './solve/cutting/strip.ts';",
    "export { leastCostPacks } from './solve/packs/least-cost-packs.ts';",
  );
  expect(weight).toBeGreaterThan(10_000);
  expect(weight).toBeLessThan(28_000);
});

it('a whole plan of guides, what cuts and schedules it included, has not grown beyond 52 kB', async () => {
  const weight = await weightOf("export { makePlan } from './plan/plan.ts';");
  expect(weight).toBeGreaterThan(20_000);
  expect(weight).toBeLessThan(52_000);
});

/** Scripts of the site, in bytes as they are sent. */
async function weightOfScripts(...names: readonly string[]): Promise<number> {
  const weights = names.map((name) => weightOf(`import '../browser/${name}.entry.ts';`));
  return (await Promise.all(weights)).reduce((sum, weight) => sum + weight, 0);
}

it('the page of a guide is read with 11 kB of scripts, and computes with 90 kB more, loaded at the first change', async () => {
  expect(await weightOfScripts('planner', 'bench')).toBeLessThan(11_200);
  expect(await weightOfScripts('engine')).toBeLessThan(90_000);
});
