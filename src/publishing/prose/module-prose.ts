import { isForStaff } from '../../core/model/for-staff.ts';
import type { Module } from '../../core/model/module.ts';
import type { ProseImage } from '../../core/model/prose.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { MarkdownDocument } from '../../reading/prose/document.ts';
import { type ProsePlace, renderProse } from '../../rendering/prose.ts';
import { properly } from '../../showing/text/author-text.ts';
import type { ProseSection } from '../../../templates/page/prose-section.tsx';
import { articleAddress, leadsOff, linkParts } from './article-addresses.ts';
import type { PublishedPicture } from '../pictures/published-pictures.ts';
import { addressedIn, definitionsOf } from './guide-prose.ts';

/** The prose of a module, apart by who may read it. */
export interface ModuleProse {
  /** Sections for everybody, in the order of the file; the first without a heading where the file opens so. */
  readonly all: readonly ProseSection[];
  /** What stands below the heading "For instructors". */
  readonly staff: readonly ProseSection[];
}

/** A module's prose with the pictures of those sections alone that all may read, or that are for staff. */
export function shownTo(reader: keyof ModuleProse, { prose }: Module): Pick<Module, 'prose'> {
  const isTheirs = ({ section }: ProseImage): boolean =>
    isForStaff(prose.sections[section]!) === (reader === 'staff');
  return { prose: { ...prose, images: prose.images.filter(isTheirs) } };
}

/** @param up  From the page's folder to the module's own: `../` on a page below it. */
export function renderModuleProse(
  module: Module,
  document: MarkdownDocument,
  workspace: Workspace,
  pictures: ReadonlyMap<string, PublishedPicture>,
  up: '' | '../' = '',
): ModuleProse {
  const place = placeOf(module, workspace, pictures, up);
  const definitions = definitionsOf(document);
  const sections = module.prose.sections.map(({ heading, slug }, i) => {
    const { from, to } = document.sections[i]!;
    const below = document.root.children.slice(heading === '' ? from : from + 1, to);
    return { id: `text-${slug || 'opening'}`, heading, content: renderProse(below, definitions, place) };
  });
  return {
    all: sections.filter((section) => !isForStaff(section)),
    staff: sections.filter(isForStaff),
  };
}

function placeOf(
  module: Module,
  workspace: Workspace,
  pictures: ReadonlyMap<string, PublishedPicture>,
  up: '' | '../',
): ProsePlace {
  const folder = up === '' ? `modules/${module.id}` : `modules/${module.id}/below`;
  return {
    addressOf: (written) => {
      const [kind, target] = linkParts(written);
      if (kind === 'guide' || kind === 'material' || kind === 'module' || kind === 'tool')
        return articleAddress(kind, target, folder, workspace);
      if (leadsOff(kind)) return written;
      return sectionAddress(written, module);
    },
    amountOf: () => undefined,
    pictureOf: (file) => addressedIn(pictures.get(file), up),
    print: properly,
    deeper: 1,
  };
}

/** `#four-landmarks`, where trainees may read it. */
function sectionAddress(written: string, { prose }: Module): string | undefined {
  const section = prose.sections.find(({ slug }) => written === `#${slug}`);
  return section && !isForStaff(section) ? `#text-${section.slug}` : undefined;
}
