import type { Place } from '../core/diagnostic.ts';
import { fileNamed } from '../core/model/file-named.ts';
import { nearName } from '../core/near-name.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';

/** A film, a text or the data of judges that a module names, and that does not lie in its folder. */
export const missingModuleFile: Check = {
  code: 'missing-module-file',
  gravity: 'incomplete',
  find: ({ modules }) => modules.flatMap((read) => namedFiles(read).flatMap((named) => missing(named, read))),
};

interface Named {
  readonly file: string;
  readonly key: string;
  readonly place: Place;
}

function namedFiles({ module: { prepare, scoring }, place }: ModuleRead): readonly Named[] {
  const prepared = prepare.flatMap(({ kind, what, text }, i) => [
    ...(kind !== 'do' && fileNamed(what) !== undefined
      ? [{ file: what, key: kind, place: place('prepare', i, kind) }]
      : []),
    ...(text === undefined ? [] : [{ file: text, key: 'text', place: place('prepare', i, 'text') }]),
  ]);
  const pass = scoring?.pass;
  if (!pass || pass === 'none' || !pass.judges) return prepared;
  return [...prepared, { file: pass.judges, key: 'judges', place: place('scoring', 'pass', 'judges') }];
}

function missing({ file, key, place }: Named, { module, files }: ModuleRead): readonly Finding[] {
  if (files.includes(fileNamed(file) ?? file)) return [];
  const near = nearName(file, files);
  const facts = { module: module.title, file, folder: `modules/${module.id}`, key };
  return [
    near
      ? { variant: 'near', places: [place], facts: { ...facts, near, paste: `${key}: ${near}` } }
      : { places: [place], facts },
  ];
}
