import type { ReuseTask } from "#lib/server/cutting/reuse/plan-reuse.ts";
import { can } from "#lib/access/permissions.ts";
import { groupBy } from "#lib/kernel/group-by.ts";
import type { Standing } from "#lib/trade/gear/reserved.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { paths } from "#app/paths.ts";
import { WithdrawLines } from "./reserved/line-buttons.tsx";
import { ReservedList } from "./reserved/reserved-list.tsx";

/** What is spoken for, column by column. */
export function AcceptedLines({ task: { accepted, project: { id, units }, role } }: { readonly task: Pick<ReuseTask, "accepted" | "project" | "role"> }) {
  if (accepted.length === 0) return null;
  const columns = [...groupBy(accepted, ({ columnId }) => columnId)];
  const levels = [...groupBy(columns, ([, lines]) => lines[0]?.level ?? "")];
  const waiting = accepted.filter(({ standing }) => standing !== "here").length;
  return (
    <Section title="Spoken for" note={`${columns.length} ${columns.length === 1 ? "column" : "columns"}, ${accepted.length} panels, ${waiting} not ready yet`}>
      {levels.map(([level, on]) => (
        <details key={level} open={columns.length <= FEW} className="border-2 border-ink bg-sheet">
          <summary className="flex min-h-glove cursor-pointer items-center px-4 font-semibold hover:bg-accent-wash">{level}<span className="ml-3 font-normal text-ink-soft">{countsOf(on.flatMap(([, lines]) => lines))}</span></summary>
          <ul className="grid gap-3 border-t border-rule-soft p-3 sm:grid-cols-2 lg:grid-cols-3">
            {on.map(([columnId, lines]) => (
              <li key={columnId} className="keep flex flex-col gap-2 border-2 border-ink bg-sheet p-3">
                <p className="font-semibold"><Link href={paths.column(id, columnId)}>{lines[0]?.gridRef}</Link>, {lines[0]?.level}{lines[0]?.set ? <span className="font-normal text-ink-soft"> has set {lines[0].set}, cut earned</span> : null}</p>
                <ReservedList projectId={id} lines={lines} units={units} mayCut={can(role, "gear.move")} />
                {can(role, "reuse.accept") ? <WithdrawLines projectId={id} ids={lines.map((line) => line.id)} column={`${lines[0]?.gridRef ?? ""}, ${lines[0]?.level ?? ""}`} /> : null}
              </li>
            ))}
          </ul>
        </details>
      ))}
    </Section>
  );
}

/** So few columns are shown at once; more lie under their level. */
const FEW = 9;
const WORDS: readonly (readonly [Standing, string])[] = [["here", "ready"], ["cut-down", "to cut down"], ["make", "to make"], ["comes-off", "to come off a column"], ["bring", "to bring from the yard"]];
const countsOf = (lines: readonly { readonly standing: Standing }[]): string =>
  WORDS.flatMap(([standing, words]) => { const count = lines.filter((line) => line.standing === standing).length; return count > 0 ? [`${count} ${words}`] : []; }).join(", ");
