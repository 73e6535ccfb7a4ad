import type { Element } from 'hast';
import { s } from 'hastscript';
import { encode } from 'uqr';

/** Beyond so many modules across it is printed larger, see its style; beyond these it is not read from paper. */
const usualModules = 48;
export const mostModules = 60;

/** Light modules round a code, without which readers do not find it. */
const quietZone = 4;

/**
 * A code (QR, ISO/IEC 18004) that leads to an address, as one path: a row of dark modules is one stroke of it. It is
 * square; how large it is printed says its style.
 *
 * @param address  What a reader opens.
 * @param name     Read aloud in place of the picture.
 * @source ISO/IEC 18004: a quiet zone of 4 modules; level M recovers 15 % (from memory).
 */
export function qrCode(address: string, name: string): Element {
  const { data, size } = encode(address, { ecc: 'M', border: quietZone });
  const className = size > usualModules ? ['qr', 'is-dense'] : ['qr'];
  return s('svg', { className, viewBox: `0 0 ${size} ${size}`, role: 'img', ariaLabel: name }, [
    s('path', { d: data.flatMap(rowPath).join(''), shapeRendering: 'crispEdges' }),
  ]);
}

/** Modules across, the quiet zone included: printed at half a millimetre each, it is half so many mm wide. */
export function qrModules(address: string): number {
  return encode(address, { ecc: 'M', border: quietZone }).size;
}

function rowPath(row: readonly boolean[], y: number): readonly string[] {
  return darkRuns(row).map(([from, to]) => `M${from} ${y}h${to - from}v1h${from - to}z`);
}

/** `- # # - #` -> `[1, 3], [4, 5]` */
function darkRuns(row: readonly boolean[]): readonly (readonly [from: number, to: number])[] {
  const starts = row.flatMap((dark, x) => (dark && !row[x - 1] ? [x] : []));
  const ends = row.flatMap((dark, x) => (dark && !row[x + 1] ? [x + 1] : []));
  return starts.map((from, i) => [from, ends[i]!]);
}
