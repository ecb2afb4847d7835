"use client";

import { useState, type ReactNode } from "react";
import { Button } from "#app/_ui/control/button.tsx";

export type RowListProps<Item> = {
  readonly legend: string;
  readonly note?: string;
  readonly items: readonly Item[];
  /** What a new row starts from, given the one before it. */
  readonly fresh: (last: Item | undefined) => Item;
  /** Names one row: "clamp 3". */
  readonly rowName: (index: number) => string;
  readonly addLabel: string;
  readonly least: number;
  readonly most: number;
  readonly row: (item: Item, index: number) => ReactNode;
};

/** A list of entries to add to and take from; rows are named by their place, so that taking one out closes the gap. */
export function RowList<Item>({ legend, note, items, fresh, rowName, addLabel, least, most, row }: RowListProps<Item>) {
  const [rows, setRows] = useState(() => items.map((item, key) => ({ key, item })));
  const add = () => setRows([...rows, { key: Math.max(-1, ...rows.map(({ key }) => key)) + 1, item: fresh(rows.at(-1)?.item) }]);
  return (
    <fieldset className="min-w-0">
      <legend className="mb-2 w-full border-b-2 border-ink pb-1 font-semibold">
        {legend}
        {note ? <span className="ml-2 text-sm font-normal text-ink-soft">{note}</span> : null}
      </legend>
      <ol className="flex flex-col gap-3">
        {rows.map(({ key, item }, index) => (
          <li key={key} className="flex items-end gap-2 border-b border-rule-soft pb-3">
            <div className="grid min-w-0 grow grid-cols-2 items-end gap-x-3 gap-y-2">{row(item, index)}</div>
            {rows.length > least ? (
              <Button kind="plain" aria-label={`Take out ${rowName(index)}`} onPress={() => setRows(rows.filter((each) => each.key !== key))}>
                <span aria-hidden>×</span>
              </Button>
            ) : null}
          </li>
        ))}
      </ol>
      {rows.length < most ? <div className="mt-3"><Button onPress={add} wide>{addLabel}</Button></div> : null}
    </fieldset>
  );
}
