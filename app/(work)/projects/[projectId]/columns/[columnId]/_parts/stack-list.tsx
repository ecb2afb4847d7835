import { Link } from "#app/_ui/control/link.tsx";
import type { ColumnPage } from "./column-page.ts";
import { ColumnSign } from "#app/_ui/drawing/sign/column-sign.tsx";
import { signWords } from "#app/_ui/drawing/sign/sign-words.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { sectionText } from "#app/_ui/value/format-quantity.ts";
import { paths } from "#app/paths.ts";

/** The lifts at the same place of the grid, the highest at the top as they stand. */
export function StackList({ page }: { readonly page: ColumnPage }) {
  const { stack, column, project } = page;
  if (stack.length < 2) return null;
  return (
    <Section title={`All lifts at ${column.gridRef}`} className="no-print">
      <ol reversed className="grid max-w-xl gap-px border-2 border-ink bg-rule-soft">
        {[...stack].reverse().map((lift) => {
          const shape = lift.shape === "circle" ? "circle" : "rectangle";
          const isThis = lift.id === column.id;
          return (
            <li key={lift.id} className="bg-sheet">
              <Link
                href={paths.column(project.id, lift.id)}
                aria-current={isThis ? "page" : undefined}
                className="flex min-h-glove items-center gap-4 px-3 py-1 text-ink no-underline hover:bg-accent-wash aria-[current=page]:bg-accent-wash"
              >
                <ColumnSign shape={shape} width_mm={lift.widthMm} depth_mm={lift.depthMm} done={lift.done} flagged={lift.flagged} size={44} />
                <span className="grow">
                  <span className="block font-semibold">From {lift.fromLevel}{isThis ? <span className="font-normal text-ink-soft"> (this one)</span> : null}</span>
                  <span className="block text-sm text-ink-soft">{sectionText(shape, lift.widthMm, lift.depthMm, project.units)}</span>
                </span>
                <span>{signWords(lift.done, lift.flagged)}</span>
              </Link>
            </li>
          );
        })}
      </ol>
    </Section>
  );
}
