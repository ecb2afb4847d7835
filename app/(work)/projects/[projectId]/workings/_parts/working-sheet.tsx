import { Suspense } from "react";
import { currentCaller } from "#lib/server/gate/session.ts";
import { startWorkings } from "#lib/server/workings/start-workings.ts";
import type { Working } from "#lib/trade/engineering/working.ts";
import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { PrintButton } from "#app/_ui/control/print-button.tsx";
import { Caution } from "#app/_ui/message/caution.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { WorkingList } from "#app/_ui/page/working-list.tsx";
import { paths } from "#app/paths.ts";
import { Refused } from "../../../../refused.tsx";
import { NoAnswer } from "./answer/no-answer.tsx";
import { PrintedInput } from "./answer/printed-input.tsx";
import { COLUMN, LEFT_OUT, type Calculator } from "./calculator.ts";
import { calculatorWords } from "./calculators.ts";
import { WorkingForm } from "./working-form.tsx";

export type WorkingPageProps = {
  readonly params: Promise<{ projectId: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

export type WorkingSheetProps<Input, Told extends { readonly working: readonly Working[] }> = WorkingPageProps & { readonly calculator: Calculator<Input, Told> };

async function entriesOf(searchParams: WorkingPageProps["searchParams"]): Promise<URLSearchParams> {
  const given = Object.entries(await searchParams).flatMap(([name, value]) => (value === undefined ? [] : [[name, Array.isArray(value) ? (value[0] ?? "") : value]]));
  return new URLSearchParams(given);
}

/** A calculation on one sheet: entries to the left, the answer beside them, and how it came about. All of it follows from the address. */
export async function WorkingSheet<Input, Told extends { readonly working: readonly Working[] }>({ params, searchParams, calculator }: WorkingSheetProps<Input, Told>) {
  const { projectId } = await params;
  const caller = await currentCaller();
  const entries = await entriesOf(searchParams);
  const columnId = entries.get(COLUMN);
  const start = await startWorkings(caller, { projectId, ...(columnId === null ? {} : { columnId }) });
  if (!start.ok) return <Refused failure={start.failure} />;
  const { column, project: { units, name } } = start.value;
  const isStart = [...entries.keys()].every((key) => key === LEFT_OUT || key === COLUMN);
  const input = isStart ? calculator.start(start.value) : calculator.read(entries);
  const answer = await calculator.workOut(caller, input);
  const told = answer.ok ? answer.value : null;
  const mind = calculator.mind(told);
  return (
    <Page
      title={calculatorWords(calculator.name)?.label ?? ""}
      subtitle={`${name}: workings`}
      isSheet
      actions={<><ButtonLink href={paths.working(projectId, calculator.name)}>Start from the project</ButtonLink><PrintButton /></>}
    >
      <div className="working-sheet grid grid-cols-1 items-start gap-6 lg:grid-cols-[22rem_minmax(0,1fr)] print:block">
        <div className="no-print min-w-0 max-lg:[&_button]:min-h-glove max-lg:[&_input:not([type=radio])]:min-h-glove">
          {isStart ? <p className="mb-4 border-l-4 border-accent pl-3 text-sm">{column === null ? null : <strong className="block">Column {column.name}.</strong>}{calculator.startNote(start.value)}</p> : null}
          <Suspense><WorkingForm failure={answer.ok ? undefined : answer.failure}>{calculator.fields(input, { units, told, start: start.value })}</WorkingForm></Suspense>
        </div>
        <div id="answer" className="flex min-w-0 scroll-mt-4 flex-col gap-5 print:gap-2">
          <Examples what={calculator.examples(input, start.value)} />
          <PrintedInput lines={calculator.inputLines(input, units)} />
          {answer.ok ? calculator.answer(answer.value, input, { units, query: entries }) : <NoAnswer failure={answer.failure} units={units} />}
          {told === null ? null : (
            <Section title="Working" note="in the units of each formula"><WorkingList working={told.working} units={units} isOpen /></Section>
          )}
          <Caution of={calculator.of}>{mind.length === 0 ? null : <ul className="list-disc pl-5">{mind.map((line) => <li key={line}>{line}</li>)}</ul>}</Caution>
        </div>
      </div>
    </Page>
  );
}

function Examples({ what }: { readonly what: readonly string[] }) {
  if (what.length === 0) return null;
  return (
    <Notice kind="problem" title={`Example figures: ${what.join(" and ")}.`}>
      Round figures to start from, no supplier&rsquo;s or hirer&rsquo;s. Enter their own before the answer is relied on.
    </Notice>
  );
}
