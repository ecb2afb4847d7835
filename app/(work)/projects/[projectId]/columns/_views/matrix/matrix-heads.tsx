import type { VirtualItem } from "@tanstack/react-virtual";
import { CELL_PX, HEAD_PX, SIDE_PX } from "./use-matrix-window.ts";

const HEAD = "absolute cursor-pointer truncate border-b border-r border-rule-soft bg-wash px-1 text-sm font-semibold hover:bg-accent-wash";

type MatrixHeadProps = { readonly places: readonly VirtualItem[]; readonly names: readonly string[]; readonly onSelect: (place: number) => void };

/** The grid positions along the top; pressing one selects the columns over each other there. The keyboard has Ctrl+Space for it. */
export function MatrixHead({ places, names, onSelect }: MatrixHeadProps) {
  return (
    <>
      <span role="columnheader" aria-colindex={1} className="sticky left-0 z-10 block h-full border-b border-r border-rule-soft bg-wash px-2 py-2 text-sm" style={{ width: SIDE_PX }}>Level</span>
      {places.map(({ index, start }) => (
        <span key={index} role="columnheader" aria-colindex={index + 2} className="contents">
          <button
            type="button" tabIndex={-1} title={`Select every shown column at ${names[index] ?? ""}`} className={`${HEAD} top-0`}
            style={{ left: start, width: CELL_PX, height: HEAD_PX }} onClick={() => onSelect(index)}
          >
            {names[index]}
          </button>
        </span>
      ))}
    </>
  );
}

/** A level at the side; pressing it selects its columns. The keyboard has Shift+Space for it. */
export function MatrixSide({ name, onSelect }: { readonly name: string; readonly onSelect: () => void }) {
  return (
    <span role="rowheader" aria-colindex={1} className="sticky left-0 z-10 block h-full" style={{ width: SIDE_PX }}>
      <button type="button" tabIndex={-1} title={`Select every shown column on ${name}`} className={`${HEAD} inset-0 px-2 text-left`} onClick={onSelect}>
        {name}
      </button>
    </span>
  );
}
