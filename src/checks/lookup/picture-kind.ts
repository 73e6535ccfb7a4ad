/** What a page can show, and the photos of phones that it cannot. */
export type PictureKind = 'jpeg' | 'png' | 'webp' | 'svg' | 'heic';

/**
 * What kind of picture a file is, by its first bytes, whatever its name says; undefined for anything else.
 *
 * @source JPEG (ITU-T T.81) B.1.1.3, PNG (ISO/IEC 15948) 5.2, WebP (RFC 9649) 2.4, the brands of HEIF (ISO/IEC 23008-12).
 */
export function pictureKind(bytes: Uint8Array): PictureKind | undefined {
  return kinds.find(([, isOf]) => isOf(bytes))?.[0];
}

const kinds: readonly (readonly [PictureKind, (bytes: Uint8Array) => boolean])[] = [
  ['jpeg', (bytes) => startsWith(bytes, [0xff, 0xd8])],
  ['png', (bytes) => startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])],
  ['webp', (bytes) => letters(bytes, 0) === 'RIFF' && letters(bytes, 8) === 'WEBP'],
  ['heic', (bytes) => letters(bytes, 4) === 'ftyp' && heifBrands.has(letters(bytes, 8))],
  ['svg', (bytes) => /<svg[\s>]/.test(new TextDecoder().decode(bytes.subarray(0, 4096)))],
];

const heifBrands = new Set(['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1']);

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, i) => bytes[i] === byte);
}

/** Four letters of ASCII. */
function letters(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}
