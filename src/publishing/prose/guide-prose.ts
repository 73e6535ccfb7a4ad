import type { Definition, Nodes } from 'mdast';
import type { Workspace } from '../../core/model/workspace.ts';
import type { MarkdownDocument } from '../../reading/prose/document.ts';
import type { Picture } from '../../rendering/figures.ts';
import type { FinishedText, ProsePlace } from '../../rendering/prose.ts';
import { renderProse } from '../../rendering/prose.ts';
import { type StepProse, renderStep } from '../../rendering/step-prose.ts';
import { properly } from '../../showing/text/author-text.ts';
import type { ProseSection } from '../../../templates/page/prose-section.tsx';
import { guideAddresses } from './guide-addresses.ts';
import type { PublishedPicture } from '../pictures/published-pictures.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';

/** The prose of a guide's page: what stands before the steps, the steps, what stands after. */
export interface GuideProse {
  readonly before: readonly ProseSection[];
  readonly steps: Readonly<Record<string, StepProse>>;
  readonly after: readonly ProseSection[];
}

export function renderGuideProse(
  planned: PlannedGuide,
  document: MarkdownDocument,
  workspace: Workspace,
  pictures: ReadonlyMap<string, PublishedPicture>,
): GuideProse {
  const place: ProsePlace = {
    ...amounts(planned, document),
    addressOf: guideAddresses(planned, workspace),
    pictureOf: (file) => addressed(pictures.get(decoded(file)), planned),
    print: properly,
    deeper: 1,
  };
  return proseAt(planned, document, place);
}

/** The same for a sheet of paper: without links and pictures. */
export function renderSheetProse(planned: PlannedGuide, document: MarkdownDocument): GuideProse {
  const place: ProsePlace = {
    ...amounts(planned, document),
    addressOf: () => undefined,
    pictureOf: () => undefined,
    withoutFigures: true,
    print: properly,
    deeper: 1,
  };
  return proseAt(planned, document, place);
}

function proseAt({ written, line }: PlannedGuide, document: MarkdownDocument, place: ProsePlace): GuideProse {
  const { sections } = written.prose;
  const definitions = definitionsOf(document);
  const below = (index: number): MarkdownDocument['root']['children'] => {
    const { from, to } = document.sections[index]!;
    return document.root.children.slice(sections[index]!.heading === '' ? from : from + 1, to);
  };
  const there = new Set(line.steps.map(({ id }) => id));
  const steps = sections.flatMap(({ step }, i) =>
    step === undefined || !there.has(step) ? [] : [[step, renderStep(below(i), definitions, place)] as const],
  );
  const firstStep = sections.findIndex(({ step }) => step !== undefined);
  const free = sections.flatMap(({ step, slug, heading }, i) =>
    step === undefined
      ? [{ i, id: `text-${slug || 'opening'}`, heading, content: renderProse(below(i), definitions, place) }]
      : [],
  );
  return {
    before: free.filter(({ i }) => firstStep < 0 || i < firstStep),
    steps: Object.fromEntries(steps),
    after: free.filter(({ i }) => firstStep >= 0 && i > firstStep),
  };
}

/** The finished text of each link that begins with an amount. */
function amounts(
  { line }: PlannedGuide,
  { links }: MarkdownDocument,
): { readonly amountOf: (link: Nodes) => FinishedText | undefined } {
  return { amountOf: (link) => line.links[links.get(link) ?? -1] };
}

export function definitionsOf({ root }: MarkdownDocument): readonly Definition[] {
  return root.children.filter((node): node is Definition => node.type === 'definition');
}

/** Pictures stand in the folder of the guide: one up for the page of another level. */
export function addressed(
  published: PublishedPicture | undefined,
  { isUsual }: PlannedGuide,
): Picture | undefined {
  return addressedIn(published, isUsual ? '' : '../');
}

/** @param up  From the page's folder to that of the picture. */
export function addressedIn(published: PublishedPicture | undefined, up: '' | '../'): Picture | undefined {
  const copies = (published ?? []).map(({ name, width, height }) => ({
    address: `${up}${name}`,
    width,
    height,
  }));
  const widest = copies.at(-1);
  return widest && { ...widest, copies };
}

function decoded(file: string): string {
  try {
    return decodeURIComponent(file);
  } catch {
    return file;
  }
}
