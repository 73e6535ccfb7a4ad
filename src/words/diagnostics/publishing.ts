import type { ProblemFamily } from './sentences.ts';

/** Why a site was not written. */
export const publishingProblems: ProblemFamily = {
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
