import type { ProblemFamily } from './sentences.ts';

/** What a guide or a module lacks before others may rely on it. */
export const reviewFindings: ProblemFamily = {
  'missing-approval': {
    says: '“{paper}” is approved, and it is not said by whom, when, and until when.',
    write:
      'approved:\n  by: …   a role rather than a name\n  on: …\n  until: …   when it is to be looked at again',
  },
  'missing-approval.by': {
    says: '“{paper}” is approved, and it is not said by whom.',
    write: 'by: …   a role rather than a name',
  },
  'missing-approval.on': {
    says: '“{paper}” is approved, and it is not said on which day.',
    write: 'on: …',
  },
  'missing-approval.until': {
    says: '“{paper}” is approved, and it is not said until when.',
    write: 'until: …   when it is to be looked at again',
  },
  'missing-for-review.licence': {
    says: '“{paper}” has no licence, so nobody knows whether they may copy and change it.',
    why: 'A draft may do without; from reviewed on it has one.',
    write: 'licence: …   a short name of the SPDX list, such as CC-BY-4.0',
  },
  'missing-for-review.trains': {
    says: '“{paper}” does not say what it trains.',
    why: 'A draft may do without; from reviewed on it says so.',
    write: 'trains: …   the skill, in a few words',
  },
  'missing-for-review.version': {
    says: '“{paper}” has no version, so nobody can tell which edition of it they used.',
    why: 'A draft may do without; from reviewed on it has one.',
    write: 'version: …   such as 1.0.0',
  },
  'review-overdue': {
    says: '“{paper}” is approved until {until}, and today is {today}.',
    write: 'until: …   once it was looked at again, by whoever approves it',
  },
};
