import { expect, it } from 'vitest';
import { stripRow, stripScale } from '../../../src/showing/figures/schedule-strip.ts';
import { percent } from '../../../src/showing/figures/tree.ts';
import { htmlOf } from './drawn.ts';

it('places bars by thousandths of the width, exactly', () => {
  expect([0, 125, 333, 1000].map(percent)).toEqual(['0%', '12.5%', '33.3%', '100%']);
});

it('hatches waits, and hands-on is solid: the two differ without colour', () => {
  const bars = [
    { kind: 'hands-on', from: 0, to: 100 },
    { kind: 'wait', from: 100, to: 400 },
  ] as const;
  const row = htmlOf(stripRow({ bars, decides: [] }, [], []));
  expect(row).toContain('<rect class="bar-hands-on" y="24%" height="52%" x="0%" width="10%"></rect>');
  expect(row).toContain(
    '<rect class="bar-wait" y="24%" height="52%" fill="url(#hatch)" x="10%" width="30%"></rect>',
  );
});

it('ends a label at its tick where it would run out of the picture', () => {
  const label = (at: number) => ({ at, day: true, label: { key: `k${at}`, text: 'day 2' } });
  const scale = htmlOf(stripScale([label(0), label(980)]));
  expect(scale).toContain('x="0%" y="1em" text-anchor="start"');
  expect(scale).toContain('x="98%" y="1em" text-anchor="end"');
});

it('leaves out a label that the last one would run over', () => {
  const label = (at: number, text: string) => ({ at, day: false, label: { key: `k${at}`, text } });
  const scale = htmlOf(stripScale([label(700, '12:00'), label(880, '16:00'), label(970, 'day 3')]));
  expect(scale).not.toContain('16:00');
  expect(scale).toContain('12:00');
  expect(scale).toContain('day 3');
  expect(htmlOf(stripScale([label(800, '14:00'), label(970, 'day 3')]))).toContain('14:00');
});

it('rules what decides how long it takes below its bars, so that it is seen without colour', () => {
  const bar = { kind: 'hands-on', from: 0, to: 100 } as const;
  expect(htmlOf(stripRow({ bars: [bar], decides: [{ from: 0, to: 250 }] }, [], []))).toContain(
    '<rect class="bar-decides" y="84%" height="3" x="0%" width="25%"></rect>',
  );
  expect(htmlOf(stripRow({ bars: [bar], decides: [] }, [], []))).not.toContain('bar-decides');
});
