import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Files } from '../../../src/publishing/paths/files.ts';
import { demoSite } from '../demo-site.ts';
import { pagesOf, tagsOf } from '../html.ts';

let site: Files = new Map();
beforeAll(async () => {
  site = await demoSite(['trainees']);
}, 240_000);

const folders = ['needle-block', 'needle-block/deep', 'suture-pad'].map((id) => `trainees/guides/${id}`);
const text = (path: string): string => new TextDecoder().decode(site.get(path));
const dataOf = (html: string) =>
  JSON.parse(/<script type="application\/ld\+json">([^<]*)<\/script>/.exec(html)![1]!) as {
    readonly step: readonly { readonly url: string; readonly text: string; readonly name: string }[];
    readonly description: string;
    readonly tool: readonly unknown[];
  };

describe('beside the page of each guide and level', () => {
  it.each(['needle-block', 'needle-block/deep', 'suture-pad'])('stands its plan as JSON: %s', (id) => {
    const plan = JSON.parse(text(`trainees/guides/${id}/plan.json`)) as { format: string; demand: unknown[] };
    expect(plan.format).toBe('benchwright-plan/1');
    expect(plan.demand).toHaveLength(1);
  });

  it('stand its shopping list and its day list as tables with a head and rows', () => {
    for (const folder of folders) {
      for (const name of ['shopping.csv', 'days.csv']) {
        const rows = parse(text(`${folder}/${name}`), { columns: true, bom: true });
        expect(rows.length).toBeGreaterThan(3);
      }
    }
  });

  it('stands no calendar, since the reference week has no dates, and its page says what writes one', () => {
    expect([...site.keys()].filter((path) => path.endsWith('.ics'))).toEqual([]);
    expect(text(`${folders[1]}/index.html`)).toContain('benchwright plan needle-block:deep=');
  });

  it('are links to those files on the page', () => {
    for (const folder of folders) {
      const links = tagsOf(text(`${folder}/index.html`)).map(({ attributes }) => attributes['href']);
      expect(links).toEqual(expect.arrayContaining(['plan.json', 'shopping.csv', 'days.csv']));
    }
  });
});

describe('the JSON-LD of each guide', () => {
  const guides = () =>
    pagesOf(site).filter(
      ([path, html]) => path.includes('/guides/') && html.includes('<script type="application/ld+json">'),
    );

  it('leads from every step to a place of its page that is there', () => {
    expect(guides().length).toBeGreaterThan(6);
    for (const [path, html] of guides()) {
      const ids = new Set(tagsOf(html).map(({ attributes }) => attributes['id']));
      const { step } = dataOf(html);
      expect(step.length).toBeGreaterThan(0);
      for (const { url } of step) expect([path, ids.has(url.split('#')[1])]).toEqual([path, true]);
    }
  });

  it('never parts a caution from its step, and says what the model is for', () => {
    const { step, description } = dataOf(text(`${folders[0]}/index.html`));
    const melt = step.find(({ url }) => url.endsWith('#step-melt-the-gel'))!;
    expect(melt.text).toMatch(/^WARNING: .*60 °C/);
    expect(description).toContain('For training only, never for patient care');
  });
});
