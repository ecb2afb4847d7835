import { LABEL_KINDS, type LabelKind } from "#lib/contracts/gear.ts";
import { Link } from "#app/_ui/control/link.tsx";
import { paths } from "#app/paths.ts";

type LevelOf = { readonly id: string; readonly name: string };
type LabelChoiceProps = { readonly projectId: string; readonly kind: LabelKind; readonly levels: readonly LevelOf[]; readonly levelId: string | null };

const KIND_NAMES: Readonly<Record<LabelKind, string>> = { panel: "Panels", set: "Sets", column: "Columns" };

/** What gets labels, and for columns of which level. */
export function LabelChoice({ projectId, kind, levels, levelId }: LabelChoiceProps) {
  const kinds = LABEL_KINDS.map((each) => ({ key: each, label: KIND_NAMES[each], href: paths.gearLabels(projectId, { kind: each }), isChosen: each === kind }));
  const ofLevels = levels.map(({ id, name }) => ({ key: id, label: name, href: paths.gearLabels(projectId, { kind: "column", level: id }), isChosen: id === levelId }));
  return (
    <div className="no-print flex flex-col gap-3">
      <Choices label="Labels for" choices={kinds} />
      {kind === "column" && ofLevels.length > 0 ? <Choices label="Columns from level" choices={ofLevels} /> : null}
    </div>
  );
}

type Choice = { readonly key: string; readonly label: string; readonly href: string; readonly isChosen: boolean };

function Choices({ label, choices }: { readonly label: string; readonly choices: readonly Choice[] }) {
  return (
    <nav aria-label={label}>
      <p className="lettering mb-1">{label}</p>
      <ul className="flex flex-wrap gap-1">
        {choices.map(({ key, label: name, href, isChosen }) => (
          <li key={key}>
            <Link
              href={href} aria-current={isChosen ? "true" : undefined}
              className="flex min-h-glove items-center border border-edge bg-sheet px-4 font-semibold text-ink no-underline hover:bg-accent-wash sm:min-h-hand aria-[current=true]:border-ink aria-[current=true]:bg-ink aria-[current=true]:text-white"
            >
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
