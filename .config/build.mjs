/**
 * Makes what `bin` and `exports` name, and the files that the published site ships.
 *
 *     dist/cli.js, dist/index.js      one file each, packages of node_modules bundled
 *     dist/{schedule,cutting,packs}.js  the general problems alone, for other programs
 *     dist/types/                      declarations of the library
 *     dist/shipped/{styles,scripts,fonts}/   copied into every site by `publish`
 *     dist/manual/                    the manual, published with every site
 */
import { build } from 'esbuild';
import { execFile } from 'node:child_process';
import { chmod, copyFile, cp, mkdir, readFile, readdir, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const root = fileURLToPath(new URL('..', import.meta.url));
const dist = join(root, 'dist');
const { version } = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'));

await rm(dist, { recursive: true, force: true });
await Promise.all([
  bundleNode(),
  bundleBrowser(),
  copyFonts(),
  bundleStyles(),
  cp(join(root, 'content/manual'), join(dist, 'manual'), { recursive: true }),
  declareTypes(),
]);

async function bundleNode() {
  await build({
    absWorkingDir: root,
    entryPoints: {
      cli: 'src/cli/main.ts',
      index: 'src/index.ts',
      schedule: 'src/schedule.ts',
      cutting: 'src/cutting.ts',
      packs: 'src/packs.ts',
    },
    outdir: 'dist',
    bundle: true,
    splitting: true,
    chunkNames: 'parts/[name]-[hash]',
    format: 'esm',
    platform: 'node',
    target: 'node20',
    define: { BENCHWRIGHT_VERSION: JSON.stringify(version) },
    jsx: 'automatic',
    jsxImportSource: 'hastscript',
    // It has parts in machine code, which stay in its own package.
    external: ['sharp'],
    // Some bundled packages are CommonJS and ask for Node's own modules.
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    legalComments: 'none',
    logLevel: 'warning',
  });
  await chmod(join(dist, 'cli.js'), 0o755);
}

async function bundleBrowser() {
  const folder = join(root, 'src/browser');
  const entries = (await readdir(folder)).filter((name) => name.endsWith('.entry.ts'));
  await build({
    absWorkingDir: root,
    entryPoints: Object.fromEntries(
      entries.map((name) => [name.replace('.entry.ts', ''), `src/browser/${name}`]),
    ),
    outdir: 'dist/shipped/scripts',
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: ['chrome109', 'firefox115', 'safari16'],
    legalComments: 'none',
    logLevel: 'warning',
  });
}

async function bundleStyles() {
  const folder = join(root, 'templates/styles');
  const entries = (await readdir(folder)).filter((name) => name.endsWith('.css') && !name.startsWith('_'));
  await build({
    absWorkingDir: root,
    entryPoints: entries.map((name) => `templates/styles/${name}`),
    outdir: 'dist/shipped/styles',
    bundle: true,
    minify: true,
    external: ['../fonts/*'],
    logLevel: 'warning',
  });
}

async function copyFonts() {
  const require = createRequire(import.meta.url);
  const to = join(dist, 'shipped/fonts');
  await mkdir(to, { recursive: true });
  const fonts = [
    ['atkinson-hyperlegible-next', 'atkinson-hyperlegible-next-latin-wght-normal.woff2'],
    ['sofia-sans-condensed', 'sofia-sans-condensed-latin-wght-normal.woff2'],
  ];
  for (const [family, file] of fonts) {
    const from = dirname(require.resolve(`@fontsource-variable/${family}/package.json`));
    await copyFile(join(from, 'files', file), join(to, `${family}.woff2`));
    await copyFile(join(from, 'LICENSE'), join(to, `${family}-licence.txt`));
  }
}

async function declareTypes() {
  const options = [
    '--noEmit',
    'false',
    '--declaration',
    '--emitDeclarationOnly',
    '--rewriteRelativeImportExtensions',
  ];
  const tsc = join(root, 'node_modules/typescript/bin/tsc');
  await promisify(execFile)(
    process.execPath,
    [tsc, '-p', join(root, '.config/tsconfig.types.json'), ...options],
    { cwd: root },
  ).catch((error) => {
    console.error(error.stdout);
    throw new Error('the declarations could not be made');
  });
}
