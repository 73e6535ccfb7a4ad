import type { ProblemFamily } from './sentences.ts';

/** Why a site was not written. */
export const publishingProblems: ProblemFamily = {
  'folder-not-ours': {
    says: 'The folder {folder} holds files that publish did not make, so nothing is written there.',
    why: 'An edition is replaced as a whole; what somebody else put there would be lost.',
    write: '--out followed by another folder, or move the files away first',
  },
  'publish-under-way': {
    says: 'Another publish is writing into {folder}, so this one stopped before it began.',
    why: 'Two at once could leave a mixture of both.',
    write: 'the same command again, once the other has ended',
  },
};
