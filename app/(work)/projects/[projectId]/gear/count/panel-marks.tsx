"use client";

import { useState } from "react";
import { Button } from "#app/_ui/control/button.tsx";
import { SuggestField } from "#app/_ui/field/suggest-field.tsx";

type Panel = { readonly itemId: string; readonly name: string; readonly placeId: string | null };
type Props = {
  readonly panels: readonly Panel[]; readonly placeId: string;
  /** One: found. Nought: not found. Nothing: not looked for. */
  readonly draft: Readonly<Record<string, number>>;
  readonly onMark: (itemId: string, counted: number) => void;
};

/** Panels by the label on their back: those the ledger has here, and others that turn up. */
export function PanelMarks({ panels, placeId, draft, onMark }: Props) {
  const [label, setLabel] = useState("");
  const [unknown, setUnknown] = useState<string | null>(null);
  const shown = panels.filter((panel) => panel.placeId === placeId || draft[panel.itemId] !== undefined);
  const add = () => {
    const panel = panels.find(({ name }) => name.toLowerCase() === label.trim().toLowerCase());
    setUnknown(panel ? null : label.trim());
    if (!panel) return;
    onMark(panel.itemId, 1);
    setLabel("");
  };
  const mark = (itemId: string, counted: number) => onMark(itemId, draft[itemId] === counted ? Number.NaN : counted);
  return (
    <fieldset className="min-w-0">
      <legend className="mb-2 font-semibold">Panels by their label</legend>
      {shown.length > 0 ? (
        <ul className="mb-3 grid border-2 border-ink bg-sheet sm:grid-cols-2 lg:grid-cols-3">
          {shown.map(({ itemId, name }) => (
            <li key={itemId} className="border-b border-rule-soft">
              <div role="group" aria-label={`Panel ${name}`} className="flex flex-wrap items-center justify-between gap-2 p-2">
                <strong className="min-w-16 text-lg">{name}</strong>
                <span className="flex gap-2">
                  <Button size="glove" kind={draft[itemId] === 1 ? "primary" : "plain"} aria-pressed={draft[itemId] === 1} onPress={() => mark(itemId, 1)}>Found</Button>
                  <Button size="glove" kind={draft[itemId] === 0 ? "primary" : "plain"} aria-pressed={draft[itemId] === 0} onPress={() => mark(itemId, 0)}>Not found</Button>
                </span>
              </div>
            </li>
          ))}
        </ul>
      ) : <p className="mb-3 text-ink-soft">The ledger has no panel here.</p>}
      <div className="flex flex-wrap items-end gap-3">
        <SuggestField name="panel-label" label="Another panel lies here" suggestions={panels.filter((panel) => !shown.includes(panel)).map(({ name }) => name)} value={label} onChange={setLabel} size="glove" {...(unknown ? { problem: `There is no panel ${unknown}; read the label again.` } : {})} />
        <Button size="glove" isDisabled={label.trim() === ""} onPress={add}>Add it</Button>
      </div>
    </fieldset>
  );
}
