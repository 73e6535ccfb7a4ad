import { describe, expect, it } from 'vitest';
import { ghsLabel } from '../../src/core/model/ghs-label.ts';
import { isFlammable } from '../../src/core/plan/scale/hazards.ts';
import { hazardStatements, pictogramNames } from '../../src/words/hazards.ts';
import { precautionaryStatements } from '../../src/words/precautions.ts';
import clpTable from './data/clp-precautions.json' with { type: 'json' };
import labels from './data/ghs-label-cases.json' with { type: 'json' };
import ghs from './data/ghs.json' with { type: 'json' };

/**
 * UN GHS Rev. 10 (2023): Annex 3 (statements and their codes, as PubChem tabulates them), Annex 1 (pictograms) and
 * 1.4.10.5.3 (which of them gives way to which). The labels were put together by hand from those rules.
 */
describe('the label of a product', () => {
  it.each(labels.cases)('has the signal word and the pictograms of $id', ({ codes, signal, pictograms }) => {
    expect(ghsLabel(codes)).toEqual({ ...(signal ? { signal } : {}), pictograms, open: [] });
  });

  // 1.4.10.5.3.1 (a) to (c): the same products with one statement more or less.
  const given: readonly (readonly [string, readonly string[], readonly string[]])[] = [
    ['the skull leaves no exclamation mark', ['H301', 'H335'], ['GHS06']],
    ['corrosion takes the place of irritation', ['H318', 'H315', 'H319'], ['GHS05']],
    ['corrosion leaves the mark of a skin sensitiser', ['H318', 'H317'], ['GHS05', 'GHS07']],
    ['a respiratory sensitiser takes the place of a skin sensitiser', ['H334', 'H317', 'H319'], ['GHS08']],
    ['and of irritation of the skin', ['H334', 'H315'], ['GHS08']],
    ['but not of what is harmful', ['H334', 'H317', 'H332'], ['GHS07', 'GHS08']],
    ['another health hazard does not', ['H351', 'H317'], ['GHS07', 'GHS08']],
  ];
  it.each(given)('%s', (_, codes, pictograms) => {
    expect(ghsLabel(codes).pictograms).toEqual(pictograms);
  });

  it('says of each statement alone what its row says, where its categories agree', () => {
    const all = ghs.hazardStatements;
    const rows = all.filter(({ code }) => all.filter((other) => other.code === code).length === 1);
    const signals = rows.filter(
      ({ code, signalWord }) => (ghsLabel([code]).signal ?? 'None') !== (signalWord ?? 'None'),
    );
    const pictures = rows.filter(
      ({ code, pictogram }) => (ghsLabel([code]).pictograms[0] ?? 'None') !== (pictogram ?? 'None'),
    );
    expect(rows.length).toBeGreaterThan(30);
    expect([...signals, ...pictures].map(({ code }) => code)).toEqual([]);
  });

  it('leaves open what the code alone does not tell', () => {
    expect(ghsLabel(['H228', 'H228'])).toEqual({ pictograms: [], open: ['H228'] });
    const solid = { signal: 'Warning', pictograms: ['GHS07'], open: ['H228'] };
    expect(ghsLabel(['H228', 'H315'])).toEqual(solid);
  });

  // CLP Regulation (EC) 1272/2008, Annex II, part 2: EUH201A is a statement of its own, not EUH201 of an organ
  it('leaves to the EU what is of the EU', () => {
    expect(ghsLabel(['EUH201A']).open).toEqual(['EUH201A']);
  });

  it('takes codes that are joined, and letters for the organ or the effect, as their parts', () => {
    const label = { signal: 'Danger', pictograms: ['GHS06', 'GHS08'], open: [] };
    expect(ghsLabel(['H301+H331', 'H360FD'])).toEqual(label);
    expect(ghsLabel(['H360FD+H301'])).toEqual(label);
  });
});

/**
 * Regulation (EC) No 1272/2008 (CLP), Annex IV, Part 2, English, consolidated version of 2025-09-01, through the table
 * of github.com/mhchem/hpstatements, which was extracted from EUR-Lex; compared code by code on 2026-11-28. The text of
 * P310 was seen on legislation.gov.uk too (Annex IV as the United Kingdom keeps it).
 */
const clp: Readonly<Record<string, string>> = clpTable.statements;
const codesOfUn = new Set(ghs.precautionaryStatements.map(({ code }) => code));
const codesOfEu = Object.keys(precautionaryStatements).filter((code) => !codesOfUn.has(code));

describe('statements', () => {
  it('that speak of gas, spray or vapour that a flame sets alight are H220 to H226', () => {
    const alight = /flammable (gas|aerosol|liquid)/i;
    const other = ghs.hazardStatements.filter(({ code, text }) => isFlammable(code) !== alight.test(text));
    expect(other.map(({ code }) => code)).toEqual([]);
  });

  it('are those of the standard, but for what it leaves to the supplier to say', () => {
    const plain = (text: string): string => text.replace(/ \(state [^)]*\)/g, '');
    const other = ghs.hazardStatements.filter(({ code, text }) => hazardStatements[code] !== plain(text));
    expect(other.map(({ code }) => code)).toEqual([]);
  });

  it('of precaution are those of the standard', () => {
    const other = ghs.precautionaryStatements.filter(
      ({ code, text }) => precautionaryStatements[code] !== text.replaceAll("'", '’'),
    );
    expect(other.map(({ code }) => code)).toEqual([]);
  });

  it('of precaution that only the EU has are those of its regulation', () => {
    const parts = `${clp['P304']} ${clp['P312']}`;
    const other = codesOfEu.filter((code) => precautionaryStatements[code] !== (clp[code] ?? parts));
    expect(other).toEqual([]);
    expect(codesOfEu.filter((code) => clp[code] === undefined)).toEqual(['P304+P312']);
    expect(codesOfEu.length).toBeGreaterThan(15);
  });

  it('of precaution are worded by the EU as by the UN, but for those where its text is another', () => {
    const other = Object.keys(precautionaryStatements).filter(
      (code) =>
        !codesOfEu.includes(code) && clp[code] !== undefined && clp[code] !== precautionaryStatements[code],
    );
    const oneMark = ['P241', 'P370+P378', 'P410+P412'];
    const otherWords = ['P103', 'P234', 'P242', 'P263', 'P264', 'P280', 'P303+P361+P353', 'P406'];
    expect(other.sort()).toEqual([...oneMark, ...otherWords].sort());
  });

  it('that the UN replaced and the EU keeps are there too', () => {
    const old = Object.values(ghs.supersededPCodes)
      .flat()
      .map((code) => code.split(' ')[0]!);
    const known = (code: string): boolean =>
      code in precautionaryStatements || code.split('+').every((part) => part in precautionaryStatements);
    expect(old.filter((code) => !known(code))).toEqual([]);
  });

  it('name the pictograms as the standard does', () => {
    const names = Object.entries(pictogramNames).map(([code, name]) => [code, name]);
    expect(names).toEqual(Object.entries(ghs.pictograms).map(([code, name]) => [code, name.toLowerCase()]));
  });
});
