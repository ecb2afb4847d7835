import { Image, Text, View } from "@react-pdf/renderer";
import type { InvoicePage } from "#lib/server/hire/invoices.ts";
import { amountText, rateText } from "#app/_ui/value/money.tsx";
import { dayWords, instantWords } from "#app/_ui/value/time-words.ts";
import { CHARGE_WORDS, workingText } from "../_parts/charge-words.ts";
import { evidenceFor } from "../_parts/evidence.ts";
import { DOCKET_WORDS } from "../_parts/docket-words.ts";
import { guessText } from "../_parts/invoice-words.ts";
import { look, Paper, PaperTable, Signature } from "./paper.tsx";

export type LetterPhoto = { readonly docket: string; readonly takenAt: string; readonly format: "jpg" | "png"; readonly data: Buffer };
export type QueryLetterProps = { readonly given: InvoicePage; readonly from: string; readonly photos: readonly LetterPhoto[] };

/** What we ask the supplier to look at again: each difference with both sides, the dockets behind ours, and photos. */
export function QueryLetter({ given, from, photos }: QueryLetterProps) {
  const { invoice, supplier, project, groups, dockets, today } = given;
  const { currency } = project;
  const asked = invoice.queries.filter(({ status }) => status === "open" || status === "sent");
  const total = asked.reduce((sum, { amount }) => sum + Math.max(0, amount), 0);
  return (
    <Paper
      title={`Query on invoice ${invoice.number}`} from={from} to={supplier.name} project={`${project.name}, ${project.site}`} madeOn={dayWords(today)}
      facts={[
        { label: "Period", value: `${dayWords(invoice.from)} to ${dayWords(invoice.to)}` }, { label: "In question", value: `${currency} ${amountText(total, currency)}` },
        { label: "Answer asked by", value: asked.length > 0 ? dayWords(asked.map(({ dueOn }) => dueOn).sort()[0] ?? today) : "nothing open" },
      ]}
    >
      <View style={look.block}>
        <Text>We have laid your invoice beside our dockets. The lines below differ; please check them and credit what was asked for too much, or tell us what we have missed. The other lines agree.</Text>
      </View>
      {asked.map((query, index) => {
        const group = groups.find(({ key }) => key === query.groupKey);
        const evidence = group ? evidenceFor(group, dockets, invoice.to) : [];
        return (
          <View key={query.id} style={look.block}>
            <Text style={{ ...look.bold, fontSize: 11, marginBottom: 3 }}>{index + 1}. {group?.docket ?? "No docket"}: {group?.item ?? "a charge"}, {currency} {amountText(query.amount, currency).replaceAll("−", "-")}</Text>
            <PaperTable
              columns={[{ head: "Whose", part: 1 }, { head: "What", part: 7 }, { head: currency, part: 1.6, isFigure: true }]}
              rows={[
                ...(group?.theirs ?? []).map((line) => ["yours", `${CHARGE_WORDS[line.kind]}: ${line.quantity ?? ""} ${line.text} ${line.from ?? ""} ${line.to === null ? "" : `to ${line.to}`}${line.rate === null ? "" : ` at ${rateText(line.rate, currency)}`}`, amountText(line.amount, currency)]),
                ...(group?.ours ?? []).map((line) => ["ours", `${CHARGE_WORDS[line.kind]}, ${line.from} to ${line.to}: ${workingText(line, currency).replaceAll("−", "-")}`, amountText(line.amount, currency)]),
              ]}
            />
            {group?.guess ? <Text>{guessText(group.guess, currency)}</Text> : null}
            {query.note ? <Text>{query.note}</Text> : null}
            {evidence.length > 0 ? <Text style={look.small}>Dockets: {evidence.map(({ kind, number, on, name }) => `${DOCKET_WORDS[kind].toLowerCase()} ${number} of ${dayWords(on)}${name === null ? "" : ` (${name})`}`).join("; ")}</Text> : null}
          </View>
        );
      })}
      {photos.length > 0 ? (
        <View style={{ flexDirection: "row", flexWrap: "wrap" }}>
          {photos.map(({ docket, takenAt, format, data }, index) => {
            const { day, time, zone } = instantWords(takenAt, project.timeZone);
            return <View key={index} style={{ width: "48%", margin: "1%" }} wrap={false}><Image src={{ data, format }} style={{ maxHeight: 180, objectFit: "contain" }} /><Text style={look.small}>{docket}, {day}, {time} {zone}</Text></View>;
          })}
        </View>
      ) : null}
      <Signature>{`For ${from}`}</Signature>
    </Paper>
  );
}
