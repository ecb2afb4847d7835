import type { Metadata } from "next";
import { SignLegend } from "#app/_ui/drawing/sign/sign-legend.tsx";
import { Caution } from "#app/_ui/message/caution.tsx";
import { Section } from "#app/_ui/page/section.tsx";
import { SetUpPage, type SetUpParams } from "../_parts/set-up-page.tsx";
import { StagesForm } from "./stages-form.tsx";

export const metadata: Metadata = { title: "Stages and gates" };

export default function StagesPage({ params }: SetUpParams) {
  return (
    <SetUpPage params={params} title="Stages and gates">
      {({ project, progressRule }, canEdit) => (
        <>
          <Section title="The stages">
            <p className="mb-3 max-w-prose">Every column goes through these in this order; its sign shows how far it is.</p>
            <SignLegend />
          </Section>
          <StagesForm project={project} progressRule={progressRule} canEdit={canEdit} />
          <Caution of="strip time">
            The hours here are the least the crew waits after the pour. Strength at that time depends on mix and weather; where strength
            is tested or specified, that decides.
          </Caution>
        </>
      )}
    </SetUpPage>
  );
}
