import { Link } from "#app/_ui/control/link.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { paths } from "#app/paths.ts";

type Props = { readonly projectId: string; readonly unknown: number; readonly endless: number; readonly stripDays: number };

/** From when to when a column holds its gear, and which columns that cannot be said of. */
export function ColumnsCounted({ projectId, unknown, endless, stripDays }: Props) {
  const pours = (words: string) => <Link href={paths.pours(projectId)}>{words}</Link>;
  return (
    <>
      {unknown > 0 ? (
        <Notice title={unknown === 1 ? "One column is not counted in full." : `${unknown} columns are not counted in full.`}>
          They have no planned day, or their gear cannot be told for want of a clamp layout or a form height. Until then the plan may send back gear they will need. {pours("Set their days under Pours")}.
        </Notice>
      ) : null}
      {endless > 0 ? (
        <Notice title={endless === 1 ? "One column has no day to be poured." : `${endless} columns have no day to be poured.`}>Their gear is kept here to the end of the plan. {pours("Give the day under Pours")}.</Notice>
      ) : null}
      <p className="max-w-prose text-sm text-ink-soft">
        A column holds its gear from the day it is stood to the day it is stripped: the recorded day, else {stripDays === 1 ? "the day" : `${stripDays} days`} after the pour, recorded or planned, by the{" "}
        <Link href={paths.setUpPart(projectId, "stages")}>project&rsquo;s rule in hours</Link>. That rule knows no temperature: where cold or slow concrete stays in its form for longer, set the rule or the planned days
        to what the engineer allows (see <Link href={paths.working(projectId, "strip-time")}>Strip time</Link>).
      </p>
    </>
  );
}
