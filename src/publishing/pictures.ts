import type { Diagnostic, Place } from '../core/diagnostic.ts';
import type { Guide } from '../core/model/guide.ts';
import { pictureKind } from '../checks/picture-kind.ts';
import type { ReadWorkspace } from '../reading/read.ts';
import { limits } from '../reading/limits.ts';
import { inReadingOrder } from '../reading/report.ts';
import { drawingSize } from '../rendering/drawing-size.ts';
import { safeSvg } from '../rendering/safe-svg.ts';
import { finishPhoto, type PhotoTrouble, type PictureCopy } from './finish-photo.ts';

/** A picture ready to publish: a drawing once, a photo at some widths, rising. */
export interface FinishedPicture {
  readonly kind: 'drawing' | 'photo';
  readonly copies: readonly PictureCopy[];
}

/** By path below the workspace. */
export type Pictures = ReadonlyMap<string, FinishedPicture>;

/**
 * The pictures that guides show, ready to publish: photos turned upright, made smaller and rid of what their files say
 * of place and time; drawings rid of whatever could run. It takes its time, so it comes before the site is made.
 *
 * @param say  Told as each photo is begun: which one, of how many.
 * @returns Or which of them are broken or too large. Kinds that no page shows are passed over: a check tells them.
 */
export async function preparePictures(
  read: ReadWorkspace,
  say: (photo: number, of: number) => void = () => undefined,
): Promise<Pictures | { readonly refused: readonly Diagnostic[] }> {
  const all = shownFiles(read);
  const photos = all.filter(({ isDrawing }) => !isDrawing).length;
  const pictures = new Map<string, FinishedPicture>();
  const refused: Diagnostic[] = [];
  let begun = 0;
  await eachOf(all, async (shown) => {
    if (!shown.isDrawing) say(++begun, photos);
    const made = await finish(shown);
    if ('trouble' in made) refused.push(refusal(shown, made));
    else pictures.set(shown.path, made);
  });
  return refused.length > 0 ? { refused: inReadingOrder(refused) } : pictures;
}

/** `./photos/a.jpg` of `guides/needle-block/guide.md` -> `guides/needle-block/photos/a.jpg`. */
export function pathOfPicture({ id }: Guide, file: string): string {
  return `guides/${id}/${file.replace(/^(\.\/)+/, '')}`;
}

/** Every file that a guide shows, as it names it. */
export function picturesNamed({ checks, prose }: Guide): readonly string[] {
  const ofChecks = checks.flatMap(({ like, unlike }) => [like, unlike]).filter((file) => file !== undefined);
  return [...new Set([...prose.images.map(({ file }) => file), ...ofChecks])].sort();
}

/** A picture that is there, and where a guide names it. */
interface ShownFile {
  readonly path: string;
  readonly file: string;
  readonly bytes: Uint8Array;
  readonly isDrawing: boolean;
  readonly place: Place;
}

function shownFiles(read: ReadWorkspace): readonly ShownFile[] {
  const guides = Object.values(read.workspace?.guides ?? {});
  const named = guides.flatMap((guide) =>
    picturesNamed(guide).flatMap((file) => {
      const path = pathOfPicture(guide, file);
      const bytes = read.files[path];
      const kind = bytes && pictureKind(bytes);
      if (!bytes || kind === undefined || kind === 'heic') return [];
      const place = placeOf(guide, file, read);
      return [[path, { path, file, bytes, isDrawing: kind === 'svg', place }] as const];
    }),
  );
  return [...new Map(named).values()];
}

function placeOf(guide: Guide, file: string, { origins }: ReadWorkspace): Place {
  const image = guide.prose.images.find((known) => known.file === file);
  if (image) return origins.prose(`guides/${guide.id}`, image.at);
  const check = guide.checks.findIndex(({ like, unlike }) => like === file || unlike === file);
  return origins.at(
    `guides/${guide.id}/checks/${check}/${guide.checks[check]!.like === file ? 'like' : 'unlike'}`,
  );
}

type Trouble = PhotoTrouble | { readonly trouble: 'drawing' };

async function finish({ bytes, isDrawing }: ShownFile): Promise<FinishedPicture | Trouble> {
  if (isDrawing) return finishDrawing(bytes);
  const copies = await finishPhoto(bytes);
  return 'trouble' in copies ? copies : { kind: 'photo', copies };
}

function finishDrawing(bytes: Uint8Array): FinishedPicture | Trouble {
  const [size, safe] = [drawingSize(bytes), safeSvg(bytes)];
  return size && safe ? { kind: 'drawing', copies: [{ ...size, bytes: safe }] } : { trouble: 'drawing' };
}

function refusal({ file, place }: ShownFile, why: Trouble): Diagnostic {
  const points = 'points' in why ? { points: millions(why.points), most: millions(limits.photoPoints) } : {};
  const variant = why.trouble === 'broken' ? {} : { variant: why.trouble };
  return {
    code: 'picture-broken',
    ...variant,
    severity: 'error',
    places: [place],
    facts: { file, ...points },
  };
}

/** Up, so that what is over the limit never reads as if it were on it. */
function millions(points: number): string {
  return String(Math.ceil(points / 1_000_000));
}

/** As many at once as the image library has threads for. */
const atOnce = 4;

async function eachOf<T>(items: readonly T[], work: (item: T) => Promise<void>): Promise<void> {
  const waiting = items.values();
  const worker = async (): Promise<void> => {
    for (const item of waiting) await work(item);
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
}
