import { TIMBER_USES } from "#lib/contracts/planning/cutting.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { paths } from "#app/paths.ts";
import { counted, lengthsOf, offcutsOf } from "./cut-words.ts";

type Query = Readonly<Record<string, string | readonly string[] | undefined>>;
const count = (value: Query[string]): number | null => (typeof value === "string" && /^\d{1,5}$/.test(value) ? Number(value) : null);
const name = (value: Query[string]): string | null => (typeof value === "string" && /^P-\d{1,7}$/.test(value) ? value : null);

/** After a plan was cut: what went out and what came in, told from the address it led to. */
export function MadeNotice({ projectId, query }: { readonly projectId: string; readonly query: Query }) {
  const [made, from, to] = [count(query["made"]), name(query["from"]), name(query["to"])];
  if (made === null || from === null || to === null) return null;
  const lengths = (key: (use: string) => string) => TIMBER_USES.map((use) => ({ use, count: count(query[key(use)]) ?? 0 }));
  const posted = lengthsOf(lengths((use) => use));
  const unknownSheets = count(query["unknown"]) ?? 0;
  const unknown = [unknownSheets > 0 ? counted(unknownSheets, "sheet") : "", lengthsOf(lengths((use) => `${use}-unknown`))].filter((words) => words !== "").join(", ");
  const kept = offcutsOf(count(query["ply"]) ?? 0, count(query["timber"]) ?? 0);
  return (
    <Notice kind="done" title={made === 1 ? `Cut as planned: panel ${from} is on the rack.` : `Cut as planned: panels ${from} to ${to} are on the rack.`}>
      {posted === "" ? null : <p>{posted} left the stock as cut up.</p>}
      {unknown === "" ? null : <p>Not in the ledger, so counted as bought and cut today: {unknown}.</p>}
      {kept === "" ? null : <p>Kept on the rack for the next plan: {kept}.</p>}
      <p>Columns whose accepted reuse plan waited for new panels have them. <Link href={paths.reuse(projectId)}>Give the others to columns</Link>, <Link href={paths.gearLabels(projectId, { kind: "panel" })}>print labels</Link>. A mistake is taken back in one step under <Link href={paths.gearMovements(projectId)}>Movements</Link>.</p>
    </Notice>
  );
}
