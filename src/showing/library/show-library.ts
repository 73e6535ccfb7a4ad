import type { Holding, Material, Pack } from '../../core/model/material.ts';
import type { Tool } from '../../core/model/tool.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { exact } from '../../core/quantity/exact.ts';
import { inCurrency } from '../../core/money/money.ts';
import { libraryWords } from '../../words/library.ts';
import { nouns } from '../../words/units.ts';
import { showAsWritten, showSize } from '../text/amounts.ts';
import { properly } from '../text/author-text.ts';
import { dangerText } from '../safety/danger-text.ts';
import { showRecordDate } from '../text/dates.ts';
import { fill, inWords, noBreak } from '../text/fill.ts';
import { showMoney } from '../text/money.ts';
import { materialName } from '../text/names.ts';
import { showCount, showRatio } from '../text/numbers.ts';
import { labelText, precautionText } from '../safety/show-ghs.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { showDuration, showKeeping } from '../text/times.ts';

/** A material or a tool as finished text, apart from any plan. */
export interface ShownArticle {
  readonly id: string;
  readonly name: Shown;
  /** "bloom 240–260, unflavoured": what it must be. */
  readonly must: readonly Shown[];
  readonly packs: readonly ShownPack[];
  readonly free: boolean;
  /** What else is known: density, how long it keeps, price and life of a tool. */
  readonly facts: readonly { readonly name: Shown; readonly value: Shown }[];
  /** "Flammable aerosol (H223)". */
  readonly dangers: readonly Shown[];
  /** Signal word and pictograms of its label, by the codes; empty without any. */
  readonly label: Shown;
  /** "Keep container tightly closed. (P233)", as the label has them. */
  readonly precautions: readonly Shown[];
  readonly directions?: { readonly says: Shown; readonly link?: string };
  readonly dataSheet?: { readonly dated: Shown; readonly link?: string };
  readonly notWith: readonly { readonly id: string; readonly name: Shown }[];
  readonly instead: readonly { readonly id: string; readonly name: Shown; readonly says: Shown }[];
}

export interface ShownPack {
  readonly holds: Shown;
  readonly price: Shown;
  readonly priced: Shown;
  readonly from: Shown;
  readonly arrives: Shown;
}

/** Materials by name, as their page lists them. */
export function showMaterialArticles(workspace: Workspace): readonly ShownArticle[] {
  return byName(Object.values(workspace.materials)).map((material) => showMaterial(material, workspace));
}

/** Tools by name, as their page lists them. */
export function showToolArticles(workspace: Workspace): readonly ShownArticle[] {
  return byName(Object.values(workspace.tools)).map((tool) => showTool(tool, workspace));
}

function byName<T extends { readonly name: string; readonly id: string }>(
  articles: readonly T[],
): readonly T[] {
  const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
  return [...articles].sort((a, b) => order(a.name.toLowerCase(), b.name.toLowerCase()) || order(a.id, b.id));
}

function showMaterial(material: Material, workspace: Workspace): ShownArticle {
  const key = `materials.${material.id}`;
  const { directions, dataSheet } = material;
  return {
    id: material.id,
    name: shown(`${key}.name`, properly(material.name)),
    must: material.must.map((text, i) => shown(`${key}.must[${i}]`, properly(text))),
    packs: material.packs.map((pack, i) => showPack(`${key}.packs[${i}]`, pack, workspace)),
    free: material.free,
    facts: named(`${key}.facts`, materialFacts(material)),
    dangers: showDangers(`${key}.dangers`, material.hazards, material.also),
    label: shown(`${key}.label`, labelText(material)),
    precautions: material.precautions.map((code, i) =>
      shown(`${key}.precautions[${i}]`, precautionText(code)),
    ),
    ...(directions
      ? {
          directions: {
            says: shown(`${key}.directions`, properly(directions.says ?? '')),
            ...linkOf(directions),
          },
        }
      : {}),
    ...(dataSheet
      ? { dataSheet: { dated: shown(`${key}.dataSheet`, datedText(dataSheet.dated)), ...linkOf(dataSheet) } }
      : {}),
    notWith: material.notWith.map((id) => ({
      id,
      name: shown(`${key}.notWith.${id}`, materialName(id, workspace)),
    })),
    instead: material.instead.map(({ use, ...rest }) => ({
      id: use,
      name: shown(`${key}.instead.${use}.name`, materialName(use, workspace)),
      says: shown(`${key}.instead.${use}.says`, insteadText(rest)),
    })),
  };
}

function showPack(
  key: string,
  { holds, price, priced, from, arrivesIn }: Pack,
  { program }: Workspace,
): ShownPack {
  const known = price && inCurrency(price, program);
  const supplier = program.suppliers[from ?? ''];
  const arrives = arrivesIn ?? supplier?.arrivesIn;
  return {
    holds: shown(`${key}.holds`, holdingText(holds)),
    price: shown(`${key}.price`, known ? showMoney(known, program) : ''),
    priced: shown(`${key}.priced`, priced === undefined ? '' : showRecordDate(priced)),
    from: shown(`${key}.from`, supplier?.name ?? from ?? ''),
    arrives: shown(`${key}.arrives`, arrives ? showDuration(arrives) : ''),
  };
}

function holdingText({ count, each }: Holding): string {
  const one = 'sides' in each ? showSize(each) : showAsWritten(each);
  return count === 1 ? one : `${showCount(count)} × ${one}`;
}

function materialFacts({ density, keeps, times }: Material): readonly (readonly [string, string])[] {
  const { closed, opened } = keeps;
  return [
    ...(density ? [[libraryWords.density, densityText(density)] as const] : []),
    ...(closed ? [[libraryWords.keepsClosed, showKeeping(closed)] as const] : []),
    ...(opened ? [[libraryWords.keepsOpened, showKeeping(opened)] as const] : []),
    ...Object.entries(times).map(
      ([name, time]) => [fill(libraryWords.times, { name: inWords(name) }), showDuration(time)] as const,
    ),
  ];
}

function densityText({ gramsPerMillilitre, source }: NonNullable<Material['density']>): string {
  const density = showRatio(exact(gramsPerMillilitre));
  const text =
    source === undefined
      ? fill(libraryWords.densityPlain, { density })
      : fill(libraryWords.densityIs, { density, source });
  return properly(text);
}

function insteadText({ ratio, tried, note }: Omit<Material['instead'][number], 'use'>): string {
  const said = [
    fill(libraryWords.ratio, { ratio: showRatio(exact(ratio)) }),
    tried ? libraryWords.tried : libraryWords.untried,
    ...(note === undefined ? [] : [properly(note)]),
  ];
  return said.join('; ');
}

function showTool(tool: Tool, workspace: Workspace): ShownArticle {
  const key = `tools.${tool.id}`;
  return {
    id: tool.id,
    name: shown(`${key}.name`, properly(tool.name)),
    must: [],
    packs: [],
    free: false,
    facts: named(`${key}.facts`, toolFacts(tool, workspace)),
    dangers: showDangers(`${key}.dangers`, [], tool.also),
    label: shown(`${key}.label`, ''),
    precautions: [],
    notWith: [],
    instead: [],
  };
}

function toolFacts(
  { id, price, priced, lasts, reads }: Tool,
  { program }: Workspace,
): readonly (readonly [string, string])[] {
  const known = price && inCurrency(price, program);
  const owned = program.owned[id];
  return [
    ...(reads ? [[libraryWords.reads, showAsWritten(reads)] as const] : []),
    ...(owned === undefined ? [] : [[libraryWords.owned, showCount(owned)] as const]),
    ...(known ? [[libraryWords.price, priceText(showMoney(known, program), priced)] as const] : []),
    ...(lasts === undefined
      ? []
      : [[libraryWords.lasts, `${showRatio(exact(lasts))}${noBreak}${nouns.use.many}`] as const]),
  ];
}

function priceText(price: string, priced: string | undefined): string {
  return priced === undefined ? price : fill(libraryWords.priceOn, { price, date: showRecordDate(priced) });
}

function showDangers(key: string, hazards: readonly string[], also: readonly string[]): readonly Shown[] {
  return [...hazards, ...also].map((danger, i) => shown(`${key}[${i}]`, dangerText(danger)));
}

function datedText(date: string | undefined): string {
  return date === undefined ? '' : fill(libraryWords.dated, { date: showRecordDate(date) });
}

const linkOf = ({ link }: { readonly link?: string }): { readonly link?: string } =>
  link === undefined ? {} : { link };

function named(
  key: string,
  facts: readonly (readonly [name: string, value: string])[],
): ShownArticle['facts'] {
  return facts.map(([name, value], i) => ({
    name: shown(`${key}[${i}].name`, name),
    value: shown(`${key}[${i}].value`, value),
  }));
}
