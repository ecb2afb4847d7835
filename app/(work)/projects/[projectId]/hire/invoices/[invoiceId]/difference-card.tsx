import type { InvoicePage } from "#lib/server/hire/invoices.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { amountText, Money, rateText } from "#app/_ui/value/money.tsx";
import { paths } from "#app/paths.ts";
import { CHARGE_WORDS, workingText } from "../../_parts/charge-words.ts";
import { guessText, QUERY_WORDS } from "../../_parts/invoice-words.ts";
import { QueryForm } from "./query-form.tsx";

type Group = InvoicePage["groups"][number];
export type DifferenceCardProps = {
  readonly project: { readonly id: string; readonly currency: string }; readonly invoiceId: string; readonly group: Group;
  readonly query: InvoicePage["invoice"]["queries"][number] | null; readonly owners: InvoicePage["owners"]; readonly me: string; readonly today: string;
  readonly canSettle: boolean; readonly evidence: InvoicePage["dockets"];
};

/** Both sides of one difference under each other, with the probable reason, and who follows it up. */
export function DifferenceCard({ project, invoiceId, group, query, owners, me, today, canSettle, evidence }: DifferenceCardProps) {
  const { currency } = project;
  const { guess, difference } = group;
  return (
    <article className="border-2 border-ink bg-sheet">
      <header className="flex flex-wrap items-baseline justify-between gap-3 border-b-2 border-ink bg-wash px-4 py-2">
        <h3>{group.docket ?? "no docket"}: {group.item ?? "a charge"}</h3>
        <p className="font-semibold">{difference > 0 ? "asked too much" : "not asked for"} <Money minor={Math.abs(difference)} currency={currency} withCurrency /></p>
      </header>
      <div className="grid gap-4 p-4 lg:grid-cols-2">
        <div>
          <p className="lettering">Theirs, {currency} {amountText(group.theirAmount, currency)}</p>
          {group.theirs.length === 0 ? <p className="text-ink-soft">nothing</p> : (
            <ul>{group.theirs.map((line) => (
              <li key={line.row} className="border-b border-rule-soft py-1">
                {CHARGE_WORDS[line.kind]}: {line.quantity ?? "?"} {line.text}{line.from === null || line.to === null ? "" : <>, <DayText day={line.from} /> to <DayText day={line.to} /></>}
                {line.rate === null ? "" : ` at ${rateText(line.rate, currency)}`} = {amountText(line.amount, currency)} <span className="text-sm text-ink-soft">(row {line.row})</span>
              </li>
            ))}</ul>
          )}
        </div>
        <div>
          <p className="lettering">Ours, {currency} {amountText(group.ourAmount, currency)}</p>
          {group.ours.length === 0 ? <p className="text-ink-soft">nothing</p> : (
            <ul>{group.ours.map((line, index) => (
              <li key={index} className="border-b border-rule-soft py-1">
                {CHARGE_WORDS[line.kind]}, <DayText day={line.from} />{line.to === line.from ? "" : <> to <DayText day={line.to} /></>}: {workingText(line, currency)} = {amountText(line.amount, currency)}
              </li>
            ))}</ul>
          )}
        </div>
      </div>
      <div className="flex flex-col gap-3 border-t border-ink px-4 py-3">
        {guess ? <p>{guessText(guess, currency)}</p> : null}
        {evidence.length > 0 ? <p className="text-sm">Evidence: {evidence.map(({ id, number, photos }, index) => <span key={id}>{index > 0 ? ", " : ""}<Link href={paths.hireDocket(project.id, id)}>{number}</Link>{photos.length > 0 ? ` (${photos.length} photos)` : ""}</span>)}</p> : null}
        {query ? <p className="font-semibold">{QUERY_WORDS[query.status]}: {query.owner}, due <DayText day={query.dueOn} />{query.note ? `. ${query.note}` : ""}</p> : null}
        {canSettle && guess ? (
          <QueryForm
            projectId={project.id} invoiceId={invoiceId} groupKey={group.key} reason={query?.reason ?? guess.reason} owners={owners.map(({ id, name }) => ({ id, name }))}
            query={query} me={me} today={today}
          />
        ) : null}
      </div>
    </article>
  );
}
