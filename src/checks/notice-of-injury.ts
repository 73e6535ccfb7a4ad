import type { Check } from './check.ts';

/** Words of injury. A rule of thumb: common practice, no source. */
const injury =
  /\b(injur(y|ies|es?|ed)|wounds?|burns? (you|people|skin|hands?|fingers?)|scalds?|bleed(s|ing)?|chok(es?|ing)|poison(s|ing)?|blind(s|ness)?|allerg(y|ies|ic)|asthma|fainting)\b/i;

/** A notice, in English, whose words speak of injury: a notice is about damage to things. */
export const noticeOfInjury: Check = {
  code: 'notice-of-injury',
  gravity: 'doubtful',
  find: ({ guides, workspace: { program } }) =>
    /^en\b/i.test(program.locale)
      ? guides.flatMap(({ guide, place }) =>
          guide.cautions.flatMap(({ id, signal, hazard, harm = '' }, i) => {
            const word = injury.exec(`${hazard}\n${harm}`)?.[0];
            if (signal !== 'notice' || word === undefined) return [];
            return [{ places: [place('cautions', i, 'signal')] as const, facts: { notice: id, word } }];
          }),
        )
      : [],
};
