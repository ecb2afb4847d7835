"use client";

import type { SheetLevel } from "#lib/contracts/columns-sheet.ts";
import { SelectField } from "#app/_ui/field/select-field.tsx";
import { VIEWS, type View } from "#app/(work)/projects/[projectId]/columns/_views/column-filter.ts";

export type ViewBarProps = {
  readonly view: View;
  readonly level: SheetLevel | null;
  readonly levels: readonly SheetLevel[];
  readonly onView: (view: View) => void;
  readonly onLevel: (levelId: string) => void;
};

const WORDS: Readonly<Record<View, string>> = { plan: "Plan", levels: "Levels × columns", list: "List" };

export function ViewBar({ view, level, levels, onView, onLevel }: ViewBarProps) {
  return (
    <div className="no-print flex flex-wrap items-end justify-between gap-3">
      <div role="group" aria-label="View" className="flex flex-wrap">
        {VIEWS.map((each) => (
          <button
            key={each} type="button" aria-pressed={view === each} onClick={() => onView(each)}
            className={`-ml-0.5 min-h-glove cursor-pointer border-2 border-ink px-4 font-semibold first:ml-0 sm:min-h-hand ${view === each ? "bg-ink text-white" : "bg-sheet hover:bg-accent-wash"}`}
          >
            {WORDS[each]}
          </button>
        ))}
      </div>
      {view === "levels" || level === null ? null : (
        <div className="min-w-48">
          <SelectField name="level" isFilter label="Level" value={level.id} onChange={onLevel} choices={levels.map(({ id, name }) => ({ value: id, label: name }))} />
        </div>
      )}
    </div>
  );
}
