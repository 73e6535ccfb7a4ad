import type { Diagnostic } from '../core/diagnostic.ts';
import { limits } from './limits.ts';
import { asId, isId } from './values/plain-words.ts';
import type { Report } from './report.ts';
import { wholeFile } from './text/source.ts';

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
  /** Whatever lies beside a guide: photos, patterns. */
  readonly attachments: Readonly<Record<string, Uint8Array>>;
  /** Ids whose file is there and cannot be given: `materials/felt`. */
  readonly unread: readonly string[];
}

const folders = ['materials', 'tools', 'guides'] as const;
type FolderName = (typeof folders)[number];

/**
 * Sorts the files of a workspace into what they are, by their paths alone; reports those that are named so that
 * they would be passed over.
 *
 * @param refused  What the disk would not give: not reported again as missing.
 */
export function layOut(
  files: ReadonlyMap<string, Uint8Array>,
  refused: readonly Diagnostic[],
  report: Report,
): Layout {
  const refusedFiles = new Set(refused.flatMap(({ places }) => places.map(({ file }) => file)));
  const found = {
    materials: new Map<string, FileFound>(),
    tools: new Map<string, FileFound>(),
    guides: new Map<string, FileFound>(),
  };
  const attachments: Record<string, Uint8Array> = {};
  for (const [file, bytes] of [...files].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const [folder, name, ...rest] = file.split('/') as [string, ...string[]];
    if (!isFolder(folder) || name === undefined || file.split('/').some((part) => part.startsWith('.')))
      continue;
    const id = folder === 'guides' ? idOfGuide(file, name, rest, report) : idOfYaml(file, name, rest, report);
    if (id !== undefined) found[folder].set(id, { file, bytes });
    else if (folder === 'guides' && rest.length > 0 && rest.join('/') !== 'guide.md')
      attachments[file] = bytes;
  }
  reportGuidesWithoutFile(files, found.guides, refusedFiles, report);
  const program = files.get('program.yaml');
  if (!program && !refusedFiles.has('program.yaml')) reportNoProgram(files, report);
  return {
    ...found,
    attachments,
    unread: unreadOf(refusedFiles),
    ...(program ? { program: { file: 'program.yaml', bytes: program } } : {}),
  };
}

const isFolder = (name: string): name is FolderName => folders.some((folder) => folder === name);

/** The id of `materials/felt.yaml`; `undefined` where it is none, with a report where it was meant to be one. */
function idOfYaml(file: string, name: string, rest: readonly string[], report: Report): string | undefined {
  const id = /^(.*)\.yaml$/.exec(name)?.[1];
  if (rest.length === 0 && id !== undefined) return checkedId(id, file, report);
  if (/\.ya?ml$/i.test(file))
    report(
      {
        code: 'file-misplaced',
        variant: rest.length > 0 ? 'deep' : 'ending',
        facts: {
          file,
          better: `${file.split('/')[0]}/${asId((rest.at(-1) ?? name).replace(/\.ya?ml$/i, ''))}.yaml`,
        },
      },
      wholeFile(file),
    );
  return undefined;
}

/** The id of `guides/needle-block/guide.md`. */
function idOfGuide(file: string, name: string, rest: readonly string[], report: Report): string | undefined {
  if (rest.join('/') === 'guide.md') return checkedId(name, file, report);
  if (rest.length === 0 && name.endsWith('.md')) {
    report(
      {
        code: 'file-misplaced',
        variant: 'guide',
        facts: { file, better: `guides/${asId(name.replace(/\.md$/, ''))}/guide.md` },
      },
      wholeFile(file),
    );
  }
  return undefined;
}

function checkedId(id: string, file: string, report: Report): string | undefined {
  if (isId(id)) return id;
  report(
    { code: 'id-unusable', variant: 'file', facts: { text: id, file, better: asId(id) } },
    wholeFile(file),
  );
  return undefined;
}

/** A folder of a guide without its `guide.md` would be passed over without a word. */
function reportGuidesWithoutFile(
  files: ReadonlyMap<string, Uint8Array>,
  guides: ReadonlyMap<string, FileFound>,
  refused: ReadonlySet<string>,
  report: Report,
): void {
  const firstOf = new Map<string, string>();
  for (const file of [...files.keys()].sort()) {
    const id = /^guides\/([^./][^/]*)\/[^.]/.exec(file)?.[1];
    if (id !== undefined && !firstOf.has(id)) firstOf.set(id, file);
  }
  for (const [id, file] of firstOf) {
    const main = `guides/${id}/guide.md`;
    if (!guides.has(id) && !files.has(main) && !refused.has(main)) {
      report({ code: 'guide-without-file', facts: { folder: `guides/${id}`, file: main } }, wholeFile(file));
    }
  }
  if (guides.size > limits.guides)
    report({ code: 'too-many-guides', facts: { count: String(guides.size), most: String(limits.guides) } });
}

function reportNoProgram(files: ReadonlyMap<string, Uint8Array>, report: Report): void {
  const variant = files.has('program.yml') ? 'ending' : files.size === 0 ? 'empty' : undefined;
  report({ code: 'no-program', ...(variant ? { variant } : {}), facts: {} }, wholeFile('program.yaml'));
}

function unreadOf(refused: ReadonlySet<string>): readonly string[] {
  return [...refused].flatMap((file) => {
    const match = /^(?:(materials|tools)\/([^/]+)\.yaml|(guides)\/([^/]+)\/guide\.md)$/.exec(file);
    return match ? [`${match[1] ?? match[3]}/${match[2] ?? match[4]}`] : [];
  });
}
