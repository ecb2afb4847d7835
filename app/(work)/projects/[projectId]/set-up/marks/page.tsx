import type { Metadata } from "next";
import { can } from "#lib/access/permissions.ts";
import { Section } from "#app/_ui/page/section.tsx";
import { ownAccount } from "../../../../own-account.ts";
import { SetUpPage, type SetUpParams } from "../_parts/set-up-page.tsx";
import { ChangeSizeForm } from "./change-size-form.tsx";
import { MarksForm } from "./marks-form.tsx";

export const metadata: Metadata = { title: "Marks" };

export default async function MarksPage({ params }: SetUpParams) {
  const account = await ownAccount();
  const canChange = account.ok && can(account.value.role, "column.change");
  return (
    <SetUpPage params={params} title="Marks">
      {({ project, stamps, marks, levels }, canEdit) => (
        <>
          <p className="max-w-prose">
            A mark names a size of column, as C1 in the column schedule. Its size here is the one new columns start with; columns
            already entered keep theirs until it is changed below or on the column itself.
          </p>
          <MarksForm projectId={project.id} units={project.units} marks={marks} stamp={stamps.marks} canEdit={canEdit} />
          {canChange && marks.length > 0 && levels.length > 1 ? (
            <Section title="Change the size from a level">
              <ChangeSizeForm projectId={project.id} units={project.units} marks={marks} levels={levels} />
            </Section>
          ) : null}
        </>
      )}
    </SetUpPage>
  );
}
