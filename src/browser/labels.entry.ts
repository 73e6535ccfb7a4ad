import { settableLabels } from './labels.ts';

settableLabels(document);
