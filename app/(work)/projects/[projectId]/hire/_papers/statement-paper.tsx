import { Text, View } from "@react-pdf/renderer";
import type { getStatement } from "#lib/server/hire/get-hire.ts";
import { amountText } from "#app/_ui/value/money.tsx";
import { dayWords } from "#app/_ui/value/time-words.ts";
import { CHARGE_WORDS, gapText, workingText } from "../_parts/charge-words.ts";
import { look, Paper, PaperTable } from "./paper.tsx";

type Statement = Extract<Awaited<ReturnType<typeof getStatement>>, { ok: true }>["value"];
export type StatementPaperProps = { readonly given: Statement; readonly from: string };

/** What a supplier may charge for a period by our own dockets, each line with how it comes about. */
export function StatementPaper({ given: { supplier, project, from: first, to, lines, gaps, credits, today }, from }: StatementPaperProps) {
  const { currency } = project;
  const [charges, credited] = [lines.reduce((sum, { amount }) => sum + amount, 0), credits.reduce((sum, { amount }) => sum + amount, 0)];
  const money = (minor: number): string => amountText(minor, currency);
  return (
    <Paper
      title="Hire statement" from={from} to={supplier.name} project={`${project.name}, ${project.site}`} madeOn={dayWords(today)}
      facts={[
        { label: "Period", value: `${dayWords(first)} to ${dayWords(to)}` }, { label: "Charges", value: `${currency} ${money(charges)}` },
        ...(credited > 0 ? [{ label: "Credits", value: `${currency} ${money(credited)}` }] : []), { label: "Due", value: `${currency} ${money(charges - credited)}` },
      ]}
    >
      <PaperTable
        columns={[{ head: "Docket", part: 2 }, { head: "Charge", part: 4.2 }, { head: "From", part: 1.9 }, { head: "To", part: 1.9 }, { head: "How it comes about", part: 6 }, { head: currency, part: 2, isFigure: true }]}
        rows={[
          ...lines.map((line) => [line.docket, `${CHARGE_WORDS[line.kind]}${line.item === null ? "" : `, ${line.item}`}`, line.from, line.to, workingText(line, currency).replaceAll("−", "-"), money(line.amount)]),
          ...credits.map(({ number, on, amount, note }) => [number, "Credit", on, on, note ?? "", `-${money(amount)}`]),
        ]}
        total={["", "Before tax", "", "", "", money(charges - credited)]}
      />
      {gaps.length > 0 ? <View style={look.block}><Text style={look.bold}>Not charged, because the terms say nothing of it:</Text>{[...new Set(gaps.map(gapText))].map((text) => <Text key={text}>{text}</Text>)}</View> : null}
      <Text style={look.small}>From our own dockets and the terms entered for {supplier.name}. Compare it with their invoice and the agreement before paying.</Text>
    </Paper>
  );
}
