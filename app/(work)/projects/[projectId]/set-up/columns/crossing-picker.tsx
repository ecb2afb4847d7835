"use client";

import { placeKey } from "#lib/trade/schedule/grid-names.ts";
import { crossingRef, type NamedLine } from "./crossings.ts";

export type CrossingPickerProps = {
  readonly gridLines: readonly NamedLine[];
  readonly taken: ReadonlySet<string>;
  readonly picked: ReadonlySet<string>;
  readonly onChange: (picked: ReadonlySet<string>) => void;
};

const CELL = "border border-rule-soft p-0 text-center";
const BUTTON = "min-h-hand min-w-hand cursor-pointer px-2 font-semibold hover:bg-accent-wash";

/** The grid as on the plan; each crossing is a box to tick, each line a button that ticks what stands on it. */
export function CrossingPicker({ gridLines, taken, picked, onChange }: CrossingPickerProps) {
  const across = gridLines.filter((line) => line.axis === "along-x").sort((a, b) => a.offsetMm - b.offsetMm);
  const up = gridLines.filter((line) => line.axis === "along-y").sort((a, b) => b.offsetMm - a.offsetMm);
  const isFree = (ref: string) => !taken.has(placeKey(ref));
  const toggle = (refs: readonly string[]) => {
    const free = refs.filter(isFree);
    const next = new Set(picked);
    const isOn = free.every((ref) => picked.has(ref));
    for (const ref of free) if (isOn) next.delete(ref); else next.add(ref);
    onChange(next);
  };
  const column = (x: NamedLine) => up.map((y) => crossingRef(x.name, y.name));
  const row = (y: NamedLine) => across.map((x) => crossingRef(x.name, y.name));
  return (
    <div className="relative max-h-[70dvh] overflow-auto border-2 border-ink bg-sheet" tabIndex={0} role="region" aria-label="Grid crossings">
      <table className="border-collapse">
        <caption className="sr-only">Grid crossings; crossings that have a column from this level cannot be ticked</caption>
        <thead>
          <tr>
            <td className={CELL}><button type="button" className={BUTTON} onClick={() => toggle(across.flatMap(column))}>All</button></td>
            {across.map((x) => (
              <th key={x.id} scope="col" className={CELL}><button type="button" className={`${BUTTON} w-full`} aria-label={`All on ${x.name}`} onClick={() => toggle(column(x))}>{x.name}</button></th>
            ))}
          </tr>
        </thead>
        <tbody>
          {up.map((y) => (
            <tr key={y.id}>
              <th scope="row" className={CELL}><button type="button" className={`${BUTTON} w-full`} aria-label={`All on ${y.name}`} onClick={() => toggle(row(y))}>{y.name}</button></th>
              {across.map((x) => {
                const ref = crossingRef(x.name, y.name);
                return <td key={x.id} className={CELL}><Crossing name={ref} isFree={isFree(ref)} isPicked={picked.has(ref)} onToggle={() => toggle([ref])} /></td>;
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

type CrossingProps = { readonly name: string; readonly isFree: boolean; readonly isPicked: boolean; readonly onToggle: () => void };

function Crossing({ name, isFree, isPicked, onToggle }: CrossingProps) {
  return (
    <label className={`flex min-h-hand min-w-14 flex-col items-center justify-center text-xs ${isFree ? "cursor-pointer hover:bg-accent-wash" : "bg-wash text-ink-soft"}`}>
      <input type="checkbox" aria-label={isFree ? name : `${name}, taken`} checked={isPicked} disabled={!isFree} onChange={onToggle} className="size-5 accent-accent" />
      <span aria-hidden>{isFree ? name : "taken"}</span>
    </label>
  );
}
