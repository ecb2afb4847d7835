import writeXlsxFile from "write-excel-file/universal";
import { currentCaller } from "#lib/server/gate/session.ts";
import { csvOf, safeText } from "#app/_ui/value/sheet-table.ts";
import { answerFailure } from "#app/api/answer-failure.ts";
import { readTable } from "./hire-tables.ts";
import type { HireTable } from "../_parts/table-links.tsx";

type Context = { readonly params: Promise<{ projectId: string }> };
const TABLES: readonly HireTable[] = ["on-hire", "charges", "dockets", "terms", "invoices"];
const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

export async function GET(request: Request, { params }: Context): Promise<Response> {
  const query = new URL(request.url).searchParams;
  const what = TABLES.find((table) => table === query.get("what"));
  if (what === undefined) return answerFailure({ kind: "not-found", what: "table" });
  const answer = await readTable(await currentCaller(), (await params).projectId, what);
  if (!answer.ok) return answerFailure(answer.failure);
  const { name, heads, rows } = answer.value;
  const headers = (type: string, ending: string) => ({ headers: { "content-type": type, "content-disposition": `attachment; filename="hire-${what}.${ending}"`, "cache-control": "no-store" } });
  if (query.get("as") !== "xlsx") return new Response(csvOf(answer.value), headers("text/csv; charset=utf-8", "csv"));
  const cell = (value: string | number | null) => (value === null ? null : typeof value === "number" ? { value, type: Number } : { value: safeText(value), type: String });
  const head = heads.map((value) => ({ value, type: String, fontWeight: "bold" as const }));
  const file = await writeXlsxFile([head, ...rows.map((row) => row.map(cell))], { sheet: name, stickyRowsCount: 1 }).toBlob();
  return new Response(file, headers(XLSX, "xlsx"));
}
