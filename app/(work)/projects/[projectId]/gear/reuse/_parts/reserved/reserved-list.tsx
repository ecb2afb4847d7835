import type { Units } from "#app/_ui/value/format-quantity.ts";
import { lengthFigure } from "#app/_ui/value/format-quantity.ts";
import type { ReservedLine } from "#lib/server/gear/reserved/get-reserved.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { paths } from "#app/paths.ts";
import { CutButton } from "./line-buttons.tsx";
import { standingWords } from "./standing-words.ts";

type Props = { readonly projectId: string; readonly lines: readonly ReservedLine[]; readonly units: Units; readonly mayCut: boolean; readonly withColumn?: boolean };

/** Faces that are spoken for: which panel, where it is, and what is still to be done to it. */
export function ReservedList({ projectId, lines, units, mayCut, withColumn = false }: Props) {
  return (
    <ul className="flex flex-col divide-y divide-rule-soft">
      {lines.map((line) => (
        <li key={line.id} className="flex flex-wrap items-center justify-between gap-x-3 gap-y-1 py-1.5">
          <p>
            {withColumn ? <><Link href={paths.column(projectId, line.columnId)}>{line.gridRef}</Link>, {line.level}, face {line.face}: </> : <span className="mr-2 font-semibold">{line.face}</span>}
            {line.itemId && line.panel ? <Link href={paths.gearPanel(projectId, line.itemId)}>{line.panel}</Link> : line.source === "new" ? <span className="text-accent">new</span> : `off ${line.after ?? ""}, face ${line.afterFace ?? ""}`}
            <span className="block text-sm text-ink-soft">{standingWords(line, (mm) => lengthFigure(mm, units))}</span>
          </p>
          {line.standing === "cut-down" && mayCut ? <CutButton projectId={projectId} line={line} units={units} /> : null}
        </li>
      ))}
    </ul>
  );
}
