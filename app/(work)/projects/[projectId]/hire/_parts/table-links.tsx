import { ButtonLink } from "#app/_ui/control/button-link.tsx";
import { paths } from "#app/paths.ts";

export type HireTable = "on-hire" | "charges" | "dockets" | "terms" | "invoices";

/** The same rows as a spreadsheet, in either kind. */
export function TableLinks({ projectId, what, label = "Table" }: { readonly projectId: string; readonly what: HireTable; readonly label?: string }) {
  return (
    <>
      <ButtonLink download href={paths.hirePart(projectId, "table", { what, as: "xlsx" })}>{label} XLSX</ButtonLink>
      <ButtonLink download href={paths.hirePart(projectId, "table", { what, as: "csv" })}>{label} CSV</ButtonLink>
    </>
  );
}
