import { fileNamed } from '../core/model/file-named.ts';
import type { Check } from './check.ts';
import { isToHandOut, moduleFileKinds } from './lookup/module-file-kind.ts';

/** A file to prepare with that a browser would open as a page, so that it could run, or that few programs open. */
export const moduleFileKindUnknown: Check = {
  code: 'module-file-kind-unknown',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap(({ module, files, place }) =>
      module.prepare.flatMap(({ kind, what, text }, i) =>
        [
          { file: what, key: kind },
          { file: text, key: 'text' },
        ].flatMap(({ file, key }) =>
          file !== undefined && files.includes(fileNamed(file) ?? file) && !isToHandOut(file)
            ? [
                {
                  places: [place('prepare', i, key)] as const,
                  facts: { file, key, kinds: moduleFileKinds.join(', ') },
                },
              ]
            : [],
        ),
      ),
    ),
};
