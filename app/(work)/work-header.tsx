import { Link } from "#app/_ui/control/link.tsx";
import type { Role } from "#lib/access/roles.ts";
import { paths } from "#app/paths.ts";
import { PersonMenu } from "./person-menu.tsx";

export type WorkHeaderProps = { readonly companyName: string; readonly name: string; readonly role: Role };

/** Whose work this is and who is doing it, above every page. */
export function WorkHeader({ companyName, name, role }: WorkHeaderProps) {
  return (
    <header className="no-print border-b-2 border-ink bg-ink text-white">
      <div className="mx-auto flex max-w-7xl items-stretch justify-between gap-3 px-3 sm:px-6">
        <Link
          href={paths.projects()}
          className="flex min-h-hand min-w-0 flex-col justify-center py-1 text-white no-underline focus-visible:outline-white"
        >
          <span className="truncate font-semibold">{companyName}</span>
          <span className="text-sm">All projects</span>
        </Link>
        <PersonMenu name={name} role={role} />
      </div>
    </header>
  );
}
