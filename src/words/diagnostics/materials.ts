import type { ProblemFamily } from './sentences.ts';

/** Materials that do not add up: units, shares, what is used and what is listed. */
export const materialFindings: ProblemFamily = {
  'basis-mismatch': {
    says: '{material} is measured for {basis}, but the step “{step}” that uses it is done for {runs}.',
    why: 'An amount is shared out by models, or it is for the same runs as each step that uses it.',
    write:
      'for: {runs}   at the material, with the amount for {runs}\nfor: each model   at the material, with the amount for one model',
  },
  'basis-mismatch.model': {
    says: '{material} is measured for {basis}, but the step “{step}” that uses it is done for each model.',
    why: 'An amount is shared out by models, or it is for the same runs as each step that uses it.',
    write: 'for: each model   at the material, with the amount for one model',
  },
  'mix-makes-nothing': {
    says: 'The mix “{mix}” makes nothing, so no amount of it can be had.',
    write: 'makes: …   what comes out of the amounts that go in',
  },
  'piece-too-large': {
    says: 'The piece “{piece}” is {size}, and the largest {material} that is sold is {holds}: it cannot be cut from that.',
    write:
      '{key}: …   small enough for what is sold; or join it from smaller pieces\n- holds: …   a larger pack of {material}, in its file',
  },
  'piece-too-large.length': {
    says: 'The piece “{piece}” is {size} long, and the longest {material} that is sold is {holds}: it cannot be cut from that.',
    write:
      '{key}: …   short enough for what is sold; or join it from shorter pieces\n- holds: …   a longer pack of {material}, in its file',
  },
  'piece-too-large.turn': {
    says: 'The piece “{piece}” is {size} and may not be turned, and the largest {material} that is sold is {holds}: only turned could it be cut from that.',
    write:
      '{key}: …   small enough for what is sold\nturn: yes   if neither the grain nor a print has a direction\n- holds: …   a larger pack of {material}, in its file',
  },
  'pieces-mixed': {
    says: 'The pieces “{first}” and “{piece}” are cut from one material, but one of them is a length and the other has two sides.',
    why: 'A rod is cut to lengths, a sheet or a roll to pieces of two sides.',
    write: 'size: …   the length alone, or both sides, as for “{first}”',
  },
  'pieces-mixed.body': {
    says: 'The piece “{piece}” has three sides, and pieces are cut from sheets, rolls and rods.',
    write: 'size: …   its two sides; how thick it is belongs to the material',
  },
  'shares-do-not-add-up.more': {
    says: 'The steps take {sum} of {material} in all, more than the {whole} in the list.',
    write:
      '{key}: {sum}   in the list, if the steps are right\namount: …   at the steps, so that they come to {whole}',
  },
  'shares-do-not-add-up.less': {
    says: 'The steps take {sum} of {material} in all, less than the {whole} in the list.',
    why: 'What no step takes would be bought and weighed out for nothing. A step that names it without an amount takes the rest.',
    write:
      '{key}: {sum}   in the list, if the steps are right\namount: …   at the steps, so that they come to {whole}',
  },
  'shares-do-not-add-up.piece': {
    says: 'The piece “{piece}” of {material} is cut, and no step uses it.',
    write: '{piece}   in the pieces of the step that uses it',
  },
  'unit-mismatch.bought-density': {
    says: '{name} is used {one} but sold {other}, so the number of packs cannot be worked out.',
    why: '{volume} is a volume and {mass} is a mass; turning one into the other needs a measured density.',
    write:
      'amount: … {unit}   if you measure it that way\ndensity:   in {file}\n  is: … g/mL   as measured, or as the supplier says\n  source: …',
  },
  'unit-mismatch.bought': {
    says: '{name} is used {one} but sold {other}, so the number of packs cannot be worked out.',
    why: 'Nothing turns one into the other: the guide and the shop have to count in the same way.',
    write:
      'amount: … {unit}   at the guide, measured as it is sold\nholds: …   at the pack, measured as it is used',
  },
  'unit-mismatch.used-density': {
    says: '{name} is used {one} here and {other} there, so how much there is in all cannot be worked out.',
    why: '{volume} is a volume and {mass} is a mass; turning one into the other needs a measured density.',
    write:
      'amount: … {unit}   measured as it is there\ndensity:   in {file}\n  is: … g/mL   as measured, or as the supplier says\n  source: …',
  },
  'unit-mismatch.used': {
    says: '{name} is used {one} here and {other} there, so how much there is in all cannot be worked out.',
    write: 'amount: … {unit}   measured as it is there',
  },
  'unit-mismatch.packs-density': {
    says: 'One pack of {name} is sold {one} and another {other}, so the two cannot be compared.',
    why: '{volume} is a volume and {mass} is a mass; turning one into the other needs a measured density.',
    write:
      'holds: … {unit}   if the pack says so too\ndensity:\n  is: … g/mL   as measured, or as the supplier says\n  source: …',
  },
  'unit-mismatch.packs': {
    says: 'One pack of {name} is sold {one} and another {other}, so the two cannot be compared.',
    write: 'holds: … {unit}   measured as the first pack is',
  },
  'unit-mismatch.gap': {
    says: 'The gap between the pieces of {name} is given {one}, and a gap is a length.',
    write: 'gap: … {unit}',
  },
  'unit-mismatch.mix': {
    says: '{name} is taken {one}, but mixed {other}, so how often it must be mixed cannot be worked out.',
    write: 'amount: … {unit}   measured as it is mixed',
  },
  'unit-mismatch.share-density': {
    says: 'A step takes {name} {one}, but its list has it {other}, so the share cannot be worked out.',
    why: '{volume} is a volume and {mass} is a mass; turning one into the other needs a measured density.',
    write:
      'amount: … {unit}   measured as in the list\ndensity:   in {file}\n  is: … g/mL   as measured, or as the supplier says\n  source: …',
  },
  'unit-mismatch.share': {
    says: 'A step takes {name} {one}, but its list has it {other}, so the share cannot be worked out.',
    write: 'amount: … {unit}   measured as in the list',
  },
  'unlisted-material': {
    says: 'The step “{step}” uses “{name}”, which is not in the guide’s list of materials.',
    why: 'A step names a row of that list, a mix, or something in a mix.',
    write: '- use: {name}\n  amount: …   in the list, for one model',
  },
  'unlisted-material.near': {
    says: 'The step “{step}” uses “{name}”, which is not in the guide’s list of materials; “{near}” comes near it.',
    write: '{near}',
  },
  'unlisted-material.tool': {
    says: 'The step “{step}” uses up “{name}”, which is a tool: it stays.',
    why: 'A step has its tools from the list of tools, which says in which steps each is in hand.',
    write: 'uses: [{others}]   without it\n- use: {name}\n  in: [{id}]   under tools',
  },
  'unlisted-material.tool-here': {
    says: 'The step “{step}” uses up “{name}”, which is a tool: it stays.',
    why: 'A step has its tools from the list of tools, which says in which steps each is in hand.',
    write: 'uses: [{others}]   without it: the list of tools has it already',
  },
  'unused-material': {
    says: '{material} is in the list of materials, but no step uses it.',
    why: 'A step has the amounts, and the hazards, of what it uses.',
    write: '{id}   in the uses of the step that takes it',
  },
  'unused-material.all': {
    says: 'No step of “{guide}” says which materials it uses.',
    why: 'A step has the amounts, and the hazards, of what it uses.',
    write: 'uses: [{first}]   at the step that takes it; so for every material',
  },
  'unused-material.level': {
    says: '{material} is in the list of materials, but at the level {level} no step uses it.',
    write: 'only: [{levels}]   at the material, if the other levels do without it',
  },
  'unused-material.mix': {
    says: '{mix} is mixed, but no row of the materials takes it.',
    write: '- use: {id}\n  amount: …   in the list of materials, for one model',
  },
};
