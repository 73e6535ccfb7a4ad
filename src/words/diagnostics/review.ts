import type { ProblemFamily } from './sentences.ts';

/** What a guide lacks before others may rely on it. */
export const reviewFindings: ProblemFamily = {
  'missing-approval': {
    says: '“{guide}” is approved, and it is not said by whom, when, and until when.',
    write:
      'approved:\n  by: …   a role rather than a name\n  on: …\n  until: …   when it is to be looked at again',
  },
  'missing-approval.by': {
    says: '“{guide}” is approved, and it is not said by whom.',
    write: 'by: …   a role rather than a name',
  },
  'missing-approval.on': {
    says: '“{guide}” is approved, and it is not said on which day.',
    write: 'on: …',
  },
  'missing-approval.until': {
    says: '“{guide}” is approved, and it is not said until when.',
    write: 'until: …   when it is to be looked at again',
  },
  'missing-for-review.licence': {
    says: '“{guide}” has no licence, so nobody knows whether they may copy and change it.',
    why: 'A draft may do without; from reviewed on it has one.',
    write: 'licence: …   a short name of the SPDX list, such as CC-BY-4.0',
  },
  'missing-for-review.trains': {
    says: '“{guide}” does not say what it trains.',
    why: 'A draft may do without; from reviewed on it says so.',
    write: 'trains: …   the skill, in a few words',
  },
  'missing-for-review.version': {
    says: '“{guide}” has no version, so nobody can tell by which edition a model was built.',
    why: 'A draft may do without; from reviewed on it has one.',
    write: 'version: …   such as 1.0.0',
  },
  'review-overdue': {
    says: '“{guide}” is approved until {until}, and today is {today}.',
    write: 'until: …   once it was looked at again, by whoever approves it',
  },
};
