"use client";

import { useEffect, useRef, type KeyboardEvent, type ReactNode } from "react";

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
  const box = useRef<HTMLDivElement>(null);
  const goTo = useRef<{ row: number; column: string } | undefined>(undefined);
  const focusCell = (row: number, column: string): boolean => {
    const cell = box.current?.querySelector<HTMLElement>(`[data-row="${row}"][data-column="${column}"]`);
    cell?.focus();
    if (cell instanceof HTMLInputElement) cell.select();
    return Boolean(cell);
  };
  useEffect(() => {
    if (goTo.current && focusCell(goTo.current.row, goTo.current.column)) goTo.current = undefined;
  }, [rows.length]);

  const walk = (event: KeyboardEvent<HTMLDivElement>) => {
    const { row, column } = event.target instanceof HTMLElement ? event.target.dataset : {};
    if (row === undefined || column === undefined || event.nativeEvent.isComposing) return;
    const step = event.key === "Enter" || event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step === 0 || (event.key !== "Enter" && event.target instanceof HTMLSelectElement)) return;
    event.preventDefault();
    if (focusCell(Number(row) + step, column) || event.key !== "Enter" || !onAdd) return;
    goTo.current = { row: Number(row) + 1, column: columns[0]?.key ?? column };
    onAdd();
  };

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
            <tr key={rowKey(row)} className="border-b border-rule-soft last:border-b-0">
              {columns.map((column) => (
                <td key={column.key} className={`${CELL} ${column.isFigure ? "text-right" : ""}`}>{column.cell(row, index)}</td>
              ))}
              {onRemove ? (
                <td className={`${CELL} text-right`}>
                  <button
                    type="button"
                    onClick={() => onRemove(index)}
                    aria-label={`Remove ${rowName(row, index)}`}
                    className="min-h-hand cursor-pointer px-2 text-sm underline underline-offset-2 hover:bg-flag-wash disabled:hidden"
                  >
                    Remove
                  </button>
                </td>
              ) : null}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
