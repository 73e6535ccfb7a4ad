import { type DrawingMeasure, drawingMeasure } from '../../core/quantity/drawing-measure.ts';
import type { Guide } from '../../core/model/guide.ts';
import type { ReadWorkspace } from '../../reading/read.ts';
import { safeSvg } from '../../rendering/safe-svg.ts';
import { freeName, safeFileName } from '../paths/paths.ts';

/** The drawing of a pattern that can be printed at 1:1: it lies there, and states its size. */
export interface PatternDrawing {
  readonly id: string;
  /** As the guide names it. */
  readonly file: string;
  /** In the folder of the sheet. */
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly measure: DrawingMeasure;
}

export function patternDrawings(
  { id, patterns }: Guide,
  { files }: ReadWorkspace,
): readonly PatternDrawing[] {
  const taken = new Set<string>();
  return patterns.flatMap((pattern) => {
    const bytes = files[`guides/${id}/${pattern.file.replace(/^(\.\/)+/, '')}`];
    const safe = bytes && /\.svg$/i.test(pattern.file) ? safeSvg(bytes) : undefined;
    const measure = safe && drawingMeasure(new TextDecoder().decode(safe));
    if (!safe || !measure) return [];
    return [
      {
        id: pattern.id,
        file: pattern.file,
        name: freeName(`${pattern.id}-${safeFileName(pattern.file)}`, taken),
        bytes: safe,
        measure,
      },
    ];
  });
}
