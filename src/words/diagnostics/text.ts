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
  'link-outside-its-guide': {
    says: 'The link “{text}” leads to a {kind}, and only the text of a guide can do that.',
    why: 'A module speaks of several guides, so nobody could tell whose {kind} it is.',
    act: 'the words alone, without a link, or a link to the guide',
  },
  'missing-image': {
    says: '{who} shows {file}, and no such file lies in the folder {folder}.',
    write: '{paste}   a file of the folder {folder}',
  },
  'missing-image.elsewhere': {
    says: '{who} shows {file}, which lies on another site, and pages load nothing from elsewhere.',
    why: 'They have to work from a memory stick, and no reader is to be seen by a third party.',
    write: '{paste}   a copy in the folder {folder}, if its licence allows',
  },
  'missing-image.near': {
    says: '{who} shows {file}, which does not lie in the folder {folder}; {near} comes near it.',
    write: '{paste}',
  },
  'pattern-not-to-size': {
    says: '{who} is drawn {drawnWidth} mm × {drawnHeight} mm, and the piece “{piece}”, which is cut by it, is {width} mm × {height} mm.',
    why: 'Patterns are printed at full size: who cuts by this one cuts the wrong size.',
    write: 'size: {drawnWidth} mm x {drawnHeight} mm   if the drawing is right; else draw {file} anew',
  },
  'pattern-not-to-size.no-size': {
    says: '{who} does not say how large it is, and the piece “{piece}” is cut by it.',
    why: 'A drawing (SVG) is printed at full size only if its first tag states its size in mm, cm or in.',
    write: '<svg width="{width}mm" height="{height}mm" …   in {file}, if that is how it is drawn',
  },
  'pattern-not-to-size.stretched': {
    says: '{who} is {drawnWidth} mm × {drawnHeight} mm on paper, but its viewBox has another shape, so it has no one scale.',
    why: 'Who cuts the piece “{piece}” by it cuts the wrong size.',
    write:
      '<svg width="{width}mm" height="{height}mm" viewBox="0 0 {width} {height}" …   in {file}, drawn in mm',
  },
  'picture-kind-unknown': {
    says: 'The file {file} is no picture that a page can show.',
    why: 'A page shows photos as JPEG, PNG or WebP, and drawings as SVG.',
    write: '{better}   a copy of it, saved as JPEG',
  },
  'picture-kind-unknown.heic': {
    says: 'The photo {file} is a HEIC file, which browsers do not show.',
    why: 'Some phones save photos so; they can be set to save JPEG instead.',
    write: '{better}   a copy of it, saved as JPEG',
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
