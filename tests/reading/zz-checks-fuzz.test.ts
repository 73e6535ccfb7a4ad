import fc from 'fast-check';
import { it } from 'vitest';
import { findingsOf } from '../cases/workspace-of-case.ts';
import { showDiagnostic } from '../../src/showing/diagnostic.ts';
import { baseFiles, guideFile, textOf } from './base-workspace.ts';
const text = textOf(guideFile);
const lines = text.split('\n');
const values = ['0', '1', '5 g', '0 g', '-1 g', '1 L', '12', '1000000000000 g', '99999 d', '0 min', 'shallow', 'deep', 'pour', 'unmould', 'gel', 'water', 'label', '[]', '{}', '[pour]', '[gel]', 'each label', 'the batch', 'every 10000 models', 'no', 'yes', '2 working days', '{ shallow: 5 g, deep: 1 kg }', '1 in', '3 m', '10 mm x 20 mm', '100 %', '1/3', '1e3', '°C', '60 °C', '{ as: label.full }', '{ usual: 1 h, if-damp: 2 h }', '{ unmould: 10 min }', '[{ material: gel, amount: 0 L }]'];
const change = fc.tuple(fc.nat(lines.length - 1), fc.oneof(fc.constant('drop'), fc.constant('twice'), fc.constantFrom(...values)));
it('checks never throw', () => {
  fc.assert(fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
    const now: string[] = [...lines];
    for (const [at, what] of changes) {
      if (what === 'drop') now[at] = '';
      else if (what === 'twice') now[at] = `${now[at]}\n${now[at]}`;
      else now[at] = now[at]!.replace(/: .*$/, `: ${what}`);
    }
    const files = new Map([...baseFiles, [guideFile, new TextEncoder().encode(now.join('\n'))]]);
    findingsOf(files).map(showDiagnostic);
  }), { numRuns: 2500 });
});
