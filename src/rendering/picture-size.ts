/** Width and height in pixels. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** How a file of one kind says its size; undefined where the file is not of that kind, or broken. */
type SizeReader = (bytes: Uint8Array) => PictureSize | undefined;

/**
 * The size of a picture, read from its first bytes; undefined for anything but PNG, JPEG, GIF, WebP and SVG.
 *
 * @source PNG (ISO/IEC 15948) 11.2.2, JPEG (ITU-T T.81) B.2.2, GIF89a 18, WebP container (RFC 9649) 2.5–2.7.
 */
export function pictureSize(bytes: Uint8Array): PictureSize | undefined {
  for (const read of [sizeOfPng, sizeOfGif, sizeOfJpeg, sizeOfWebp, sizeOfSvg]) {
    const size = read(bytes);
    if (size) return size.width > 0 && size.height > 0 ? size : undefined;
  }
  return undefined;
}

const sizeOfPng: SizeReader = (bytes) =>
  startsWith(bytes, [0x89, 0x50, 0x4e, 0x47]) && bytes.length >= 24
    ? { width: big(bytes, 16, 4), height: big(bytes, 20, 4) }
    : undefined;

const sizeOfGif: SizeReader = (bytes) =>
  startsWith(bytes, [0x47, 0x49, 0x46, 0x38]) && bytes.length >= 10
    ? { width: little(bytes, 6, 2), height: little(bytes, 8, 2) }
    : undefined;

/** Walks over the segments to the first start of a frame, whatever its coding. */
const sizeOfJpeg: SizeReader = (bytes) => {
  if (!startsWith(bytes, [0xff, 0xd8])) return undefined;
  for (let at = 2; at + 9 < bytes.length && bytes[at] === 0xff; at += 2 + big(bytes, at + 2, 2)) {
    const marker = bytes[at + 1]!;
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return { width: big(bytes, at + 7, 2), height: big(bytes, at + 5, 2) };
  }
  return undefined;
};

const sizeOfWebp: SizeReader = (bytes) => {
  if (!startsWith(bytes, [0x52, 0x49, 0x46, 0x46]) || bytes.length < 30 || ascii(bytes, 8, 4) !== 'WEBP')
    return undefined;
  const kind = ascii(bytes, 12, 4);
  if (kind === 'VP8X') return { width: little(bytes, 24, 3) + 1, height: little(bytes, 27, 3) + 1 };
  if (kind === 'VP8 ') return { width: little(bytes, 26, 2) & 0x3fff, height: little(bytes, 28, 2) & 0x3fff };
  const packed = little(bytes, 21, 4);
  return { width: (packed & 0x3fff) + 1, height: ((packed >>> 14) & 0x3fff) + 1 };
};

/** The outer `viewBox`; without one, its width and height where they are plain numbers. */
const sizeOfSvg: SizeReader = (bytes) => {
  const head = /<svg\b[^>]*>/.exec(new TextDecoder().decode(bytes.subarray(0, 4096)))?.[0];
  if (head === undefined) return undefined;
  const box = /\sviewBox\s*=\s*["']\s*[-\d.]+[\s,]+[-\d.]+[\s,]+([\d.]+)[\s,]+([\d.]+)/.exec(head);
  const width = box?.[1] ?? /\swidth\s*=\s*["']([\d.]+)/.exec(head)?.[1];
  const height = box?.[2] ?? /\sheight\s*=\s*["']([\d.]+)/.exec(head)?.[1];
  return { width: Math.round(Number(width ?? 0)), height: Math.round(Number(height ?? 0)) };
};

const startsWith = (bytes: Uint8Array, start: readonly number[]): boolean =>
  start.every((byte, i) => bytes[i] === byte);
const ascii = (bytes: Uint8Array, at: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + length));
const big = (bytes: Uint8Array, at: number, length: number): number =>
  bytes.subarray(at, at + length).reduce((n, byte) => n * 256 + byte, 0);
const little = (bytes: Uint8Array, at: number, length: number): number =>
  bytes.subarray(at, at + length).reduceRight((n, byte) => n * 256 + byte, 0);
