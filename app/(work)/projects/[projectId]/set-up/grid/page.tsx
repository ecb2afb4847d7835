import type { Metadata } from "next";
import { SetUpPage, type SetUpParams } from "../_parts/set-up-page.tsx";
import { GridForm } from "./grid-form.tsx";

export const metadata: Metadata = { title: "Grid" };

export default function GridPage({ params }: SetUpParams) {
  return (
    <SetUpPage params={params} title="Grid">
      {({ project, stamps, gridLines }, canEdit) => (
        <>
          <p className="max-w-prose">
            Grid lines place columns on the plan. A column named by a crossing, as B/3, finds its place by itself; without grid
            lines columns are listed but not drawn on a plan.
          </p>
          <GridForm projectId={project.id} units={project.units} gridLines={gridLines} stamp={stamps.gridLines} canEdit={canEdit} />
        </>
      )}
    </SetUpPage>
  );
}
