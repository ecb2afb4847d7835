import { Link } from "#app/_ui/control/link.tsx";
import { paths } from "#app/paths.ts";
import { StageCounts, type DoneCount } from "./stage-counts.tsx";

export type ProjectCardProps = {
  readonly id: string; readonly name: string; readonly site: string; readonly counts: readonly DoneCount[];
};

/** One project of the list: what it is called, and how far its columns are. */
export function ProjectCard({ id, name, site, counts }: ProjectCardProps) {
  const columns = counts.reduce((sum, row) => sum + row.count, 0);
  return (
    <article className="border-2 border-ink bg-sheet">
      <div className="flex flex-wrap items-end justify-between gap-x-6 gap-y-1 border-b border-ink px-4 py-3">
        <div className="min-w-0">
          <p className="lettering">{site}</p>
          <h2 className="text-xl"><Link href={paths.today(id)} className="inline-flex min-h-hand items-center">{name}</Link></h2>
        </div>
        <p className="font-semibold">{columns === 1 ? "1 column" : `${columns} columns`}</p>
      </div>
      {columns === 0
        ? <p className="px-4 py-3">No columns yet. <Link href={paths.setUp(id)}>Set it up</Link></p>
        : <StageCounts counts={counts} />}
    </article>
  );
}
