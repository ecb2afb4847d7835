import { hasDone } from "#lib/trade/progress/stages.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { paths } from "#app/paths.ts";
import { SetAssign, SetOff } from "./forms/set-assign.tsx";

type Assignment = { readonly id: string; readonly columnId: string; readonly column: { readonly gridRef: string; readonly done: number; readonly fromLevel: { readonly name: string } } };
type SetOf = {
  readonly id: string; readonly name: string; readonly assignments: readonly Assignment[];
  readonly panels: readonly { readonly face: string; readonly itemId: string; readonly panel: { readonly widthMm: number; readonly heightMm: number; readonly item: { readonly name: string } } }[];
};

/** Each set with its panels, where it is wanted next, and where it has been. */
export function SetList({ projectId, sets, mayMove }: { readonly projectId: string; readonly sets: readonly SetOf[]; readonly mayMove: boolean }) {
  return (
    <ul className="grid gap-3 sm:grid-cols-2 lg:grid-cols-3">
      {sets.map(({ id, name, panels, assignments }) => {
        const open = assignments.filter(({ column }) => !hasDone(column.done, "stripped"));
        const served = assignments.length - open.length;
        return (
          <li key={id} id={id} className="keep scroll-mt-4 target:bg-accent-wash flex flex-col gap-2 border-2 border-ink bg-sheet p-3">
            <p className="text-lg font-semibold">{name}</p>
            <ul className="text-sm">
              {panels.map(({ face, itemId, panel }) => (
                <li key={face}>Face {face}: <Link href={paths.gearPanel(projectId, itemId)}>{panel.item.name}</Link> <span className="text-ink-soft">{Math.round(panel.widthMm)} × {Math.round(panel.heightMm)} mm</span></li>
              ))}
            </ul>
            {open.map(({ id: assignmentId, columnId, column }) => (
              <div key={assignmentId} className="flex flex-wrap items-center justify-between gap-2 border-t border-rule-soft pt-2">
                <p>For <Link href={paths.column(projectId, columnId)}>{column.gridRef}</Link>, {column.fromLevel.name}{hasDone(column.done, "stood") ? ": stands there" : ""}</p>
                {mayMove && !hasDone(column.done, "stood") ? <SetOff projectId={projectId} assignmentId={assignmentId} column={column.gridRef} /> : null}
              </div>
            ))}
            {served > 0 ? <p className="text-sm text-ink-soft">Served {served} {served === 1 ? "column" : "columns"} lately</p> : null}
            {mayMove ? <SetAssign projectId={projectId} setId={id} name={name} /> : null}
          </li>
        );
      })}
    </ul>
  );
}
