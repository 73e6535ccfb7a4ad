import { expect, it } from 'vitest';
import { sessionQuestion, sessionTime } from '../../src/core/plan/cohort/session-question.ts';
import { printModule } from '../../src/publishing/print-files.ts';
import { readDemo, today } from './demo-site.ts';

// 6 December 2026 is a Sunday; the demo's program works from Monday to Friday.
it.each([
  ['2026-12-06T00:00', true],
  ['2026-12-06T09:00', true],
  ['2026-12-04T00:00', false],
])('the printed session plan for %s says that the program is closed: %s', async (readyBy, isSaid) => {
  const { workspace } = await readDemo();
  const module = workspace!.modules['emergency-procedures-day']!;
  const settings = { readyBy, today };
  const { cohort } = sessionQuestion(module, workspace!, {}, settings);
  const time = sessionTime(settings, workspace!.program);
  const { files } = printModule({ module, cohort, time }, workspace!, today, 'A4', ['session-plan']);
  const sheet = new TextDecoder().decode(files.get(`modules/${module.id}/session-plan/index.html`));
  expect(sheet).toContain('session-notes');
  expect(sheet.includes('a day on which the program is closed')).toBe(isSaid);
});
