import type { ElementContent, Element } from 'hast';
import type { Definition, Heading, RootContent } from 'mdast';
import { figuresApart } from './figures.ts';
import { plainText, renderProse, type ProsePlace } from './prose.ts';

/** The prose of one step, apart by what it is for. */
export interface StepProse {
  /** `### Be careful`: stands before the acts. */
  readonly careful: readonly ElementContent[];
  readonly acts: readonly ElementContent[];
  readonly rightWhen: readonly ElementContent[];
  readonly ifNot: readonly ElementContent[];
  readonly figures: readonly Element[];
}

type Part = Exclude<keyof StepProse, 'figures'>;
const partOfHeading: Readonly<Record<string, Part>> = {
  'be careful': 'careful',
  'right when': 'rightWhen',
  'if not': 'ifNot',
};

/**
 * What a step says, in its parts. A heading of level 3 that is none of the three belongs, with what is below it, to
 * the acts.
 *
 * @param nodes  All below the step's own heading.
 */
export function renderStep(
  nodes: readonly RootContent[],
  definitions: readonly Definition[],
  place: ProsePlace,
): StepProse {
  const parts = partsOf(nodes);
  const rendered = (part: Part): ElementContent[] => renderProse(parts[part], definitions, place);
  const { figures, rest } = figuresApart(rendered('acts'));
  return {
    careful: rendered('careful'),
    acts: rest,
    rightWhen: rendered('rightWhen'),
    ifNot: rendered('ifNot'),
    figures,
  };
}

function partsOf(nodes: readonly RootContent[]): Record<Part, RootContent[]> {
  const parts: Record<Part, RootContent[]> = { careful: [], acts: [], rightWhen: [], ifNot: [] };
  let part: Part = 'acts';
  for (const node of nodes) {
    const next = node.type === 'heading' && node.depth === 3 ? partOfHeading[wordsOf(node)] : undefined;
    if (node.type === 'heading' && node.depth <= 3) part = next ?? 'acts';
    if (next === undefined) parts[part].push(node);
  }
  return parts;
}

/** "Right when:" -> `right when`. */
function wordsOf(heading: Heading): string {
  return plainText(heading).trim().toLowerCase().replace(/[:.]$/, '');
}
