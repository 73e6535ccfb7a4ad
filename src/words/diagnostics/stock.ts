import type { ProblemFamily } from './sentences.ts';

/** A stock file that names what the workspace has not, or counts it in another way. */
export const stockProblems: ProblemFamily = {
  'stock-unknown': {
    says: 'The stock file has “{material}”, and the workspace has no such material.',
    why: 'Its materials: {known}.',
    act: 'the id of a material, which is the name of its file without .yaml',
  },
  'stock-unknown.near': {
    says: 'The stock file has “{material}”, and the workspace has no such material; “{near}” comes near it.',
    write: '{near}:',
  },
  'stock-not-comparable': {
    says: '{material} is in stock in {unit} and sold in {sold}, and nothing says how the two compare.',
    write: '{put}…   in {sold}',
  },
  'stock-unknown-guide': {
    says: 'The stock file has finished models of “{guide}”, and the workspace has no such guide.',
    why: 'Its guides: {known}.',
    act: 'the id of a guide, which is the name of its folder',
  },
  'stock-unknown-guide.near': {
    says: 'The stock file has finished models of “{guide}”, which is not there; “{near}” comes near it.',
    write: '{put}{near}',
  },
  'stock-unknown-guide.none': {
    says: 'The stock file has finished models of “{guide}”, and this workspace has no guides yet.',
  },
  'stock-unknown-level': {
    says: 'The stock file has models of “{guide}” at the level “{level}”, and the guide has no such level.',
    why: 'Its levels: {known}.',
    write: '{put}…   one of them',
  },
  'stock-unknown-level.near': {
    says: 'The stock file has models of “{guide}” at the level “{level}”; “{near}” comes near it.',
    write: '{put}{near}',
  },
  'stock-unknown-level.none': {
    says: 'The stock file has models of “{guide}” at the level “{level}”, and the guide has no levels.',
    act: 'the guide alone, without a level',
  },
  'stock-unknown-part': {
    says: 'The stock file has parts “{part}” of “{guide}”, and the guide has no such part.',
    why: 'Its parts: {known}.',
    write: '{put}…   one of them',
  },
  'stock-unknown-part.near': {
    says: 'The stock file has parts “{part}” of “{guide}”; “{near}” comes near it.',
    write: '{put}{near}',
  },
  'stock-unknown-part.none': {
    says: 'The stock file has parts “{part}” of “{guide}”, and the guide has no parts.',
    act: 'the guide alone, without a part',
  },
  'stock-unknown-step': {
    says: 'The stock file has models of “{guide}” that are past “{step}”, and the guide has no such step.',
    why: 'Its steps: {known}.',
    act: 'one of them in its place, with how many models are past it',
  },
  'stock-unknown-step.near': {
    says: 'The stock file has models of “{guide}” that are past “{step}”; “{near}” comes near it.',
    write: '{near}:',
  },
};
