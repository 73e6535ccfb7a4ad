import { describe, expect, it } from 'vitest';
import { drawingMeasure } from '../../../src/core/quantity/drawing-measure.ts';
import { exactText } from '../../../src/core/quantity/exact.ts';

/** Source: SVG 2, sections 8.2 (width, height, viewBox) and 4.2 (a number, then its unit). */
function measured(head: string) {
  const found = drawingMeasure(
    `<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg" ${head}>\n<rect/></svg>`,
  );
  return found && [exactText(found.width), exactText(found.height), found.isEven];
}

describe('a drawing', () => {
  it.each([
    ['width="210mm" height="297mm"', ['210', '297', true]],
    ['width="21cm" height="2.5cm"', ['210', '25', true]],
    ["height='2in' width='8.5in'", ['215.9', '50.8', true]], // 8.5 x 25.4 = 215.9
    ['width = " 10mm " height\n=\n"20.25mm"', ['10', '20.25', true]],
    ['height="10mm" stroke-width="3mm" width="40mm"', ['40', '10', true]],
  ])('with %s states its size', (head, size) => {
    expect(measured(head)).toEqual(size);
  });

  it.each([
    'viewBox="0 0 210 297"',
    'width="210" height="297"',
    'width="210px" height="297px"',
    'width="100%" height="100%"',
    'width="210mm"',
    'height="210mm"',
    'width="0mm" height="10mm"',
    'width="about 10mm" height="10mm"',
    'width="10mm or so" height="10mm"',
    'width="1.mm" height="10mm"',
  ])('with %s states none', (head) => {
    expect(measured(head)).toBeUndefined();
  });

  it('is measured by its own element, not by what is drawn in it', () => {
    expect(drawingMeasure('<svg viewBox="0 0 9 9"><rect width="10mm" height="10mm"/></svg>')).toBeUndefined();
    expect(drawingMeasure('<svgs width="10mm" height="10mm">')).toBeUndefined();
    expect(drawingMeasure('')).toBeUndefined();
  });

  it.each([
    ['0 0 105 148.5', true], // half a millimetre to the unit, both ways
    ['-10 -.5 420 594', true],
    ['0,0, 420 , 594', true],
    ['\n 0 0\n 420 594', true],
    ['0 0 4.2e2 5e2', true], // not read: nobody is told that it is stretched
    ['0 0 210', true],
    ['0 0 210 296', false],
    ['0 0 297 210', false],
    ['0 0 21.5 29.7', false],
  ])('of 210 mm by 297 mm and the units %j is even: %s', (box, isEven) => {
    expect(measured(`width="210mm" viewBox="${box}" height="297mm"`)?.[2]).toBe(isEven);
    expect(measured(`viewBox = '${box}' width="210mm" height="297mm"`)?.[2]).toBe(isEven);
  });
});
