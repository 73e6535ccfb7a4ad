import type { Module } from '../core/model/module.ts';
import type { Check, Finding } from './check.ts';
import { circlesIn } from './lookup/circles.ts';
import type { Context, ModuleRead } from './lookup/context.ts';
import { quoted } from './lookup/written.ts';

/** Modules that come after each other, so that nobody could begin. */
export const modulesInACircle: Check = {
  code: 'modules-in-a-circle',
  gravity: 'stops',
  find: (context) =>
    circlesIn(context.modules.map(({ module }) => module)).map((circle) => finding(circle, context)),
};

function finding(circle: readonly [Module, ...Module[]], { modules }: Context): Finding {
  const [first, ...others] = circle.map((one) => modules.find(({ module }) => module === one)!);
  const place = (read: ModuleRead) => read.place('after');
  const around = [...circle, circle[0]].reverse().map(({ title }) => title);
  return {
    variant: others.length === 0 ? 'itself' : undefined,
    places: [place(first!), ...others.map(place)],
    facts: { module: circle[0].title, modules: quoted(around.slice(1)) },
  };
}
