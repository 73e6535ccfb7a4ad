import { expect, it } from 'vitest';
import { readDuration } from '../../src/core/time/duration.ts';
import reference from './data/durations.json' with { type: 'json' };

// ISO 8601-1:2019, representation of durations. Months are a valid duration there, but have no one length: refused here.
it.each(reference.cases)('$text is $seconds s', ({ text, seconds, validIso8601 }) => {
  const reading = readDuration(text);
  if (seconds !== null) {
    expect(reading).toEqual({ ok: true, value: { seconds: String(seconds) } });
  } else {
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.problem.code === 'duration-calendar').toBe(validIso8601);
  }
});
