import type { ProblemFamily } from './sentences.ts';

/** Where the text does not go with the front matter, or with its pictures. */
export const textFindings: ProblemFamily = {
  'headings-out-of-order': {
    says: '“{first}” stands before “{second}” in the text, but comes later among the steps.',
    act: 'the sections of the text in the order of the steps',
  },
  'image-without-text': {
    says: 'The picture {file} says nothing to those who do not see it.',
    why: 'Its text is read aloud, and stands there where pictures do not load.',
    write: '![…]({file})   what it shows, in a few words',
  },
  'missing-image': {
    says: '{who} shows {file}, and no such file lies in the folder of the guide.',
    write: '{paste}   a file of the folder {folder}',
  },
  'missing-image.elsewhere': {
    says: '{who} shows {file}, which lies on another site, and pages load nothing from elsewhere.',
    why: 'They have to work from a memory stick, and no reader is to be seen by a third party.',
    write: '{paste}   a copy in the folder {folder}, if its licence allows',
  },
  'missing-image.near': {
    says: '{who} shows {file}, which does not lie in the folder of the guide; {near} comes near it.',
    write: '{paste}',
  },
  'prose-disagrees.guide': {
    says: 'The text says “{text}”, but the front matter says {is} of “{name}”.',
    write: '{paste}   or the front matter, if the text is right',
  },
  'prose-disagrees.guide-unsaid': {
    says: 'The text says “{text}”, but “{name}” is not among the materials of the guide.',
    write: '{paste}',
  },
  'prose-disagrees.material': {
    says: 'The text says “{text}”, but the front matter says {is} of {name}.',
    write: '{paste}   or the front matter, if the text is right',
  },
  'prose-disagrees.material-unsaid': {
    says: 'The text says “{text}”, but {name} is not among the materials of the guide.',
    write: '{paste}   without the amount, or the material in the list',
  },
  'prose-disagrees.set': {
    says: 'The text says “{text}”, but the front matter sets “{name}” to {is}.',
    write: '{paste}   or the front matter, if the text is right',
  },
  'prose-disagrees.set-unsaid': {
    says: 'The text says “{text}”, but the front matter gives “{name}” no number.',
    write: '{paste}   without the number, or the number in the front matter',
  },
  'prose-disagrees.step': {
    says: 'The text says “{text}”, but the front matter says {is} for “{name}”.',
    write: '{paste}   or the front matter, if the text is right',
  },
  'prose-disagrees.step-unsaid': {
    says: 'The text says “{text}”, but the front matter gives “{name}” no time.',
    write: '{paste}   without the time, or the time in the front matter',
  },
  'prose-disagrees.tool': {
    says: 'The text says “{text}”, but the front matter says {is} of {name}.',
    write: '{paste}   or the front matter, if the text is right',
  },
  'prose-disagrees.tool-unsaid': {
    says: 'The text says “{text}”, but {name} is not among the tools of the guide.',
    write: '{paste}   without the number, or the tool in the list',
  },
  'step-without-heading': {
    says: 'The step “{step}” has no heading in the text.',
    write: '## {step}   above what is done there',
  },
  'step-without-heading.near': {
    says: 'The step “{step}” has no heading in the text; “{near}” comes near it.',
    write: '## {step}\nheading: {near}   at the step, if the heading is right',
  },
  'step-without-heading.in-its-place': {
    says: 'The step “{step}” has no heading in the text; “{near}” stands where it would be.',
    write: '## {step}\nheading: {near}   at the step, if that is its new name',
  },
  'step-without-heading.two': {
    says: 'The step “{step}” has two headings in the text.',
    act: 'one heading for both parts, with headings of level 3 below it',
  },
};
