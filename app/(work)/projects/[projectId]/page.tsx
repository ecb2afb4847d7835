import { redirect } from "next/navigation";
import { paths } from "#app/paths.ts";

export default async function ProjectPage({ params }: { readonly params: Promise<{ projectId: string }> }) {
  redirect(paths.today((await params).projectId));
}
