import { startSearch } from './search-field.ts';

startSearch(document);
