import { Link } from "#app/_ui/control/link.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { paths } from "#app/paths.ts";
import { ReturnTasks, type ShownTask } from "./return-tasks.tsx";
import { TASK_WORDS } from "./task-words.ts";

type Props = { readonly projectId: string; readonly today: string; readonly tasks: readonly ShownTask[] };

/** What is to be done about returns by today, late ones first, and what comes next. */
export function ReturnsDue({ projectId, today, tasks }: Props) {
  const due = tasks.filter(({ on }) => on <= today);
  const ahead = tasks.filter(({ on }) => on > today).map(({ on }) => on).sort();
  const next = tasks.filter(({ on }) => on === ahead[0]);
  if (due.length === 0 && next.length === 0) return null;
  return (
    <Section title="Hire to send back">
      {due.length > 0 ? <ReturnTasks projectId={projectId} tasks={due} today={today} canWithdraw={false} /> : null}
      {next.length > 0 ? (
        <p className={due.length > 0 ? "mt-2" : ""}>
          Next, <DayText day={next[0]?.on ?? today} />: {next.map(({ kind, supplier }) => `${TASK_WORDS[kind].toLowerCase()}, ${supplier}`).join("; ")}. <Link href={paths.returnPlan(projectId)}>Return plan</Link>
        </p>
      ) : null}
    </Section>
  );
}
