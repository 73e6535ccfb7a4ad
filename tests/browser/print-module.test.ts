import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sessionQuestion } from '../../src/core/plan/cohort/session-question.ts';
import { printModule } from '../../src/publishing/print-files.ts';
import { pageWords } from '../../src/words/pages.ts';
import { readDemo, shippedNow, today } from '../publishing/demo-site.ts';
import { inChromium } from './chromium.ts';
import { papers, printer } from './printer.ts';
import { writeAll } from './write-all.ts';

const id = 'emergency-procedures-day';

await inChromium('the printed sheets of a module', (browser) => {
  const { pdf } = printer(browser);
  let folder = '';
  beforeAll(async () => {
    const { workspace } = await readDemo();
    const module = workspace!.modules[id]!;
    const shipped = await shippedNow();
    folder = mkdtempSync(join(tmpdir(), 'benchwright-module-'));
    for (const trainees of [18, 21]) {
      const { cohort } = sessionQuestion(module, workspace!, { people: { trainees } }, { today });
      const { files } = printModule({ module, cohort, time: {} }, workspace!, today, 'A4');
      writeAll(join(folder, String(trainees)), new Map([...shipped, ...files]));
    }
  }, 120_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const address = (sheet: string, trainees = 18): string =>
    `${pathToFileURL(folder).href}/${trainees}/modules/${id}/${sheet}/index.html`;
  const textOf = (page: { readonly text: string }): string => page.text.replace(/\s+/g, ' ');

  describe.each(papers)('on %s', (paper) => {
    it('have a page for each station that is scored, each whole: for training only, and the code in place of a name', async () => {
      const { pages } = await pdf(address('score-sheets'), { paper });
      expect(pages).toHaveLength(4);
      for (const [i, page] of pages.entries()) {
        expect(textOf(page)).toContain(`Page ${i + 1} of 4`);
        expect(textOf(page)).toContain(pageWords.trainingOnly);
        expect(textOf(page)).toContain('Never write a name');
        expect(textOf(page)).toContain('Local policy first');
      }
    });

    it('have one page for what trainees take home, one for the plan, one for each survey', async () => {
      const counts: number[] = [];
      for (const sheet of ['hand-out', 'session-plan', 'surveys'])
        counts.push((await pdf(address(sheet), { paper })).pages.length);
      expect(counts).toEqual([1, 1, 2]);
    });

    it('have the timetable of the people who come, with the place to rest', async () => {
      const { pages } = await pdf(address('timetable', 21), { paper });
      const text = textOf(pages[0]!);
      for (const word of ['Round 5', 'Group 5', 'Rest']) expect(text).toContain(word);
    });
  });
});
