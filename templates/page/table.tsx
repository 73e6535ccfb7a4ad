import type { Content, Markup } from './markup.ts';

/** What a column holds, with the classes of its head where it has some; nothing where its cells say it. */
export type ColumnHead = string | readonly [says: string | undefined, classes: string];

/** The head of a table whose columns are always the same. */
export function tableHead(...columns: readonly ColumnHead[]): Markup {
  return (
    <thead>
      <tr>{columns.map(columnHead)}</tr>
    </thead>
  );
}

function columnHead(column: ColumnHead): Markup {
  if (typeof column === 'string') return <th scope="col">{column}</th>;
  const [says, classes] = column;
  if (says === undefined) return <td class={classes} />;
  return (
    <th scope="col" class={classes}>
      {says}
    </th>
  );
}

/** Cells for a pen. */
export function emptyCells(count: number): Content {
  return (
    <>
      {Array.from({ length: count }, () => (
        <td />
      ))}
    </>
  );
}

/** Rows for a pen. */
export function emptyRows(rows: number, cells: number): Content {
  return (
    <>
      {Array.from({ length: rows }, () => (
        <tr>{emptyCells(cells)}</tr>
      ))}
    </>
  );
}
