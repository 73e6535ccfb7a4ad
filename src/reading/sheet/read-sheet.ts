import { parseDocument, type Document } from 'yaml';
import type { Place } from '../../core/diagnostic.ts';
import type { Report } from '../report.ts';
import { placeAt, placeOfLine, type Source } from '../text/source.ts';
import { reportEatenText } from './eaten-text.ts';
import { reportHiddenEscapes } from './hidden-escapes.ts';
import { reportNesting } from './nesting.ts';
import { reportRefusedYaml } from './refused-yaml.ts';
import type { Path, Sheet, Spot, YamlText } from './sheet.ts';
import { reportRepeatedKeys, reportSyntax } from './syntax.ts';
import { valuesAndSpans, type Spans } from './values-and-spans.ts';

/** The values of a YAML text, or `undefined` after a report of all that keeps it from being read. */
export function readSheet(source: Source, yaml: YamlText, report: Report): Sheet | undefined {
  if (reportNesting(source, yaml, report)) return undefined;
  const document = parse(yaml.text);
  const spot: Spot = (from, to) => placeAt(source, from + yaml.offset, to + yaml.offset);
  const repeated = reportRepeatedKeys(document, source, spot, report);
  const unreadable =
    reportSyntax(document, source, spot, report) || reportRefusedYaml(document, spot, report);
  if (unreadable) return undefined;
  const eaten = reportEatenText(document, yaml.text, spot, report);
  const hidden = reportHiddenEscapes(document, spot, report);
  const { values, spans } = valuesAndSpans(document.contents);
  return { source, values, faulty: repeated || eaten || hidden, ...placesIn(spans, source, spot) };
}

function parse(text: string): Document.Parsed {
  return parseDocument(text, {
    version: '1.2',
    schema: 'failsafe',
    merge: false,
    uniqueKeys: true,
    prettyErrors: false,
    logLevel: 'error',
    keepSourceTokens: true,
  });
}

function placesIn(
  spans: ReadonlyMap<string, Spans>,
  source: Source,
  spot: Spot,
): Pick<Sheet, 'valueAt' | 'keyAt'> {
  const at = (path: Path, which: 'key' | 'value'): Place => {
    const found = spans.get(path.join('/'));
    if (found) return spot(...(which === 'key' ? (found.key ?? found.value) : found.value));
    return path.length > 1 ? at(path.slice(0, -1), 'value') : placeOfLine(source, 1);
  };
  return { valueAt: (path) => at(path, 'value'), keyAt: (path) => at(path, 'key') };
}
