import { area } from './mutation-areas.mjs';
import base from './vitest.config.ts';

export default { ...base, test: { ...base.test, include: area.tests, globalSetup: [] } };
