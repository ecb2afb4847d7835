import type { ReactNode } from "react";
import type { Term, Working } from "#lib/trade/engineering/working.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { formulaText, termText, toldAgain } from "#app/_ui/value/working-words.ts";

export type WorkingListProps = {
  readonly working: readonly Working[];
  readonly units: Units;
  /** On a sheet that is about the derivation itself. */
  readonly isOpen?: boolean;
};

/** The derivation step by step, closed until asked for. */
export function WorkingList({ working, units, isOpen = false }: WorkingListProps) {
  return (
    <div className="working-list flex flex-col border-2 border-ink bg-sheet">
      {working.map((each) => (
        <details key={each.title} open={isOpen} className="group border-b border-ink last:border-b-0">
          <summary className="flex min-h-hand cursor-pointer flex-wrap items-center gap-x-3 px-4 py-2 hover:bg-accent-wash">
            <span aria-hidden className="size-2 -rotate-45 border-b-2 border-r-2 border-ink group-open:rotate-45" />
            <span className="font-semibold">{each.title}</span>
            <span className="text-ink-soft">{termText(each.result)}{toldAgain(each.result, units)}</span>
          </summary>
          <dl className="grid gap-x-6 gap-y-2 border-t border-rule-soft px-4 py-3 sm:grid-cols-[8rem_1fr]">
            <Row name="Inputs"><Terms terms={each.inputs} units={units} /></Row>
            <Row name="Formula">{formulaText(each.formula)}</Row>
            {each.steps.length > 0 ? <Row name="Steps"><Terms terms={each.steps} units={units} /></Row> : null}
            <Row name="Result"><strong className="font-semibold">{termText(each.result)}{toldAgain(each.result, units)}</strong></Row>
            <Row name="Source">{each.source}</Row>
          </dl>
        </details>
      ))}
    </div>
  );
}

const Row = ({ name, children }: { readonly name: string; readonly children: ReactNode }) => (
  <>
    <dt className="text-ink-soft">{name}</dt>
    <dd className="min-w-0 break-words">{children}</dd>
  </>
);

function Terms({ terms, units }: { readonly terms: readonly Term[]; readonly units: Units }) {
  return (
    <ul className="flex flex-wrap gap-x-5 gap-y-1">
      {terms.map((term) => <li key={term.name}>{termText(term)}{toldAgain(term, units)}</li>)}
    </ul>
  );
}
