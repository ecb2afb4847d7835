import type { Metadata } from "next";
import { Caution } from "#app/_ui/message/caution.tsx";
import { SetUpPage, type SetUpParams } from "../_parts/set-up-page.tsx";
import { PourForm } from "./pour-form.tsx";

export const metadata: Metadata = { title: "Pour and pressure" };

export default function PourPage({ params }: SetUpParams) {
  return (
    <SetUpPage params={params} title="Pour and pressure">
      {({ project, pourConditions }, canEdit) => (
        <>
          <p className="max-w-prose">
            What the fresh concrete will press with. The full head holds whatever happens on the day; the other methods allow less, as long
            as the pour keeps to the rate, temperature and mix entered here.
          </p>
          <PourForm projectId={project.id} units={project.units} pour={pourConditions} canEdit={canEdit} />
          <Caution of="concrete pressure" />
        </>
      )}
    </SetUpPage>
  );
}
