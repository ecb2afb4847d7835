import type { Metadata } from "next";
import { Link } from "#app/_ui/control/link.tsx";
import { mayFoundCompany } from "#lib/server/people/found-company.ts";
import { Notice } from "#app/_ui/message/notice.tsx";
import { ownPath, paths } from "#app/paths.ts";
import { SignInForm } from "../sign-in-form.tsx";

export const metadata: Metadata = { title: "Sign in" };

type Props = { readonly searchParams: Promise<Record<string, string | string[] | undefined>> };

export default async function SignInPage({ searchParams }: Props) {
  const { next, email, welcome } = await searchParams;
  const mayFound = await mayFoundCompany({});
  return (
    <div className="flex flex-col gap-5">
      <h1 className="text-2xl">Sign in</h1>
      {welcome === "yes" ? <Notice kind="done" title="Your account is ready.">Sign in with the password you have just chosen.</Notice> : null}
      <SignInForm next={ownPath(typeof next === "string" ? next : undefined)} email={typeof email === "string" ? email : ""} />
      {mayFound.ok && mayFound.value ? (
        <p>New here? <Link href={paths.found()}>Set up your company</Link></p>
      ) : null}
      <p className="text-sm text-ink-soft">
        Not in yet, or the password is lost? Ask the owner of your company for an invitation.
      </p>
    </div>
  );
}
