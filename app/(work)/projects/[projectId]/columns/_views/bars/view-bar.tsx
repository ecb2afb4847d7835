"use client";

import type { SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { EVERY_LEVEL, VIEWS, type View } from "../sheet/column-filter.ts";

export type ViewBarProps = {
  readonly view: View;
  /** Null is every level. */
  readonly level: SheetLevel | null;
  readonly levels: readonly SheetLevel[];
  readonly onView: (view: View) => void;
  readonly onLevel: (levelId: string) => void;
};

const WORDS: Readonly<Record<View, string>> = { plan: "Plan", levels: "Levels × columns", list: "List" };

export function ViewBar({ view, level, levels, onView, onLevel }: ViewBarProps) {
  return (
    <div className="no-print flex flex-wrap items-end justify-between gap-3 max-sm:flex-col max-sm:items-stretch">
      <div role="group" aria-label="View" className="flex">
        {VIEWS.map((each) => (
          <button
            key={each} type="button" aria-pressed={view === each} onClick={() => onView(each)}
            className={`-ml-0.5 min-h-glove grow cursor-pointer border-2 border-ink px-3 font-semibold first:ml-0 sm:min-h-hand sm:px-4 ${view === each ? "bg-ink text-white" : "bg-sheet hover:bg-accent-wash"}`}
          >
            {WORDS[each]}
          </button>
        ))}
      </div>
      <div className="min-w-48">
        <SelectField
          name="level" isFilter label="Level" value={level?.id ?? EVERY_LEVEL} onChange={onLevel}
          choices={[...(view === "plan" ? [] : [{ value: EVERY_LEVEL, label: "Every level" }]), ...levels.map(({ id, name }) => ({ value: id, label: name }))]}
        />
      </div>
    </div>
  );
}
