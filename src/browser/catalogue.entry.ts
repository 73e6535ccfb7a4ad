import { startCatalogue } from './catalogue/page.ts';

startCatalogue(document);
