import { loadFarPictures } from './bench/far-pictures.ts';
import { startPrintButtons } from './bench/print-button.ts';
import { startScreenSwitch } from './bench/screen-awake.ts';
import { startTicks } from './bench/ticks.ts';

startPrintButtons(document);
startScreenSwitch(document);
startTicks(document, () => Date.now());
loadFarPictures(document, window);
