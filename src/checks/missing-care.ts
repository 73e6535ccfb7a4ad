import type { GuideRead } from './lookup/context.ts';
import type { Check, Finding } from './check.ts';

/** A guide that leaves out how a model is stored, cleaned or thrown away. */
export const missingCare: Check = {
  code: 'missing-care',
  gravity: 'incomplete',
  find: ({ guides }) => guides.flatMap(ofGuide),
};

function ofGuide({ guide, place, key }: GuideRead): readonly Finding[] {
  const { store, dispose, between, after } = guide.inUse;
  const said = { store: store?.how, clean: between?.do ?? after?.do, dispose: dispose?.to };
  const unsaid = Object.entries(said).flatMap(([variant, text]) => (text === undefined ? [variant] : []));
  const facts = { guide: guide.title };
  if (unsaid.length === 3) return [{ variant: undefined, places: [place('title')], facts }];
  return unsaid.map((variant) => ({ variant, places: [key('in-use')], facts }));
}
