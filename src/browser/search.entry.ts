import { startSearchField } from './search/field.ts';

startSearchField(document);
