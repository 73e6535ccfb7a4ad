import { followAddress, startSession } from './session/session-page.ts';

startSession(document);
void followAddress(document);
