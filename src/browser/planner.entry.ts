import { startPlanner } from './planner/planner.ts';

startPlanner(document);
