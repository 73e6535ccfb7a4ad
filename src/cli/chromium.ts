import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import type { World } from './world.ts';

/** What a browser of the Chromium family is called where programs are looked up by name. */
const names: readonly string[] = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
  'microsoft-edge',
  'msedge',
];

/** Where it lies on systems that do not look programs up by name; below each of the folders for programs. */
const usualPlaces: readonly string[] = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];
const belowPrograms: readonly string[] = [
  'Chromium/Application/chrome.exe',
  'Google/Chrome/Application/chrome.exe',
  'Microsoft/Edge/Application/msedge.exe',
];

/**
 * The browser to print with: the one that CHROMIUM names and no other, else the first that is found. Undefined where
 * none is there.
 */
export function findChromium({ environment }: Pick<World, 'environment'>): string | undefined {
  const named = environment['CHROMIUM'];
  if (named !== undefined && named !== '') return isProgram(named) ? named : undefined;
  return [...inPath(environment), ...usualPlaces, ...inPrograms(environment)].find(isProgram);
}

type Environment = World['environment'];

function inPath({ PATH = '' }: Environment): readonly string[] {
  const folders = PATH.split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) =>
    folders.flatMap((folder) => [join(folder, name), join(folder, `${name}.exe`)]),
  );
}

function inPrograms(environment: Environment): readonly string[] {
  const folders = ['LOCALAPPDATA', 'PROGRAMFILES', 'PROGRAMFILES(X86)'].flatMap(
    (name) => environment[name] ?? [],
  );
  return folders.flatMap((folder) => belowPrograms.map((below) => join(folder, below)));
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
