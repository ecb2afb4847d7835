import type { Day } from "#lib/kernel/days.ts";
import { daysBetween } from "#lib/kernel/days.ts";
import { amountFigure, rateFigure } from "#lib/kernel/money.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { getStatement } from "#lib/server/hire/get-hire.ts";
import { importInvoice } from "#lib/server/hire/invoices.ts";
import { must } from "../must.ts";

type Wanted = {
  readonly site: { readonly projectId: string; readonly currency: string }; readonly supplierId: string; readonly from: Day; readonly to: Day;
  /** Asked for as if it had never gone back, and at a rate a quarter over the one agreed. */
  readonly returnedItemId: string; readonly dearerItemId: string;
};
type Line = Extract<Awaited<ReturnType<typeof getStatement>>, { ok: true }>["value"]["lines"][number];
const HEADINGS = ["Docket", "Charge", "Description", "Qty", "From", "To", "Rate", "Amount"];

/** The supplier's invoice as they would send it: our own charges with two mistakes planted, read in from its file like any other. */
export async function importDemoInvoice(office: Caller, wanted: Wanted): Promise<void> {
  const { site: { projectId, currency }, supplierId, from, to } = wanted;
  const { lines } = must("work out the charges", await getStatement(office, { projectId, supplierId, from, to }));
  const rows = lines.map((line) => withMistakes(line, wanted)).map(({ line, rate, amount }) => [
    line.docket, line.kind, line.item ?? line.kind, line.quantity, line.from, line.to, rate === null ? "" : rateFigure(rate, currency), amountFigure(amount, currency),
  ]);
  const file = Uint8Array.from(Buffer.from([HEADINGS, ...rows].map((cells) => cells.join(",")).join("\r\n")));
  const head = { projectId, supplierId, number: "MG-INV 5521", issuedOn: to, from, to, currency };
  must("import the invoice", await importInvoice(office, { ...head, fileName: "mossgill-5521.csv", file }));
}

function withMistakes(line: Line, { to, returnedItemId, dearerItemId }: Wanted): { line: Line; rate: number | null; amount: number } {
  const rate = line.working?.perWeek ?? line.working?.perDay ?? null;
  const wentBack = line.kind === "hire" && line.itemId === returnedItemId && line.quantity === 40 && line.to < to && line.working !== null && isLast(line, to);
  if (wentBack && rate !== null) {
    const extra = Math.round((line.quantity * rate * daysBetween(line.to, to)) / 700);
    return { line: { ...line, to }, rate, amount: line.amount + extra };
  }
  if (line.kind === "hire" && line.itemId === dearerItemId && rate !== null) return { line, rate: Math.round(rate * 1.25), amount: Math.round(line.amount * 1.25) };
  return { line, rate, amount: line.amount };
}

/** A line that ends before its month does ended because the gear went back. */
const isLast = (line: Line, to: Day): boolean => line.to.slice(0, 7) === to.slice(0, 7) || !/-(?:28|29|30|31)$/.test(line.to);
