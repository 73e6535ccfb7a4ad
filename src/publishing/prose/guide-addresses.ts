import { type LinkKind, linkKinds } from '../../core/model/prose.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { articleAddress, leadsOff, linkParts } from './article-addresses.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';

/** Where the target of a link of one kind is found, from the guide's page; undefined where it is nowhere. */
type Finder = (target: string, planned: PlannedGuide, workspace: Workspace) => string | undefined;

const finders: Readonly<Record<LinkKind, Finder>> = {
  caution: (id, { line }) =>
    line.cautions.some((caution) => caution.id === id) ? `#caution-${id}` : undefined,
  guide: (id, { folder }, workspace) => articleAddress('guide', id, folder, workspace),
  material: materialAddress,
  module: (id, { folder }, workspace) => articleAddress('module', id, folder, workspace),
  set: (name, { line, written }) => {
    const step = line.steps.find(({ id }) => written.steps.some((own) => own.id === id && name in own.set));
    return step && `#step-${step.id}`;
  },
  step: (id, { line }) => (line.steps.some((step) => step.id === id) ? `#step-${id}` : undefined),
  tool: (id, { folder }, workspace) => articleAddress('tool', id, folder, workspace),
};

/** A material leads to its own entry, a mix to its row on the page. */
function materialAddress(
  target: string,
  { folder, written, line }: PlannedGuide,
  workspace: Workspace,
): string | undefined {
  const row = written.materials.find(({ id, use }) => id === target || use === target);
  const material = [target, row?.use ?? ''].find((id) => workspace.materials[id]);
  if (material !== undefined) return articleAddress('material', material, folder, workspace);
  return row && line.materials.some(({ id }) => id === row.id) ? `#row-${row.id}` : undefined;
}

/** Addresses as prose writes them -> as its page has them. What leads nowhere on the site leads nowhere. */
export function guideAddresses(
  planned: PlannedGuide,
  workspace: Workspace,
): (written: string) => string | undefined {
  return (written) => {
    const [kind, target] = linkParts(written);
    const own = linkKinds.find((known) => known === kind);
    if (own) return finders[own](target, planned, workspace);
    if (leadsOff(kind)) return written;
    return written.startsWith('#') ? sectionAddress(written.slice(1), planned) : undefined;
  };
}

/** `#chill-the-blocks`, as any viewer of Markdown understands it. */
function sectionAddress(slug: string, { written, line }: PlannedGuide): string | undefined {
  const section = written.prose.sections.find((known) => known.slug === slug);
  if (!section) return undefined;
  if (section.step === undefined) return `#text-${slug}`;
  return line.steps.some(({ id }) => id === section.step) ? `#step-${section.step}` : undefined;
}
