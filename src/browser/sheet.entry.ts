import { followSettings } from './sheet/follow-settings.ts';

void followSettings(document);
