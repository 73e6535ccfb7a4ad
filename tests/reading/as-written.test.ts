import { afterEach, describe, expect, it } from 'vitest';
import { readGuide, readWith } from './base-workspace.ts';

/** Two ends of the world: a day ahead of Greenwich, and one behind it. */
const zones = ['Pacific/Kiritimati', 'America/Los_Angeles'];
const before = process.env['TZ'];
afterEach(() => {
  process.env['TZ'] = before;
});

describe.each(zones)('on a machine in %s', (zone) => {
  it('times, lots, versions and dates survive as written', () => {
    process.env['TZ'] = zone;
    const { workspace, diagnostics } = readWith({
      'materials/label.yaml':
        'name: 4.10\nmust: [13:00, 0012, yes, 1e3]\npacks:\n  - holds: 100\n    code: 0012\n    priced: 2026-03-09\n',
    });
    expect(diagnostics).toEqual([]);
    expect(workspace!.materials['label']).toMatchObject({
      name: '4.10',
      must: ['13:00', '0012', 'yes', '1e3'],
      packs: [{ code: '0012', priced: '2026-03-09' }],
    });
  });

  it('a version and a day of its history do too', () => {
    process.env['TZ'] = zone;
    const matter =
      'version: 1.10\nhistory:\n  - version: 1.10\n    on: 2026-03-09\n    what: 17:00\nmaterials: []\nsteps: []\n';
    expect(readGuide(matter).workspace!.guides['small']).toMatchObject({
      version: '1.10',
      history: [{ version: '1.10', on: '2026-03-09', what: '17:00' }],
    });
  });

  it('the offsets of the program’s own zone do not move', () => {
    process.env['TZ'] = zone;
    const { changes } = readWith({}).workspace!.program.zone;
    // Europe/London in 2026: summer time from 29 March 01:00 UTC to 25 October 01:00 UTC (tz database).
    expect(changes).toContainEqual([Date.UTC(2026, 2, 29, 1) / 60_000, 60]);
    expect(changes).toContainEqual([Date.UTC(2026, 9, 25, 1) / 60_000, 0]);
  });
});

it('a 30th of February is refused, never turned into March', () => {
  const { diagnostics } = readWith({
    'materials/label.yaml': 'name: Label\npacks:\n  - holds: 100\n    priced: 2026-02-30\n',
  });
  expect(diagnostics.map(({ variant }) => variant)).toEqual(['no-such-day']);
});
