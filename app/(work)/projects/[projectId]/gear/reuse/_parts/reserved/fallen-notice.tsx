import { groupBy } from "#lib/kernel/group-by.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { paths } from "#app/paths.ts";

type Fallen = { readonly columnId: string; readonly gridRef: string; readonly level: string; readonly face: string; readonly reason: string };

/** Columns that were to get a panel which serves no more, until another is found. */
export function FallenNotice({ projectId, fallen, isElsewhere = false }: { readonly projectId: string; readonly fallen: readonly Fallen[]; readonly isElsewhere?: boolean }) {
  if (fallen.length === 0) return null;
  return (
    <Notice kind="problem" title={fallen.length === 1 ? "A panel fell out" : `${fallen.length} panels fell out`}>
      <ul className="list-disc pl-5">
        {[...groupBy(fallen, ({ columnId }) => columnId)].map(([columnId, own]) => (
          <li key={columnId}><Link href={paths.column(projectId, columnId)}>{own[0]?.gridRef}</Link>, {own[0]?.level}: {own.map(({ face, reason }) => `face ${face}: ${reason}`).join("; ")}</li>
        ))}
      </ul>
      <p className="no-print mt-1">{isElsewhere ? <Link href={paths.reuse(projectId)}>Find other panels</Link> : "The plan below finds other panels for them."}</p>
    </Notice>
  );
}
