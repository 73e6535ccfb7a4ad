import type { Guide } from './guide.ts';
import type { Material } from './material.ts';
import type { Module } from './module.ts';
import type { Program } from './program.ts';
import type { Tool } from './tool.ts';

/**
 * Everything that a program's folder says, as one plain JSON value. The planner needs no more than this. Where
 * each value was written stands apart, in `Origins`; the browser does not get that.
 */
export interface Workspace {
  readonly program: Program;
  readonly materials: Readonly<Record<string, Material>>;
  readonly tools: Readonly<Record<string, Tool>>;
  readonly guides: Readonly<Record<string, Guide>>;
  readonly modules: Readonly<Record<string, Module>>;
}
