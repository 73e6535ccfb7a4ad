import type { WallMoment } from '../../showing/plan/bench-text.ts';

const aMinute = 60_000;

/** A moment as the clock of this device shows it, rounded to a whole minute. */
export function wallMoment(milliseconds: number, rounds: 'up' | 'down'): WallMoment {
  const whole = rounds === 'up' ? Math.ceil(milliseconds / aMinute) : Math.floor(milliseconds / aMinute);
  const at = new Date(whole * aMinute);
  const two = (n: number): string => String(n).padStart(2, '0');
  return {
    day: `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`,
    minute: at.getHours() * 60 + at.getMinutes(),
  };
}

/** So many minutes later on the clock of this device. */
export function minutesLater(milliseconds: number, minutes: number): number {
  return milliseconds + minutes * aMinute;
}
