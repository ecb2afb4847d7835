import type { ReactNode } from "react";
import { WorkingsTabs } from "./_parts/workings-tabs.tsx";

type Props = { readonly params: Promise<{ projectId: string }>; readonly children: ReactNode };

export default async function WorkingsLayout({ params, children }: Props) {
  const { projectId } = await params;
  return (
    <>
      <WorkingsTabs projectId={projectId} />
      {children}
    </>
  );
}
