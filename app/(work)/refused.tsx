import { headers } from "next/headers";
import { notFound, redirect } from "next/navigation";
import { PERMISSIONS, rolesWith, type Permission } from "#lib/access/permissions.ts";
import type { Failure } from "#lib/kernel/result.ts";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { Notice } from "#app/_ui/message/notice.tsx";
import { Page } from "#app/_ui/page/page.tsx";
import { ownPath, paths } from "#app/paths.ts";

const isPermission = (text: string): text is Permission => (PERMISSIONS as readonly string[]).includes(text);

/** What a page shows instead of itself when its use case refused: the sign-in, "not found", who may, or what is wrong. */
export async function Refused({ failure }: { readonly failure: Failure }) {
  if (failure.kind === "not-signed-in") redirect(paths.signIn(ownPath((await headers()).get("x-shown-path") ?? undefined)));
  // A page is only asked by its address, so an entry the contract refuses is a wrong address.
  if (failure.kind === "not-found" || failure.kind === "invalid") notFound();
  if (failure.kind === "not-allowed") return <NotAllowed permission={failure.permission} />;
  return (
    <Page title="This page cannot be shown">
      <FailureNotice failure={failure} />
    </Page>
  );
}

function NotAllowed({ permission }: { readonly permission: string }) {
  const roles = isPermission(permission) ? rolesWith(permission) : [];
  return (
    <Page title="Your role does not cover this page">
      <Notice title={`Open to: ${roles.length > 0 ? roles.join(", ") : "the owner"}.`}>
        Ask the owner of your company to do this, or to change your role.
      </Notice>
    </Page>
  );
}
