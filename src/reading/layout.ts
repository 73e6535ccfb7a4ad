import type { Diagnostic } from '../core/diagnostic.ts';
import { reportMisplaced } from './misplaced.ts';
import type { Report } from './report.ts';
import { wholeFile } from './text/source.ts';
import { asId } from '../core/slug.ts';
import { isId } from './values/plain-words.ts';

/** A file and what it is called below the workspace. */
export interface FileFound {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** The files of a workspace by what they are. */
export interface Layout {
  readonly program?: FileFound;
  readonly materials: ReadonlyMap<string, FileFound>;
  readonly tools: ReadonlyMap<string, FileFound>;
  readonly guides: ReadonlyMap<string, FileFound>;
  readonly modules: ReadonlyMap<string, FileFound>;
  /** Whatever lies beside a guide or a module: photos, patterns, films. */
  readonly attachments: Readonly<Record<string, Uint8Array>>;
  /** Ids whose file is there and cannot be given: `materials/felt`. */
  readonly unread: readonly string[];
}

type Kind = 'materials' | 'tools' | 'guides' | 'modules';

/**
 * Sorts the files of a workspace into what they are, by their paths alone; reports those that are named so that they
 * would be passed over. Names that begin with a dot are nobody's.
 *
 * @param refused  What the disk would not give: not missed a second time.
 */
export function layOut(
  files: ReadonlyMap<string, Uint8Array>,
  refused: readonly Diagnostic[],
  report: Report,
): Layout {
  const kinds: Record<Kind, Map<string, FileFound>> = {
    materials: new Map(),
    tools: new Map(),
    guides: new Map(),
    modules: new Map(),
  };
  const attachments: Record<string, Uint8Array> = {};
  const names = [...files.keys()].filter((file) => !/(^|\/)\./.test(file)).sort();
  for (const file of names) {
    const record = recordAt(file);
    const bytes = files.get(file)!;
    if (record && isIdOrReported(record.id, file, report)) kinds[record.kind].set(record.id, { file, bytes });
    if (!record && /^(guides|modules)\/[^/]+\//.test(file)) attachments[file] = bytes;
  }
  const kept = refused.flatMap(({ places }) => places.map(({ file }) => file));
  reportMisplaced(names, new Set([...names, ...kept]), report);
  const program = files.get('program.yaml');
  return {
    ...kinds,
    attachments,
    unread: kept.flatMap(unreadId),
    ...(program ? { program: { file: 'program.yaml', bytes: program } } : {}),
  };
}

/** What a path is a record of: `materials/felt.yaml`, `guides/pad/guide.md`, `modules/first/module.md`. */
function recordAt(file: string): { readonly kind: Kind; readonly id: string } | undefined {
  const [, kind, id] =
    /^(materials|tools)\/([^/]+)\.yaml$/.exec(file) ??
    /^(guides)\/([^/]+)\/guide\.md$/.exec(file) ??
    /^(modules)\/([^/]+)\/module\.md$/.exec(file) ??
    [];
  return kind === undefined || id === undefined ? undefined : { kind: kind as Kind, id };
}

function isIdOrReported(id: string, file: string, report: Report): boolean {
  if (isId(id)) return true;
  report(
    { code: 'id-unusable', variant: 'file', facts: { text: id, file, better: asId(id) } },
    wholeFile(file),
  );
  return false;
}

function unreadId(file: string): readonly string[] {
  const record = recordAt(file);
  return record ? [`${record.kind}/${record.id}`] : [];
}
