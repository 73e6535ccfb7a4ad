/** Width and height in pixels. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/**
 * The size of a drawing (SVG): its outer `viewBox`; without one, its width and height where they are plain numbers.
 * Undefined where it says neither.
 */
export function drawingSize(bytes: Uint8Array): PictureSize | undefined {
  const head = /<svg\b[^>]*>/.exec(new TextDecoder().decode(bytes.subarray(0, 4096)))?.[0];
  if (head === undefined) return undefined;
  const box = /\sviewBox\s*=\s*["']\s*[-\d.]+[\s,]+[-\d.]+[\s,]+([\d.]+)[\s,]+([\d.]+)/.exec(head);
  const width = Math.round(Number(box?.[1] ?? /\swidth\s*=\s*["']([\d.]+)/.exec(head)?.[1] ?? 0));
  const height = Math.round(Number(box?.[2] ?? /\sheight\s*=\s*["']([\d.]+)/.exec(head)?.[1] ?? 0));
  return width > 0 && height > 0 ? { width, height } : undefined;
}
