import { type Change, type Reviewed, reviewStatuses } from '../core/model/reviewed.ts';
import type { ReviewedShape } from './shape/reviewed-shape.ts';
import { field, given, items, read, readEach, type Written } from './sheet/written.ts';
import { oneOfThese, readDay, readLicence, readWords } from './values/plain-words.ts';

/** What guides and modules have alike in their front matter. */
export function readReviewed(from: Written<ReviewedShape>): Reviewed {
  return given<Reviewed>({
    title: read(from, 'title', readWords) ?? '',
    status: read(from, 'status', oneOfThese(reviewStatuses)) ?? 'draft',
    version: read(from, 'version', readWords),
    approved: readApproved(from),
    licence: read(from, 'licence', readLicence),
    summary: read(from, 'summary', readWords),
    history: items(field(from, 'history')).map(readChange),
    sources: readEach(from, 'sources', readWords),
  });
}

function readApproved(from: Written<ReviewedShape>): Reviewed['approved'] {
  const approved = field(from, 'approved');
  if (!approved) return undefined;
  return given<NonNullable<Reviewed['approved']>>({
    by: read(approved, 'by', readWords),
    on: read(approved, 'on', readDay),
    until: read(approved, 'until', readDay),
  });
}

function readChange(from: Written<NonNullable<ReviewedShape['history']>[number]>): Change {
  return given<Change>({
    version: read(from, 'version', readWords) ?? '',
    on: read(from, 'on', readDay),
    what: read(from, 'what', readWords) ?? '',
  });
}
