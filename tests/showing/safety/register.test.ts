import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import { hazardsMet } from '../../../src/core/plan/scale/hazard-register.ts';
import { safetyCsv } from '../../../src/exports/safety-csv.ts';
import { safetyRows, showSafety } from '../../../src/showing/safety/show-safety.ts';
import { readDemo } from '../../publishing/demo-site.ts';

let workspace: Workspace;
beforeAll(async () => {
  workspace = (await readDemo()).workspace!;
});
const named = (name: string, today = '2026-11-25') =>
  showSafety(workspace, today).find((hazard) => hazard.name === name)!;

describe('the register of hazards', () => {
  it('has every material and tool that can hurt, used or not, and every heat and flame', () => {
    const { materials, tools } = workspace;
    const listed = showSafety(workspace, '2026-11-25');
    const ids = (kind: string) => listed.filter((hazard) => hazard.kind === kind).map(({ id }) => id);
    const dangerous = Object.values(materials).filter(
      ({ hazards, also }) => hazards.length + also.length > 0,
    );
    expect(ids('material').sort()).toEqual(dangerous.map(({ id }) => id).sort());
    const sharp = Object.values(tools).filter(({ also }) => also.length > 0);
    expect(ids('tool').sort()).toEqual(sharp.map(({ id }) => id).sort());
    expect(ids('heat')).toEqual(['heat']);
    expect(listed.flatMap(({ met }) => met).length).toBe(hazardsMet(workspace).length);
  });

  it('says of a product its statements, its label, its sheet with its age, and what is done where it is met', () => {
    const glue = named('Brush-on contact adhesive');
    expect(glue.dangers[0]).toBe('Highly flammable liquid and vapour (H225)');
    expect(glue.label).toBe(
      'Signal word of the label: Danger. Pictograms: flame, exclamation mark and environment.',
    );
    expect(glue.precautions).toContain('Store in a well-ventilated place. Keep cool. (P403+P235)');
    // 20 April to 25 November: seven whole months; to 20 November too, to 19 November six
    expect(glue.dataSheet.replaceAll('\u00a0', ' ')).toBe('of 20 April 2026, 7 months old');
    const at = (today: string) => named(glue.name, today).dataSheet.replaceAll('\u00a0', ' ');
    expect([at('2026-11-20'), at('2026-11-19')]).toEqual([
      'of 20 April 2026, 7 months old',
      'of 20 April 2026, 6 months old',
    ]);
    expect(glue.met.length).toBeGreaterThan(0);
    for (const met of glue.met) {
      expect(met.controls.length).toBeGreaterThan(0);
      expect(met.cautions[0]).toMatch(/^(DANGER|WARNING|CAUTION): /);
    }
  });

  it('never turns the signal word of a label into that of a caution', () => {
    // its label says Danger; how severe it is at the bench is for those who know it
    const spray = named('Cake-tin release spray');
    expect(spray.label).toContain('Danger');
    expect(spray.met.find(({ step }) => step === 'set-the-tubes-in-the-tins')?.cautions[0]).toMatch(
      /^WARNING: /,
    );
  });

  it('is a table too, a row for each step, and never a formula', () => {
    const hazards = showSafety(workspace, '2026-11-25');
    const rows = parse(safetyCsv(safetyRows(hazards)), { bom: true, columns: true }) as Record<
      string,
      string
    >[];
    expect(rows.length).toBe(hazards.reduce((sum, { met }) => sum + Math.max(1, met.length), 0));
    const spray = rows.find(({ What, Guide }) => What === 'Cake-tin release spray' && Guide !== '');
    expect(spray).toMatchObject({
      Kind: 'material',
      Dangers: 'Extremely flammable aerosol (H222)\nPressurized container: May burst if heated (H229)',
      Controls: 'Open a window or switch the extraction on\nNo flame, spark or hot tool near',
      'Safety data sheet': 'of 1 March 2026, 8 months old',
    });
    const [row] = safetyRows(hazards);
    expect(safetyCsv([{ ...row!, name: '=1+1' }])).toContain("'=1+1");
  });
});
