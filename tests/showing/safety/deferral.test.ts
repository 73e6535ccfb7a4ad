import { describe, expect, it } from 'vitest';
import { deferral } from '../../../src/showing/safety/deferral.ts';

// Design: local policy, then the safety data sheet, then the guide, on every page; the program's own contact with it.
describe('who has the last word', () => {
  it('is the local policy, with the contact that the program names', () => {
    expect(deferral({ policy: { contact: 'the skills room safety lead' } })).toEqual({
      inFull:
        'Local policy first (ask the skills room safety lead), then the supplier’s data sheet, then this guide; it does not replace licensed practice.',
      atStep: 'Local policy first (ask the skills room safety lead), then the data sheet, then this.',
    });
  });

  it.each([{}, { policy: { note: 'Ask first.' } }])(
    'says in plain words whom to ask where nobody is named',
    (program) => {
      const { inFull, atStep } = deferral(program);
      for (const text of [inFull, atStep])
        expect(text).toContain('(ask whoever answers for safety where you work)');
    },
  );
});
