import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Answer, answering } from '../../../src/browser/planner/answer.ts';
import { atOnce } from '../../../src/core/in-pieces.ts';
import { advised } from '../../../src/core/plan/compare/advised.ts';
import { whatIf } from '../../../src/core/plan/compare/what-if.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import type { OwnSettings } from '../../../src/core/plan/own/own-settings.ts';
import type { PageData } from '../../../src/core/plan/own/page-data.ts';
import { questionOf } from '../../../src/core/plan/own/question-of.ts';
import { settingsFrom } from '../../../src/exports/plan-address.ts';
import { planGuides } from '../../../src/publishing/planned/planned-guides.ts';
import { plannerData } from '../../../src/publishing/guides/planner-data.ts';
import { planText } from '../../../src/showing/terminal/plan-text.ts';
import { showPlan } from '../../../src/showing/plan/show-plan.ts';
import { showWhatIf } from '../../../src/showing/compare/show-what-if.ts';
import { benchwright } from '../../cli/on-a-bench.ts';
import { readDemo, today } from '../../publishing/demo-site.ts';
import { anySettings, pagesOf } from './any-settings.ts';

const folder = fileURLToPath(new URL('../../../content/quillmoor', import.meta.url));
const whole = (await readDemo()).workspace!;
const pages = pagesOf(whole, today);
const pageOf = (id: string, at?: string) => pages.find(({ guide, level }) => guide === id && level === at)!;

/** What the page would say that had all of the workspace. */
function planned(page: PageData, own: OwnSettings) {
  const question = questionOf({ ...page, workspace: whole }, own);
  const made = makePlan(question.workspace, question.demand, question.settings);
  return 'refused' in made ? made : { question, made: advised(question, made) };
}

function answered(page: PageData, own: OwnSettings): Answer {
  return atOnce(answering(page, own));
}

describe('the answer of a page', () => {
  it('is what is published, where nothing is set', () => {
    const published = planGuides(whole, today);
    if ('refused' in published) expect.unreachable();
    expect(published.length).toBe(pages.length);
    for (const { written, level, plan, curve } of published)
      expect(answered(pageOf(written.id, level), {})).toEqual({ plan, curve });
  }, 120_000);

  it('is to the letter what the whole workspace says, whatever is set', () => {
    const any = fc.constantFrom(...pages).chain((page) => fc.tuple(fc.constant(page), anySettings(page)));
    fc.assert(
      fc.property(any, ([page, own]) => {
        const [answer, reference] = [answered(page, own), planned(page, own)];
        if ('refused' in reference || 'refused' in answer)
          expect('refused' in answer).toBe('refused' in reference);
        else expect(answer.plan).toEqual(showPlan(reference.made, reference.question.workspace));
      }),
      { numRuns: 10 },
    );
  }, 240_000);

  const stock = join(tmpdir(), `stock-${process.pid}.yaml`);
  it.each([
    ['needle-block', 'shallow', 'batch=7&builders=3', ['needle-block:shallow=7', '--builders', '3']],
    ['needle-block', 'shallow', 'batch=5&units=both', ['needle-block:shallow=5', '--units', 'both']],
    ['suture-pad', undefined, 'batch=6&units=us', ['suture-pad=6', '--units', 'us']],
    ['needle-block', 'deep', 'batch=2&batch:shallow=3', ['needle-block:deep=2', 'needle-block:shallow=3']],
    [
      'suture-pad',
      undefined,
      'batch=9&start=2026-11-30T09:00&stock:felt-3mm=2+x+450+mm+x+300+mm',
      ['suture-pad=9', '--start', '2026-11-30T09:00', '--stock', stock],
    ],
    [
      'abscess-pouch',
      undefined,
      'batch=6&ready-by=2026-12-18T16:00&margin=2+h',
      ['abscess-pouch=6', '--ready-by', '2026-12-18T16:00', '--margin', '2h'],
    ],
  ])(
    'is what the command line prints: %s %s %s',
    async (id, level, query, args) => {
      writeFileSync(stock, 'felt-3mm: 2 x 450 mm x 300 mm\n');
      const page = pageOf(id, level);
      const { settings, unread } = settingsFrom(query, page);
      expect(unread).toEqual([]);
      const { status, out } = await benchwright(['plan', ...args, '--today', today], { folder });
      const [answer, reference] = [answered(page, settings), planned(page, settings)];
      if ('refused' in answer || 'refused' in reference) return expect.unreachable();
      const { question, made } = reference;
      const changes = whatIf(question.workspace, question.demand, question.settings, made);
      const beside = changes.length > 0 ? { whatIf: showWhatIf(changes, made, whole) } : {};
      expect([status, out]).toEqual([0, planText(answer.plan, 80, beside)]);
    },
    120_000,
  );

  it('says in sentences why there is none', () => {
    const own = { batch: 3, start: '2026-11-20T09:00' };
    expect(answered(pageOf('knot-board'), own)).toEqual({
      refused: ['2026-11-20T09:00 has gone by: today is 2026-11-25.'],
    });
    const tooSmall = [{ holds: { count: 1, each: { sides: [mm('20'), mm('20')] } } }];
    expect(answered(pageOf('suture-pad'), { packs: { 'felt-3mm': tooSmall } })).toEqual({
      refused: [expect.stringMatching(/^.*felt.*: a piece is larger than every sheet/i)],
    });
  });
});

const mm = (value: string) => ({ value, unit: 'mm' });

describe('the data of a page', () => {
  it('is a script that sets one global and can close nothing', () => {
    const script = new TextDecoder().decode(plannerData('needle-block', whole, today));
    expect(script).toMatch(/^globalThis\.plannerData = \{.*\};\n$/);
    expect(script).not.toMatch(/[<\u2028\u2029]/);
    const page = JSON.parse(script.slice('globalThis.plannerData = '.length, -2)) as PageData;
    expect({ ...page, level: 'shallow' }).toEqual(pageOf('needle-block', 'shallow'));
  });

  it('holds the guide with what it uses, and no prose', () => {
    const { guides, materials, tools } = pageOf('knot-board').workspace;
    expect(Object.keys(guides)).toEqual(['knot-board']);
    expect(Object.keys(materials).length).toBeLessThan(Object.keys(whole.materials).length);
    expect(Object.keys(tools)).toEqual(
      Object.keys(whole.tools).filter((id) =>
        whole.guides['knot-board']!.tools.some(({ use }) => use === id),
      ),
    );
    expect(JSON.stringify(guides)).not.toContain(whole.guides['knot-board']!.summary!.slice(0, 40));
  });
});
