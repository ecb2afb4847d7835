import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { mayFoundCompany } from "#lib/server/people/found-company.ts";
import { FoundForm } from "./found-form.tsx";

export const metadata: Metadata = { title: "Set up your company" };

export default async function FoundPage() {
  const mayFound = await mayFoundCompany({});
  if (!mayFound.ok || !mayFound.value) notFound();
  return (
    <div className="flex flex-col gap-5">
      <h1 className="text-2xl">Set up your company</h1>
      <p>You become its owner. Next you set up a project and invite your leading hands and office.</p>
      <FoundForm />
    </div>
  );
}
