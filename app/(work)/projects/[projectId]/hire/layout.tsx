import type { ReactNode } from "react";
import { HireTabs } from "./_parts/hire-tabs.tsx";

type Props = { readonly params: Promise<{ projectId: string }>; readonly children: ReactNode };

export default async function HireLayout({ params, children }: Props) {
  const { projectId } = await params;
  return (
    <>
      <HireTabs projectId={projectId} />
      {children}
    </>
  );
}
