import type { VirtualItem } from "@tanstack/react-virtual";
import type { ReactNode } from "react";
import type { Names } from "../sheet/column-words.ts";
import type { SheetStore } from "../sheet/sheet-store.ts";
import type { CellAt, Matrix } from "./lay-matrix.ts";
import { MatrixCell } from "./matrix-cell.tsx";
import { CELL_PX } from "./use-matrix-window.ts";

export type MatrixRowProps = {
  readonly row: number;
  readonly top: number;
  readonly width: number;
  readonly places: readonly VirtualItem[];
  readonly matrix: Matrix;
  readonly store: SheetStore;
  readonly names: Names;
  readonly shown: ReadonlySet<string>;
  readonly selected: ReadonlySet<string>;
  /** The place that has the keyboard, when it is in this row. */
  readonly tabStop: number | null;
  readonly onPress: (cell: CellAt, isRange: boolean) => void;
  readonly onOpen: (id: string) => void;
  /** The head of the row. */
  readonly children: ReactNode;
};

/** The columns of one level that are in sight. */
export function MatrixRow(props: MatrixRowProps) {
  const { row, top, width, places, matrix, store, names, shown, selected, tabStop, onPress, onOpen, children } = props;
  return (
    <div role="row" aria-rowindex={row + 2} className="absolute left-0" style={{ top, height: CELL_PX, width }}>
      {children}
      {places.map(({ index: place, start: left }) => {
        const found = matrix.at({ row, place });
        const id = found === null || found === "passing" ? null : found.id;
        return (
          <div
            key={place} role="gridcell" aria-colindex={place + 2} tabIndex={tabStop === place ? 0 : -1} {...(id === null ? {} : { "aria-selected": selected.has(id) })}
            className={`absolute top-0 border-b border-r border-rule-soft focus-visible:z-10 ${id === null ? "" : "cursor-pointer"}`} style={{ left, width: CELL_PX, height: CELL_PX }}
            onClick={(event) => onPress({ row, place }, event.shiftKey)} onDoubleClick={() => { if (id !== null) onOpen(id); }}
          >
            {id === null ? <EmptyCell isPassed={found === "passing"} /> : <MatrixCell store={store} id={id} names={names} isFaint={!shown.has(id)} isSelected={selected.has(id)} />}
          </div>
        );
      })}
    </div>
  );
}

function EmptyCell({ isPassed }: { readonly isPassed: boolean }) {
  if (!isPassed) return <span className="sr-only">no column</span>;
  return (
    <span className="grid size-full place-items-center">
      <span className="sr-only">the column from below passes</span>
      <span aria-hidden className="h-full border-l-2 border-dashed border-edge" />
    </span>
  );
}
