import { Link } from "#app/_ui/control/link.tsx";

export type LevelLinksProps = {
  readonly levels: readonly { readonly id: string; readonly name: string; readonly columns: number }[];
  readonly levelId: string;
  readonly hrefOf: (levelId: string) => string;
};

/** The levels that have columns, lowest first. */
export function LevelLinks({ levels, levelId, hrefOf }: LevelLinksProps) {
  return (
    <nav aria-label="Level" className="no-print">
      <ul className="flex flex-wrap gap-1">
        {levels.map(({ id, name, columns }) => (
          <li key={id} className="grow sm:grow-0">
            <Link
              href={hrefOf(id)} aria-current={id === levelId ? "page" : undefined}
              className="flex min-h-glove items-center justify-center border border-edge bg-sheet px-4 font-semibold text-ink no-underline hover:bg-accent-wash sm:min-h-hand aria-[current=page]:border-ink aria-[current=page]:bg-ink aria-[current=page]:text-white"
            >
              {name}<span className="ml-2 font-normal">{columns}</span>
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
