import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { makePlan } from '../../src/core/plan/plan.ts';
import { read } from '../../src/reading/read.ts';
import { planText } from '../../src/showing/terminal/plan-text.ts';
import { showPlan } from '../../src/showing/plan/show-plan.ts';
import { leavesOf } from './leaves.ts';

const root = fileURLToPath(new URL('../../content/quillmoor', import.meta.url));
const names = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((name) =>
  statSync(join(root, name)).isFile(),
);
const files = new Map(names.map((name) => [name, new Uint8Array(readFileSync(join(root, name)))]));
const workspace = read(files).workspace!;

describe.each(Object.keys(workspace.guides))('the published plan of %s', (guide) => {
  const plan = makePlan(workspace, [{ guide }], { today: '2026-11-25' });
  if ('refused' in plan) throw new Error(JSON.stringify(plan.refused));
  const shown = showPlan(plan, workspace);

  it('has proper numbers, and a key of its own for every text', () => {
    const leaves = leavesOf(shown);
    expect(new Set(leaves.map(({ key }) => key)).size).toBe(leaves.length);
    for (const { key, text } of leaves) {
      expect(text, key).not.toMatch(/\D\.\d|^\.\d|\d\.0\b/);
      expect(text, key).not.toMatch(/\d (?:g|kg|mg|mL|L|mm|cm|m|cm²|m²|°C|%|min|h|d|s)(?![\p{L}\d])/u);
      expect(text, key).not.toMatch(/NaN|undefined|Infinity|\[object|[{}]/);
    }
  });

  it('fits a terminal of 80 columns', () => {
    expect(
      planText(shown)
        .split('\n')
        .filter((line) => line.length > 80),
    ).toEqual([]);
  });

  it('prints the cautions of a step with it, each with its hazard and a way to avoid it', () => {
    const cautions = shown.lines.flatMap((line) => line.steps.flatMap((step) => step.cautions));
    expect(cautions.length).toBeGreaterThan(0);
    expect(cautions.filter(({ hazard, avoid }) => hazard.text === '' || avoid.length === 0)).toEqual([]);
  });
});
