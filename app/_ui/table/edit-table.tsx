"use client";

import type { ReactNode } from "react";
import { useCellWalk } from "./use-cell-walk.ts";

export type EditColumn<Row> = {
  readonly key: string;
  readonly head: ReactNode;
  readonly isFigure?: boolean;
  /** Least width, so that a phone scrolls the table rather than squeezing it. */
  readonly width: string;
  readonly cell: (row: Row, index: number) => ReactNode;
};

export type EditTableProps<Row> = {
  readonly caption: string;
  readonly columns: readonly EditColumn<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  readonly rowName: (row: Row, index: number) => string;
  /** Left out where the table may only be read. */
  readonly onAdd?: (() => void) | undefined;
  readonly onRemove?: ((index: number) => void) | undefined;
};

const CELL = "px-2 py-1.5 align-top";

/** A table to type in: arrow keys and Enter go from row to row, Enter in the last row adds one. */
export function EditTable<Row>({ caption, columns, rows, rowKey, rowName, onAdd, onRemove }: EditTableProps<Row>) {
  const { box, walk } = useCellWalk(rows.length, columns[0]?.key, onAdd);
  return (
    <div ref={box} onKeyDown={walk} role="region" aria-label={`${caption}: table`} tabIndex={0} className="relative overflow-x-auto border-2 border-ink bg-sheet">
      <table className="w-full border-collapse text-left">
        <caption className="sr-only">{caption}</caption>
        <thead>
          <tr className="border-b-2 border-ink bg-wash">
            {columns.map((column) => (
              <th key={column.key} scope="col" style={{ minWidth: column.width }} className={`${CELL} text-sm font-semibold ${column.isFigure ? "text-right" : ""}`}>
                {column.head}
              </th>
            ))}
            {onRemove ? <th scope="col"><span className="sr-only">Remove</span></th> : null}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <EditRow key={rowKey(row)} columns={columns} row={row} index={index} name={rowName(row, index)} onRemove={onRemove} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

type EditRowProps<Row> = Pick<EditTableProps<Row>, "columns" | "onRemove"> & { readonly row: Row; readonly index: number; readonly name: string };

function EditRow<Row>({ columns, row, index, name, onRemove }: EditRowProps<Row>) {
  return (
    <tr className="border-b border-rule-soft last:border-b-0">
      {columns.map((column) => (
        <td key={column.key} className={`${CELL} ${column.isFigure ? "text-right" : ""}`}>{column.cell(row, index)}</td>
      ))}
      {onRemove ? (
        <td className={`${CELL} text-right`}>
          <button
            type="button"
            onClick={() => onRemove(index)}
            aria-label={`Remove ${name}`}
            className="min-h-hand cursor-pointer px-2 text-sm underline underline-offset-2 hover:bg-flag-wash disabled:hidden"
          >
            Remove
          </button>
        </td>
      ) : null}
    </tr>
  );
}
