import type { Metadata } from "next";
import { Link } from "#app/_ui/control/link.tsx";
import { Caution } from "#app/_ui/message/caution.tsx";
import { paths } from "#app/paths.ts";
import { ExampleNotice, isExample } from "#app/_ui/message/example-notice.tsx";
import { SetUpPage, type SetUpParams } from "../_parts/set-up-page.tsx";
import { ShutterForm } from "./shutter-form.tsx";

export const metadata: Metadata = { title: "Shutter" };

export default function ShutterPage({ params }: SetUpParams) {
  return (
    <SetUpPage params={params} title="Shutter">
      {({ project, shutterRule }, canEdit) => (
        <>
          <p className="max-w-prose">
            How the columns of this project are boxed. Panels, cutting lists and clamp heights of every column follow from it. Clamps
            are the company&rsquo;s and stand under <Link href={paths.clamps()}>Clamp kinds</Link>.
          </p>
          <ExampleNotice
            what={[...(isExample(shutterRule.ply.source) ? ["the ply"] : []), ...(isExample(shutterRule.backing.source) ? ["the backing timber"] : [])]}
          />
          <ShutterForm projectId={project.id} units={project.units} rule={shutterRule} canEdit={canEdit} />
          <Caution of="form set" />
        </>
      )}
    </SetUpPage>
  );
}
