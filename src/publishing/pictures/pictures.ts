import type { Diagnostic, Place } from '../../core/diagnostic.ts';
import type { Guide } from '../../core/model/guide.ts';
import type { Module } from '../../core/model/module.ts';
import { pictureKind } from '../../checks/lookup/picture-kind.ts';
import type { ReadWorkspace } from '../../reading/read.ts';
import { limits } from '../../reading/limits.ts';
import { inReadingOrder } from '../../reading/report.ts';
import { drawingSize } from '../../rendering/drawing-size.ts';
import { safeSvg } from '../../rendering/safe-svg.ts';
import { finishPhoto, type PhotoTrouble, type PictureCopy } from '../disk/finish-photo.ts';

/** A picture ready to publish: a drawing once, a photo at some widths, rising. */
export interface FinishedPicture {
  readonly kind: 'drawing' | 'photo';
  readonly copies: readonly PictureCopy[];
}

/** By path below the workspace. */
export type Pictures = ReadonlyMap<string, FinishedPicture>;

/**
 * The pictures that guides and modules show, ready to publish: photos turned upright, made smaller and rid of what their files say
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

/** A guide or a module: its folder, and what in it may show pictures. */
export interface Illustrated {
  /** `guides/needle-block` */
  readonly folder: string;
  readonly of: Pick<Guide, 'prose' | 'checks'> | (Pick<Module, 'prose'> & { readonly checks?: never });
}

/** `./photos/a.jpg` in `guides/needle-block` -> `guides/needle-block/photos/a.jpg`. */
export function pathOfPicture({ folder }: Illustrated, file: string): string {
  return `${folder}/${file.replace(/^(\.\/)+/, '')}`;
}

/** Every file that a guide or a module shows, as it names it. */
export function picturesNamed({ of: { checks = [], prose } }: Illustrated): readonly string[] {
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
  const named = illustratedIn(read).flatMap((illustrated) =>
    picturesNamed(illustrated).flatMap((file) => {
      const path = pathOfPicture(illustrated, file);
      const bytes = read.files[path];
      const kind = bytes && pictureKind(bytes);
      if (!bytes || kind === undefined || kind === 'heic') return [];
      const place = placeOf(illustrated, file, read);
      return [[path, { path, file, bytes, isDrawing: kind === 'svg', place }] as const];
    }),
  );
  return [...new Map(named).values()];
}

function illustratedIn({ workspace }: ReadWorkspace): readonly Illustrated[] {
  const { guides = {}, modules = {} } = workspace ?? {};
  return [
    ...Object.values(guides).map((of) => ({ folder: `guides/${of.id}`, of })),
    ...Object.values(modules).map((of) => ({ folder: `modules/${of.id}`, of })),
  ];
}

function placeOf({ folder, of }: Illustrated, file: string, { origins }: ReadWorkspace): Place {
  const image = of.prose.images.find((known) => known.file === file);
  if (image) return origins.prose(folder, image.at);
  const { checks = [] } = of;
  const check = checks.findIndex(({ like, unlike }) => like === file || unlike === file);
  return origins.at(`${folder}/checks/${check}/${checks[check]!.like === file ? 'like' : 'unlike'}`);
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
