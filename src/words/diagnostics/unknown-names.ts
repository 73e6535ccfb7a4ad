import type { ProblemFamily } from './sentences.ts';

/** Names that lead nowhere. `near`: a known one comes near; `none`: there is nothing that could be named. */
export const unknownNameFindings: ProblemFamily = {
  'unknown-assessment': {
    says: '{who} is assessed by “{name}”, and the module has no item, rating or question of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-assessment.near': {
    says: '{who} is assessed by “{name}”, which the module does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-assessment.none': {
    says: '{who} is assessed by “{name}”, and the module assesses nothing.',
    write: 'scoring:\n  items:\n    - id: {name}\n      says: …   what somebody who watches can see',
  },
  'unknown-caution': {
    says: '{who} leads to the caution “{name}”, and the guide has none of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-caution.near': {
    says: '{who} leads to the caution “{name}”, which the guide does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-caution.none': {
    says: '{who} leads to the caution “{name}”, and the guide has no cautions.',
    act: 'the words alone, without a link, or the caution itself in the front matter',
  },
  'unknown-circuit-station': {
    says: '{who} goes round the station “{name}”, and the module has none of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-circuit-station.near': {
    says: '{who} goes round the station “{name}”, which the module does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-circuit-station.none': {
    says: '{who} goes round the station “{name}”, and the module has no stations.',
    write: 'stations:\n  - id: {name}\n    takes: …',
  },
  'unknown-material': {
    says: '{who} names the material “{name}”, and the workspace has none of that id.',
    why: 'A material is a file of its own, materials/{name}.yaml, with a name and the packs in which it is sold.',
    write: '{paste}   one that is there, or a new file materials/{name}.yaml',
  },
  'unknown-material.mix': {
    says: '{who} is mixed from the mix “{name}”, and a mix is mixed from materials alone.',
    act: 'what is in “{name}” in its place, with the amounts',
  },
  'unknown-material.near': {
    says: '{who} names the material “{name}”, which is not there; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-module': {
    says: '{who} names the module “{name}”, and the workspace has none of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-module.near': {
    says: '{who} names the module “{name}”, which is not there; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-module.none': {
    says: '{who} names the module “{name}”, and this workspace has no modules.',
    act: 'the words alone in its place, or that module as well, in the folder modules/{name}',
  },
  'unknown-objective': {
    says: '{who} serves the objective “{name}”, and the module has none of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-objective.near': {
    says: '{who} serves the objective “{name}”, which the module does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-objective.none': {
    says: '{who} serves the objective “{name}”, and the module has no objectives.',
    write: 'objectives:\n  - id: {name}\n    does: …   what somebody could watch',
  },
  'unknown-other-guide': {
    says: '{who} names the guide “{name}”, and the workspace has none of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-other-guide.near': {
    says: '{who} names the guide “{name}”, which is not there; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-other-guide.none': {
    says: '{who} names the guide “{name}”, and the workspace has no other guide.',
    act: 'nothing in its place, or that guide as well, in the folder guides/{name}',
  },
  'unknown-pattern': {
    says: '{who} is cut by the pattern “{name}”, and the guide has none of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-pattern.near': {
    says: '{who} is cut by the pattern “{name}”, which the guide does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-pattern.none': {
    says: '{who} is cut by the pattern “{name}”, and the guide has no patterns.',
    write: 'patterns:\n  - id: {name}\n    file: …   the drawing, in the guide’s folder',
  },
  'unknown-people': {
    says: '{who} is for “{name}”, and the cohort has no people of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-people.near': {
    says: '{who} is for “{name}”, who are not in the cohort; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-people.none': {
    says: '{who} is for “{name}”, and the cohort has no people.',
    write: 'people:\n  - id: {name}\n    count: …',
  },
  'unknown-piece': {
    says: '{who} uses the piece “{name}”, and its material is not cut into one of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-piece.near': {
    says: '{who} uses the piece “{name}”, which its material does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-piece.none': {
    says: '{who} uses the piece “{name}”, and its material is measured, not cut into pieces.',
    write: 'material: {material}   without pieces',
  },
  'unknown-practice': {
    says: '{who} is practised at “{name}”, and the module has no station or activity of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-practice.near': {
    says: '{who} is practised at “{name}”, which the module does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-practice.none': {
    says: '{who} is practised at “{name}”, and the module has no station and no activity.',
    write: 'activities:\n  - id: {name}\n    what: …   what trainees do',
  },
  'unknown-setting': {
    says: '{who} leads to the setting “{name}”, which is not set there.',
    write: '{paste}   one of: {known}',
  },
  'unknown-setting.near': {
    says: '{who} leads to the setting “{name}”, which is not set there; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-setting.none': {
    says: '{who} leads to the setting “{name}”, and nothing is set there.',
    write: 'set:\n  {name}: …   at the step, as the text says it',
  },
  'station-of-unknown-level': {
    says: '{who} wants the level “{name}” of “{guide}”, which has none of that id.',
    write: '{paste}   one of: {known}',
  },
  'station-of-unknown-level.near': {
    says: '{who} wants the level “{name}” of “{guide}”, which it does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'station-of-unknown-level.none': {
    says: '{who} wants the level “{name}” of “{guide}”, which has no levels.',
    act: 'the station without this line, or the levels of the guide',
  },
  'unknown-step': {
    says: '{who} names the step “{name}”, and the guide has none of that id.',
    write: '{paste}   one of: {known}',
  },
  'unknown-step.near': {
    says: '{who} names the step “{name}”, which the guide does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-supplier': {
    says: '{who} comes from “{name}”, and the program has no supplier of that name, so its delivery would cost nothing.',
    write: '{paste}   one of: {known}',
  },
  'unknown-supplier.near': {
    says: '{who} comes from “{name}”, which is no supplier of the program; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-supplier.none': {
    says: '{who} comes from “{name}”, and the program lists no suppliers, so its delivery would cost nothing.',
    write: 'suppliers:\n  {name}:\n    name: …   in program.yaml, with what its delivery costs',
  },
  'unknown-time': {
    says: '{who} takes its time from the directions of {material}, which give no time “{name}”.',
    write: '{paste}   one of: {known}',
  },
  'unknown-time.near': {
    says: '{who} takes its time from the directions of {material}, which give no time “{name}”; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-time.none': {
    says: '{who} takes its time from the directions of {material}, and no time of theirs is written down.',
    why: 'How long it takes is what the product’s own directions say; read it there.',
    write: 'times:\n  {name}: …   in materials/{id}.yaml',
  },
  'unknown-tool': {
    says: '{who} names the tool “{name}”, and the workspace has none of that id.',
    why: 'A tool is a file of its own, tools/{name}.yaml, with a name.',
    write: '{paste}   one that is there, or a new file tools/{name}.yaml',
  },
  'unknown-tool.near': {
    says: '{who} names the tool “{name}”, which is not there; “{near}” comes near it.',
    write: '{paste}',
  },
  'unknown-tool.material': {
    says: '{who} names “{name}”, which is a material: it is used up.',
    write: '- use: {name}\n  amount: …   under materials, in place of the row under tools',
  },
  'unknown-tool.material-here': {
    says: '{who} names “{name}”, which is a material: it is used up.',
    act: 'no row for it under tools, since the list of materials has it already',
  },
  'unknown-tool.material-given-out': {
    says: '{who} names “{name}” as a tool, and it is a material: it is used up.',
    act: 'nothing here where it belongs to a model, whose guide has it; where it is given out to people, a file tools/{name}.yaml for it',
  },
  'unknown-tool.material-owned': {
    says: '{who} names “{name}”, which is a material and no tool.',
    act: 'nothing here; what there is of it stands in a stock file',
  },
  'row-of-unknown-level': {
    says: '{who} is for the level “{name}” alone, and the guide has none of that id.',
    write: '{paste}   one of: {known}',
  },
  'row-of-unknown-level.empty': {
    says: '{who} is for no level at all, so it is left out everywhere.',
    write: 'only: […]   one or more of: {known}; or without this line, for all of them',
  },
  'row-of-unknown-level.near': {
    says: '{who} is for the level “{name}” alone, which the guide does not have; “{near}” comes near it.',
    write: '{paste}',
  },
  'row-of-unknown-level.none': {
    says: '{who} is for the level “{name}” alone, and the guide has no levels.',
    act: 'the row without “only”, or the levels of the guide',
  },
};
