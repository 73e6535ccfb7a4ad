import type { Report } from './report.ts';
import { limits } from './limits.ts';
import { wholeFile } from './text/source.ts';
import { asId } from '../core/slug.ts';

/** Paths that were meant to be read and would be passed over, and where they belong. */
const misplaced: readonly {
  readonly path: RegExp;
  readonly code: string;
  readonly better: (...parts: string[]) => string;
}[] = [
  {
    path: /^(materials|tools)\/([^/]+)\.(?:yml|YA?ML)$/,
    code: 'file-misplaced.ending',
    better: (folder, name) => `${folder}/${asId(name!)}.yaml`,
  },
  {
    path: /^(materials|tools)\/.+\/([^/]+)\.ya?ml$/i,
    code: 'file-misplaced.deep',
    better: (folder, name) => `${folder}/${asId(name!)}.yaml`,
  },
  {
    path: /^guides\/([^/]+)\.md$/i,
    code: 'file-misplaced.guide',
    better: (name) => `guides/${asId(name!)}/guide.md`,
  },
  {
    path: /^modules\/([^/]+)\.md$/i,
    code: 'file-misplaced.module',
    better: (name) => `modules/${asId(name!)}/module.md`,
  },
  {
    path: /^(guides\/[^/]+)\/local\.yaml$/,
    code: 'not-built-yet.local',
    better: (folder) => `${folder}/guide.md`,
  },
];

/**
 * Reports files that would be passed over without a word, and files that a workspace cannot do without.
 *
 * @param names  Of all files that were given, in order.
 * @param there  The same, with those that are there and could not be given.
 */
export function reportMisplaced(names: readonly string[], there: ReadonlySet<string>, report: Report): void {
  for (const file of names) reportIfMisplaced(file, report);
  reportGuidesWithoutFile(names, there, report);
  if (!there.has('program.yaml')) reportNoProgram(there, report);
}

function reportIfMisplaced(file: string, report: Report): void {
  for (const { path, code: key, better } of misplaced) {
    const parts = path.exec(file);
    if (!parts) continue;
    const [code = key, variant = ''] = key.split('.');
    return report({ code, variant, facts: { file, better: better(...parts.slice(1)) } }, wholeFile(file));
  }
}

/** A folder beside the guides that holds files and no `guide.md`. */
function reportGuidesWithoutFile(names: readonly string[], there: ReadonlySet<string>, report: Report): void {
  const folders = new Map<string, string>();
  for (const file of names) {
    const folder = /^guides\/[^/]+(?=\/)/.exec(file)?.[0];
    if (folder !== undefined && !folders.has(folder)) folders.set(folder, file);
  }
  for (const [folder, first] of folders) {
    const file = `${folder}/guide.md`;
    if (!there.has(file)) report({ code: 'guide-without-file', facts: { folder, file } }, wholeFile(first));
  }
  if (folders.size > limits.guides) {
    report(
      { code: 'too-many-guides', facts: { count: String(folders.size), most: String(limits.guides) } },
      wholeFile('guides'),
    );
  }
}

function reportNoProgram(there: ReadonlySet<string>, report: Report): void {
  const variant = there.has('program.yml') ? 'ending' : there.size === 0 ? 'empty' : undefined;
  report({ code: 'no-program', ...(variant ? { variant } : {}), facts: {} }, wholeFile('program.yaml'));
}
