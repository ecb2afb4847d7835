import type { Metadata } from "next";
import { SetUpPage, type SetUpParams } from "../_parts/set-up-page.tsx";
import { LevelsForm } from "./levels-form.tsx";

export const metadata: Metadata = { title: "Levels" };

export default function LevelsPage({ params }: SetUpParams) {
  return (
    <SetUpPage params={params} title="Levels">
      {({ project, stamps, levels }, canEdit) => (
        <>
          <p className="max-w-prose">
            One row for each floor, lowest first. The elevation is the top of the slab; slab and beam depth are those of that
            same floor, because a column from below stops under them.
          </p>
          <LevelsForm projectId={project.id} units={project.units} levels={levels} stamp={stamps.levels} canEdit={canEdit} />
        </>
      )}
    </SetUpPage>
  );
}
