import type { ShownModel } from '../../src/showing/module/show-models.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import { textList } from '../page/lists.tsx';
import type { Markup } from '../page/markup.ts';
import { shows } from '../page/place.ts';
import { defersLine } from './module-sheet.tsx';

/** What of a module on a sheet can hurt. */
export interface Careful {
  readonly models: readonly ShownModel[];
  /** Dangers of what stands at the stations. */
  readonly room: readonly Shown[];
  /** Who has the last word, and whom to ask. */
  readonly defers: string;
}

/** Whether anything of it is known to hurt. */
export function isCareful({ models, room }: Careful): boolean {
  return models.length + room.length > 0;
}

/** What of the models and the room can hurt, and who has the last word. */
export function careful({ models, room, defers }: Careful, remark?: string): Markup {
  return (
    <>
      {remark === undefined ? null : <p>{remark}</p>}
      {models.map(inModel)}
      {textList(room, 'plain')}
      {defersLine(defers)}
    </>
  );
}

/** What is in a model, and its cautions: a line each. */
function inModel({ title, contains, cautions, electrosurgery }: ShownModel): Markup {
  return (
    <p class="in-model">
      <b {...shows(title)} /> <span {...shows(contains)} />{' '}
      {cautions.map(({ word, hazard }) => (
        <>
          <b {...shows(word)} /> <span {...shows(hazard)} />{' '}
        </>
      ))}
      <span {...shows(electrosurgery)} />
    </p>
  );
}
