import type { ProblemFamily } from './sentences.ts';

/** Ids that cannot be one, or stand for two things. */
export const idProblems: ProblemFamily = {
  'id-unusable': {
    says: '“{text}” cannot be an id.',
    why: 'Ids are part of file names and addresses: lower-case letters, digits, and hyphens between them.',
    write: '{put}{better}',
  },
  'id-unusable.key': {
    says: '“{text}” cannot be an id.',
    why: 'Ids are part of file names and addresses: lower-case letters, digits, and hyphens between them.',
    write: '{better}:',
  },
  'id-unusable.file': {
    says: 'The file {file} is passed over, because “{text}” cannot be an id.',
    why: 'Ids are part of file names and addresses: lower-case letters, digits, and hyphens between them.',
    write: '{better}   in its place',
  },
  'id-reserved.language': {
    says: '“{text}” cannot be an id: programs have it as a name of their own.',
    act: 'another name',
  },
  'id-reserved.part': {
    says: 'A part cannot be called “{text}”, because “each {text}” already means something else.',
    write: 'id: …   another name',
  },
  'id-reserved.tool': {
    says: 'The part “{text}” has the name of a tool, so “each {text}” would mean both.',
    write: 'id: …   another name for the part',
  },
  'id-reserved.level': {
    says: 'A level cannot be called “{text}”, because times have a key of that name.',
    write: 'id: …   another name',
  },
  'id-reserved.step': {
    says: 'The level “{text}” has the name of a step, so a hold limit for “{text}” would mean both.',
    write: 'id: …   another name for the level',
  },
  'id-reserved.page': {
    says: 'A level cannot be called “{text}”: each level has a page of its name, and every guide has another page of that name.',
    write: 'id: …   another name',
  },
  'id-reserved.guide': {
    says: 'The module “{text}” has the name of a guide, so a plan of “{text}” would mean both.',
    act: 'another name for the folder of the module',
  },
  'id-reserved.material': {
    says: 'The mix “{text}” has the name of a material, so a row that uses “{text}” would mean both.',
    write: 'id: …   another name for the mix',
  },
  'id-repeated': {
    says: 'The id “{text}” stands for two things.',
    why: 'Whoever names it has to find one.',
    write: 'id: …   another name for one of the two',
  },
  'id-repeated.row': {
    says: 'The material “{text}” stands twice, and a step that names it would mean both rows.',
    write: 'id: …   a name of its own for this row',
  },
};
