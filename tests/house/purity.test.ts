import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../src', import.meta.url));

/** The compiler proves that core has no file, DOM or Node; these four it would let through. */
const impure = /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bIntl\b|\btoLocale\w+\(|\bTemporal\b/;

it.each(['core', 'words', 'showing', 'exports', 'rendering', 'checks'])(
  '%s asks no clock, chance or locale',
  (folder) => {
    const files = readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.ts'),
    );
    expect(files.length).toBeGreaterThan(0);
    const guilty = files.filter((name) =>
      impure.test(withoutComments(readFileSync(join(root, folder, name), 'utf8'))),
    );
    expect(guilty).toEqual([]);
  },
);

function withoutComments(source: string): string {
  return source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\/\/.*$/gm, '');
}
