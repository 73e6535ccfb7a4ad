import type { ShownModel } from '../../src/showing/module/show-models.ts';
import { mostSevereFirst } from '../../src/showing/safety/show-cautions.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import { moduleWords } from '../../src/words/modules.ts';
import { cautionPanel } from '../page/caution.tsx';
import { textList } from '../page/lists.tsx';
import type { Markup } from '../page/markup.ts';
import type { Site } from '../page/site.ts';
import { part } from '../page/part.tsx';
import { policyNote } from '../page/policy-note.tsx';
import { shows } from '../page/place.ts';

const { models: words, trainee } = moduleWords;

/** What of a module's page the dangers are made of. */
export interface CarefulView {
  readonly site: Site;
  readonly models: readonly ShownModel[];
  /** Dangers of what stands at the stations. */
  readonly room: readonly Shown[];
}

/** What of the models of a session can hurt: cautions first, then each model with what is in it and its dangers. */
export function moduleCareful(view: CarefulView, remark = ''): Markup {
  const { site, models, room } = view;
  const cautions = mostSevereFirst(models.flatMap((model) => model.cautions));
  return part(
    'careful',
    trainee.careful,
    <>
      {cautions.length > 0 ? (
        <ul class="cautions">{cautions.map((caution) => cautionPanel(caution))}</ul>
      ) : null}
      {room.length > 0 ? (
        <div class="in-room">
          <h3>{words.room}</h3>
          {textList(room, 'plain')}
        </div>
      ) : null}
      {models.length > 0 ? <ul class="in-models">{models.map(modelDangers)}</ul> : null}
      <p class="defers">{site.defers}</p>
      {policyNote(site)}
    </>,
    <p>{remark}</p>,
  );
}

function modelDangers({ title, level, contains, hazards, electrosurgery }: ShownModel): Markup {
  return (
    <li>
      <h3>
        <span {...shows(title)} />
        {level ? <span class="level" {...shows(level)} /> : null}
      </h3>
      <p>
        <strong {...shows(contains)} />
      </p>
      {hazards.length > 0 ? (
        <>
          <p class="hazards-of">{words.hazards}</p>
          {textList(hazards, 'plain')}
        </>
      ) : null}
      <p class="electrosurgery" {...shows(electrosurgery)} />
    </li>
  );
}
