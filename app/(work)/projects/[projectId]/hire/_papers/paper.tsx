import { Document, Page, StyleSheet, Text, View } from "@react-pdf/renderer";
import type { ReactNode } from "react";

export const look = StyleSheet.create({
  page: { paddingTop: 48, paddingHorizontal: 48, paddingBottom: 60, fontFamily: "Helvetica", fontSize: 9.5, color: "#1a1a1a" },
  // Not on the page itself: a page number inherits it, and is then laid out with no height.
  // With its size: the renderer takes a line height as a multiple of the size given beside it.
  body: { fontSize: 9.5, lineHeight: 1.35 },
  top: { borderWidth: 1.5, borderColor: "#1a1a1a", marginBottom: 14 },
  head: { padding: 10, flexDirection: "row", justifyContent: "space-between", alignItems: "flex-end" },
  title: { fontFamily: "Helvetica-Bold", fontSize: 16, lineHeight: 1.2 },
  small: { fontSize: 8, color: "#555555" },
  bold: { fontFamily: "Helvetica-Bold" },
  facts: { flexDirection: "row", flexWrap: "wrap", borderTopWidth: 1.5, borderColor: "#1a1a1a" },
  fact: { paddingVertical: 4, paddingHorizontal: 10, minWidth: "25%" },
  row: { flexDirection: "row", borderBottomWidth: 0.5, borderColor: "#999999", paddingVertical: 3 },
  headRow: { flexDirection: "row", borderBottomWidth: 1.5, borderColor: "#1a1a1a", paddingVertical: 3 },
  foot: { position: "absolute", bottom: 24, left: 48, right: 48, fontSize: 8, color: "#555555" },
  block: { marginBottom: 12 },
  sign: { marginTop: 36, borderTopWidth: 0.75, borderColor: "#1a1a1a", paddingTop: 3, width: "45%" },
});

export type PaperProps = {
  readonly title: string; readonly from: string; readonly to: string; readonly project: string; readonly madeOn: string;
  readonly facts: readonly { readonly label: string; readonly value: string }[]; readonly children: ReactNode;
};

/** A letter under the same title block as the pages have: A4, page numbers, who it is from and for. */
export function Paper({ title, from, to, project, madeOn, facts, children }: PaperProps) {
  return (
    <Document title={title} author={from} creator="Shutterwright" producer="Shutterwright">
      <Page size="A4" style={look.page}>
        <View style={look.top}>
          <View style={{ ...look.head, ...look.body }}>
            <View style={{ maxWidth: "60%" }}><Text style={look.small}>{project}</Text><Text style={look.title}>{title}</Text></View>
            <View style={{ alignItems: "flex-end" }}><Text>From {from}</Text><Text>To {to}</Text></View>
          </View>
          <View style={{ ...look.facts, ...look.body }}>
            {facts.map(({ label, value }) => <View key={label} style={look.fact}><Text style={look.small}>{label}</Text><Text style={look.bold}>{value}</Text></View>)}
          </View>
        </View>
        <View style={look.body}>{children}</View>
        <Text style={look.foot} fixed render={({ pageNumber, totalPages }) => `${title}, ${madeOn}, page ${pageNumber} of ${totalPages}`} />
      </Page>
    </Document>
  );
}

export type PaperColumn = { readonly head: string; /** Share of the width. */ readonly part: number; readonly isFigure?: boolean };
export type PaperTableProps = { readonly columns: readonly PaperColumn[]; readonly rows: readonly (readonly string[])[]; readonly total?: readonly string[] };

export function PaperTable({ columns, rows, total }: PaperTableProps) {
  const whole = columns.reduce((sum, { part }) => sum + part, 0);
  const cells = (texts: readonly string[], isBold: boolean) => columns.map(({ head, part, isFigure }, index) => (
    <Text key={head} style={{ width: `${(100 * part) / whole}%`, paddingRight: 6, textAlign: isFigure ? "right" : "left", ...(isBold ? look.bold : {}) }}>{texts[index] ?? ""}</Text>
  ));
  return (
    <View style={look.block}>
      <View style={look.headRow} fixed>{cells(columns.map(({ head }) => head), true)}</View>
      {rows.map((row, index) => <View key={index} style={look.row} wrap={false}>{cells(row, false)}</View>)}
      {total ? <View style={{ ...look.headRow, borderBottomWidth: 0 }}>{cells(total, true)}</View> : null}
    </View>
  );
}

export const Signature = ({ children }: { readonly children: string }) => <View style={look.sign} wrap={false}><Text>{children}</Text></View>;
