import type { ProblemFamily } from './sentences.ts';

/** The table from which a pass mark is computed. */
export const judgesProblems: ProblemFamily = {
  'table-empty': {
    says: 'The table {file} is empty.',
    act: 'a header with the names of its columns, and a row for each judge or person',
  },
  'table-quote-astray': {
    says: 'There is a quotation mark here that stands neither round a whole cell nor doubled inside one.',
    why: 'Where a cell begins and ends cannot be told from here on.',
    act: 'the cell with one quotation mark before and one after it, and two for each inside it',
  },
  'table-row-uneven': {
    says: 'This row has not as many cells as the header: {cells}, and not {columns}.',
    act: 'a comma between every two cells of the row, and an empty cell where nothing is known',
  },
  'judges-column-missing': {
    says: 'The judges’ table for {method} has no column “{column}”.',
    write: '{header}   as its first line, in any order',
  },
  'judges-column-unknown': {
    says: 'The judges’ table for {method} has a column “{column}”, which means nothing there.',
    why: 'Its columns: {known}.',
    act: 'the table without that column',
  },
  'judges-column-unknown.near': {
    says: 'The judges’ table for {method} has a column “{column}”, which means nothing there; “{near}” comes near it.',
    write: '{near}',
  },
  'judges-column-twice': {
    says: 'The column “{column}” stands twice in the judges’ table.',
    act: 'one of them alone',
  },
  'judges-value.share': {
    says: '“{value}” is not the share of people who only just pass that would do “{column}”.',
    write: '70 %   or 0.7: from 0 to 1',
  },
  'judges-value.rating': {
    says: '“{value}” is not a rating: a number on the scale.',
    write: '3   a number, with a point before decimals',
  },
  'judges-value.points': {
    says: '“{value}” is not so many points of the checklist, which has {most} in all.',
    write: '…   a number from 0 to {most}, with a point before decimals',
  },
  'judges-value.ready': {
    says: '“{value}” does not say whether the judges found this person ready.',
    write: 'yes   or no',
  },
  'judges-row-of-nobody': {
    says: 'This row does not say whose it is: its “{who}” is empty.',
    act: 'a code of your own there, never a name',
  },
  'judges-row-twice': {
    says: '“{name}” stands in two rows of the judges’ table.',
    why: 'Each {who} has one row, else some count more than others.',
    act: 'one of the two rows alone, or another code for the other',
  },
  'judges-give-no-mark.angoff': {
    says: 'The judges’ table {file} has no judge in it, so it gives no pass mark.',
    act: 'a row for each judge; until they have judged, none-set: yes in the module',
  },
  'judges-give-no-mark.borderline-regression': {
    says: 'The table {file} gives no pass mark: there is no line through these ratings and points.',
    why: 'It takes people with at least two different ratings, and a line that is between no points and all of them where the rating is borderline.',
    act: 'more people; until there are enough, none-set: yes in the module',
  },
  'judges-give-no-mark.contrasting-groups': {
    says: 'The table {file} gives no pass mark: the points of those who are ready and of those who are not do not cross between them.',
    why: 'It takes at least two people in each group, not all with the same points, and two groups that differ.',
    act: 'more people; until there are enough, none-set: yes in the module',
  },
};
