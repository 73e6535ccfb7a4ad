import { linkKinds, type Prose, type ProseLink } from '../../core/model/prose.ts';
import { nearName } from '../../core/near-name.ts';
import type { Report } from '../report.ts';
import type { Source } from '../text/source.ts';
import { prosePlace } from './prose-place.ts';

/** Addresses that a link may have besides our own kinds; without a scheme it is a way within the workspace. */
const schemes = ['http', 'https', 'mailto', 'tel'];

/** Reports links of a kind that there is not: `materials:felt`, `javascript:…`. */
export function reportBadLinks(prose: Prose, source: Source, report: Report): void {
  for (const link of prose.links) {
    const scheme = schemeOf(link);
    if (scheme === undefined || schemes.includes(scheme)) continue;
    const near = nearName(scheme, linkKinds);
    const facts = {
      address: link.target,
      scheme,
      text: link.text,
      kinds: linkKinds.join(', '),
      ...(near ? { near, rest: link.target.slice(scheme.length + 1) } : {}),
    };
    report(
      { code: 'link-kind-unknown', ...(near ? { variant: 'near' } : {}), facts },
      prosePlace(source, link.at),
    );
  }
}

function schemeOf(link: ProseLink): string | undefined {
  return link.kind === 'other'
    ? /^([a-zA-Z][a-zA-Z0-9+.-]*):/.exec(link.target)?.[1]?.toLowerCase()
    : undefined;
}
