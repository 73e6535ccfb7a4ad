import type { IsoDate } from '../core/model/values.ts';
import { isoDate } from '../core/time/day.ts';
import type { Call } from './arguments.ts';
import type { Fault } from './fault.ts';
import { fault } from './fault.ts';
import type { World } from './world.ts';

/**
 * The day that counts as today: `--today`, else that of SOURCE_DATE_EPOCH, else that of this machine's clock.
 *
 * @source SOURCE_DATE_EPOCH: seconds since 1970 in UTC, reproducible-builds.org specification, 2017.
 */
export function todayOf({ values }: Call, { environment, systemDay }: World): IsoDate | Fault {
  const epoch = environment['SOURCE_DATE_EPOCH'];
  if (values.today !== undefined) return values.today;
  if (epoch === undefined || epoch === '') return systemDay();
  if (!/^\d{1,11}$/.test(epoch)) return fault('day-of-environment', { value: epoch });
  return isoDate(Math.floor(Number(epoch) / 86_400));
}
