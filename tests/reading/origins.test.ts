import { describe, expect, it } from 'vitest';
import { read } from '../../src/reading/read.ts';
import { baseFiles, guideFile } from './base-workspace.ts';

const { origins } = read(baseFiles);
const marked = ({ text, column, length }: { text: string; column: number; length: number }): string =>
  text.slice(column - 1, column - 1 + length);

describe('where a value was written', () => {
  it.each([
    ['program/currency', 'program.yaml', 'GBP'],
    ['program/work/hours/1', 'program.yaml', '13:00-17:00'],
    ['program/suppliers/craft-shop/free-over', 'program.yaml', '40 GBP'],
    ['materials/gelatin-powder/packs/0/price', 'materials/gelatin-powder.yaml', '6.40 GBP'],
    ['materials/gelatin-powder/must/0', 'materials/gelatin-powder.yaml', 'bloom 200–250'],
    ['tools/scale/reads', 'tools/scale.yaml', '1 g'],
    ['guides/needle-block/title', guideFile, 'Ultrasound needle block'],
    ['guides/needle-block/mixes/0/of/1/amount', guideFile, '1080 mL'],
    ['guides/needle-block/steps/1/wait', guideFile, '20 min'],
    ['guides/needle-block/steps/1/hands-on/each', guideFile, '1 min'],
    ['guides/needle-block/steps/2/wait/usual/deep', guideFile, '16 h'],
    ['guides/needle-block/in-use/dispose/not', guideFile, 'sink'],
  ])('%s', (path, file, text) => {
    const place = origins.at(path);
    expect([place.file, marked(place)]).toEqual([file, text]);
  });

  it('a key is underlined itself', () => {
    expect(marked(origins.key('guides/needle-block/steps/1/hands-on'))).toBe('hands-on');
    expect(marked(origins.key('program/work'))).toBe('work');
  });

  it('what was left to its default stands at the nearest that was written', () => {
    expect(marked(origins.at('guides/needle-block/steps/3/wait'))).toBe('id: unmould');
    expect(origins.at('guides/needle-block/steps/3/wait/usual')).toEqual(
      origins.at('guides/needle-block/steps/3/wait'),
    );
    expect(origins.at('materials/label/density')).toMatchObject({ file: 'materials/label.yaml', line: 1 });
    expect(origins.at('program/address')).toMatchObject({ file: 'program.yaml', line: 1 });
  });

  it('a place in the prose has its line', () => {
    const place = origins.prose('guides/needle-block', { line: 1, column: 1, length: 3 });
    expect(place).toEqual({ file: guideFile, line: 1, column: 1, length: 3, text: '---' });
  });

  it('of what was never read is our own fault', () => {
    expect(() => origins.at('materials/none')).toThrow('nothing of this path was read');
  });
});
