import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadFolder } from '../../src/reading/from-disk.ts';
import { read } from '../../src/reading/read.ts';
import type { Files } from '../../src/publishing/paths/files.ts';
import { makeSite } from '../../src/publishing/site.ts';
import { manualNow, picturesNow, shippedNow, today } from './demo-site.ts';

/*
 * What only instructors may see is nowhere in the trainees' edition: a module has a mark of its own in every text for
 * staff, and all bytes of all files of both editions are searched for all marks.
 */

const folder = fileURLToPath(new URL('../../content/quillmoor', import.meta.url));
const id = 'opening-an-abscess';
const marks: string[] = [];

/** A word that stands nowhere else. */
function staff(): string {
  const mark = `staffmark${String(marks.length).padStart(3, '0')}x`;
  marks.push(mark);
  return mark;
}

const moduleText = `---
title: Opening an abscess
version: 1.0.0
status: draft
objectives:
  - id: open-it
    does: open an abscess
    shown-by: shows-how
    practised-at: [pouches]
    assessed-by: [item, rating]
cohort:
  ratio: 6
  people: [{ id: trainees, count: 6 }]
  instructors: 1
session:
  booked: 1 h
  agenda:
    - { id: brief, takes: 10 min, script: ["Say ${staff()}."] }
    - { id: practice, stations: [pouches] }
    - { id: debrief, takes: 10 min }
    - { id: slack, takes: the rest }
stations:
  - id: pouches
    takes: 25 min
    seats: 6
    models: [{ guide: abscess-pouch, uses: 1, share: own }]
    meanwhile: ["Do ${staff()}."]
scoring:
  limit: 10 min
  items: [{ id: item, says: "See ${staff()}", weight: 3, critical: yes, objectives: [open-it] }]
  ratings:
    - { id: rating, says: "Rate ${staff()}", anchors: { 1: "${staff()}", 3: "${staff()}", 5: "${staff()}" }, objectives: [open-it] }
  penalties: [{ when: "when ${staff()}", adds: 30 s, at-most: 3 }]
  rater-notes: ["Agree ${staff()}."]
  pass: { none-set: yes }
surveys:
  items: [{ id: sure, ask: "Sure of ${staff()}?", scale: { 1: "${staff()}", 5: "${staff()}" }, asked: [before, after] }]
debrief: ["Ask ${staff()}."]
---
You open a pouch.

## For instructors

Tell nobody ${staff()}.

![A drawing of ${staff()}](staff.svg)

## How you are judged

Somebody watches.
`;
const drawing = `<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10" viewBox="0 0 10 10"><title>${staff()}</title><path d="M0 0h9"/></svg>`;

let site: Files = new Map();
beforeAll(async () => {
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
  const { files } = await loadFolder(folder);
  const marked = new Map([
    ...files,
    [`modules/${id}/module.md`, bytes(moduleText)] as const,
    [`modules/${id}/staff.svg`, bytes(drawing)] as const,
  ]);
  const [workspace, shipped, manual] = [read(marked), await shippedNow(), await manualNow()];
  expect(workspace.diagnostics).toEqual([]);
  const pictures = await picturesNow(workspace);
  const made = makeSite({ read: workspace, pictures, today, shipped, manual });
  if ('refused' in made) throw new Error(JSON.stringify(made.refused));
  site = made;
}, 120_000);

function filesOf(edition: 'trainees' | 'staff'): readonly (readonly [path: string, bytes: Buffer])[] {
  return [...site]
    .filter(([path]) => path.startsWith(`${edition}/`))
    .map(([path, bytes]) => [path, Buffer.from(bytes)] as const);
}

describe('the two editions', () => {
  it('have every text for staff in the staff edition', () => {
    const all = filesOf('staff');
    expect(marks.length).toBeGreaterThan(15);
    expect(marks.filter((mark) => !all.some(([, bytes]) => bytes.includes(mark)))).toEqual([]);
  });

  it('have none of them in any byte of any file for trainees', () => {
    const all = filesOf('trainees');
    expect(all.length).toBeGreaterThan(100);
    const found = marks.flatMap((mark) =>
      all.filter(([, bytes]) => bytes.includes(mark)).map(([path]) => `${mark} in ${path}`),
    );
    expect(found).toEqual([]);
  });

  it('have pages, sheets and scripts for staff in the staff edition alone', () => {
    const inside = (edition: 'trainees' | 'staff'): readonly string[] =>
      filesOf(edition).map(([path]) => path.slice(edition.length + 1));
    const trainees = new Set(inside('trainees'));
    const staffAlone = inside('staff').filter((path) => !trainees.has(path));
    for (const path of ['session/index.html', 'score-sheets/index.html', 'surveys/index.html', 'staff.svg']) {
      expect(staffAlone).toContain(`modules/${id}/${path}`);
    }
    expect(staffAlone).toContain('scripts/session.js');
  });

  it('have no link from the trainees’ pages of modules to a file that is for staff', () => {
    const paths = new Set(site.keys());
    const dead = filesOf('trainees')
      .filter(([path]) => /\/modules\/.*\.html$/.test(path))
      .flatMap(([path, bytes]) => {
        const links = [...bytes.toString().matchAll(/href="([^"#:]+)(?:#[^"]*)?"/g)].map(([, href]) => href!);
        const targets = links.map((href) => new URL(href, `file:///${path}`).pathname.slice(1));
        return targets.filter((target) => !paths.has(target)).map((target) => `${path} -> ${target}`);
      });
    expect(dead).toEqual([]);
  });
});
