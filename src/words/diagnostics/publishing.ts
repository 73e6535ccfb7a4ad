import type { ProblemFamily } from './sentences.ts';

/** Why a site was not written. */
export const publishingProblems: ProblemFamily = {
  'picture-broken': {
    says: 'The photo {file} is broken: it cannot be read to its end.',
    why: 'Most often it was copied only in part.',
    act: 'a whole copy in its place',
  },
  'picture-broken.too-large': {
    says: 'The photo {file} has {points} million points; no more than {most} million are read.',
    act: 'a smaller copy in its place; 2000 points a side are plenty',
  },
  'picture-broken.drawing': {
    says: 'The drawing {file} is not sound SVG, so it is not published.',
    why: 'Each tag has to be closed in its turn, values stand in quotes, and no names may be declared in it.',
    act: 'the drawing again from its program, saved as plain SVG',
  },
  'folder-not-ours': {
    says: 'The folder {folder} holds files that publish did not make, so nothing is written there.',
    why: 'An edition is replaced as a whole; what somebody else put there would be lost.',
    write: '--out followed by another folder, or move the files away first',
  },
  'foreign-file-in-the-way': {
    says: 'The file {file} was not made by publish, and the new site has a file of that name, so nothing is written.',
    why: 'Publish replaces what it made and leaves alone what others put there; here it can do neither.',
    write: '--out followed by another folder, or move the file away first',
  },
  'publish-under-way': {
    says: 'Another publish is writing into {folder}, so this one stopped before it began.',
    why: 'Two at once could leave a mixture of both.',
    write: 'the same command again, once the other has ended',
  },
};
