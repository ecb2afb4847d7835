import { Text, View } from "@react-pdf/renderer";
import type { getDocket } from "#lib/server/hire/get-hire.ts";
import { dayWords, instantWords } from "#app/_ui/value/time-words.ts";
import { look, Paper, PaperTable, Signature } from "./paper.tsx";

type DocketAnswer = Extract<Awaited<ReturnType<typeof getDocket>>, { ok: true }>["value"];
export type DocketPaperProps = { readonly given: DocketAnswer; readonly from: string };

/** An off-hire call put in writing, or the docket that goes with a return. */
export function DocketPaper({ given: { docket, supplier, project, chain, today }, from }: DocketPaperProps) {
  const isCall = docket.kind === "off-hire";
  const { day, time, zone } = instantWords(docket.happenedAt, project.timeZone);
  const answered = chain.find(({ id }) => id === docket.answersId);
  return (
    <Paper
      title={isCall ? `Off-hire notice ${docket.number}` : `Return docket ${docket.number}`} from={from} to={supplier?.name ?? ""} project={`${project.name}, ${project.site}`} madeOn={dayWords(today)}
      facts={[
        { label: isCall ? "Called off on" : "Sent back on", value: dayWords(docket.on) }, { label: "At", value: `${day}, ${time} ${zone}` },
        { label: isCall ? "Spoken with" : "Driver", value: docket.name ?? "not named" },
        ...(answered ? [{ label: "Off-hire number", value: answered.number }] : []),
        { label: "Entered by", value: docket.by },
      ]}
    >
      <View style={look.block}>
        <Text>{isCall
          ? `We called the gear below off hire on ${dayWords(docket.on)}, ${time} ${zone}, under number ${docket.number}. Please confirm the number and collect the gear; by our terms hire ends as agreed from this call.`
          : "The gear below was counted on site and handed over at the gate. Please count it in our presence or against the photos, and tell us of any difference at once."}</Text>
      </View>
      {isCall ? (
        <PaperTable columns={[{ head: "Item", part: 5 }, { head: "Pieces", part: 1, isFigure: true }]} rows={docket.lines.map(({ item, quantity }) => [item, String(quantity)])} />
      ) : (
        <PaperTable
          columns={[{ head: "Item", part: 4 }, { head: "Pieces", part: 1, isFigure: true }, { head: "Damaged", part: 1, isFigure: true }, { head: "Dirty", part: 1, isFigure: true }]}
          rows={docket.lines.map(({ item, quantity, damaged, dirty }) => [item, String(quantity), String(damaged), String(dirty)])}
        />
      )}
      {docket.note ? <View style={look.block}><Text>{docket.note}</Text></View> : null}
      {docket.photos.length > 0 ? <View style={look.block}><Text>{docket.photos.length} photos were taken and are kept with the docket.</Text></View> : null}
      {docket.reversal ? <View style={look.block}><Text style={look.bold}>Reversed: {docket.reversal.reason}</Text></View> : null}
      <View style={{ flexDirection: "row", justifyContent: "space-between" }}><Signature>{`For ${from}`}</Signature>{isCall ? null : <Signature>{`Driver for ${supplier?.name ?? "the supplier"}`}</Signature>}</View>
    </Paper>
  );
}
