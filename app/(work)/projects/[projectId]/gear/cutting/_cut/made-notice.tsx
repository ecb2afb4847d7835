import { Link } from "#app/_ui/control/link.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { paths } from "#app/paths.ts";

type Query = Readonly<Record<string, string | readonly string[] | undefined>>;
const count = (value: Query[string]): number | null => (typeof value === "string" && /^\d{1,4}$/.test(value) ? Number(value) : null);
const name = (value: Query[string]): string | null => (typeof value === "string" && /^P-\d{1,7}$/.test(value) ? value : null);

/** After a plan was cut: what came in, told from the address it led to. */
export function MadeNotice({ projectId, query }: { readonly projectId: string; readonly query: Query }) {
  const [made, unknown, from, to] = [count(query["made"]), count(query["unknown"]) ?? 0, name(query["from"]), name(query["to"])];
  if (made === null || from === null || to === null) return null;
  return (
    <Notice kind="done" title={`Cut as planned: panels ${from} to ${to} are on the rack.`}>
      {unknown > 0 ? <p>{unknown === 1 ? "1 sheet was" : `${unknown} sheets were`} not in the ledger and {unknown === 1 ? "counts" : "count"} as bought and cut today.</p> : null}
      <p>Columns whose accepted reuse plan waited for new panels have them. <Link href={paths.reuse(projectId)}>Give the others to columns</Link>, <Link href={paths.gearLabels(projectId, { kind: "panel" })}>print labels</Link>.</p>
    </Notice>
  );
}
