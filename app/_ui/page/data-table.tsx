import type { ReactNode } from "react";

export type DataColumn<Row> = {
  readonly key: string;
  readonly head: ReactNode;
  readonly cell: (row: Row) => ReactNode;
  /** Figures stand to the right, one under the other. */
  readonly isFigure?: boolean;
  /** The cell that names its row. */
  readonly isRowHead?: boolean;
};

export type DataTableProps<Row> = {
  readonly caption: ReactNode;
  readonly isCaptionHidden?: boolean;
  readonly columns: readonly DataColumn<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  readonly foot?: ReactNode;
  /** Shown in place of the table when there is no row. */
  readonly empty?: ReactNode;
};

const CELL = "px-3 py-2 align-top print:px-1.5 print:py-0.5";

/** A plain table that scrolls sideways on its own when it does not fit. */
export function DataTable<Row>(props: DataTableProps<Row>) {
  const { caption, isCaptionHidden = false, columns, rows, rowKey, foot, empty } = props;
  if (rows.length === 0 && empty) return <>{empty}</>;
  return (
    <div className="relative overflow-x-auto border-2 border-ink bg-sheet print:overflow-visible print:border" tabIndex={0} role="region" aria-label={typeof caption === "string" ? caption : "Table"}>
      <table className="w-full border-collapse text-left">
        <caption className={isCaptionHidden ? "sr-only" : "lettering border-b border-ink px-3 py-1.5 text-left"}>{caption}</caption>
        <thead>
          <tr className="border-b-2 border-ink bg-wash">
            {columns.map((column) => (
              <th key={column.key} scope="col" className={`${CELL} text-sm font-semibold ${column.isFigure ? "text-right" : ""}`}>{column.head}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={rowKey(row)} className="border-b border-rule-soft last:border-b-0">
              {columns.map((column) => {
                const look = `${CELL} ${column.isFigure ? "whitespace-nowrap text-right" : ""}`;
                return column.isRowHead
                  ? <th key={column.key} scope="row" className={`${look} font-semibold`}>{column.cell(row)}</th>
                  : <td key={column.key} className={look}>{column.cell(row)}</td>;
              })}
            </tr>
          ))}
        </tbody>
        {foot ? <tfoot className="border-t-2 border-ink font-semibold">{foot}</tfoot> : null}
      </table>
    </div>
  );
}
