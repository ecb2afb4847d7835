import { ButtonLink } from "../control/button-link.tsx";
import { Page } from "./page.tsx";
import { paths } from "#app/paths.ts";

/** The same for what does not exist and for what belongs to somebody else. */
export function NothingHere() {
  return (
    <Page title="There is nothing here" subtitle="Not found">
      <p className="max-w-prose">The address may be mistyped, or what stood here was removed. Go back to where you came from, or start from the list of projects.</p>
      <p><ButtonLink href={paths.projects()} kind="primary">Projects</ButtonLink></p>
    </Page>
  );
}
