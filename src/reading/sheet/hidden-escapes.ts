import { visit, type Document } from 'yaml';
import type { Report } from '../report.ts';
import { hiddenIn } from '../text/hidden.ts';
import type { Spot } from './sheet.ts';

/** Reports quoted texts that bring in by an escape, `"\u202e"`, what a file may not hold as it is. */
export function reportHiddenEscapes(document: Document.Parsed, spot: Spot, report: Report): boolean {
  let isFound = false;
  visit(document, {
    Scalar: (_, { value, range }) => {
      const found = typeof value === 'string' ? hiddenIn(value) : undefined;
      if (!found) return;
      isFound = true;
      report(found, spot(range![0], range![1]));
    },
  });
  return isFound;
}
