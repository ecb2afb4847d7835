import type { ReactNode } from "react";
import { GearTabs } from "./_parts/gear-tabs.tsx";

type Props = { readonly params: Promise<{ projectId: string }>; readonly children: ReactNode };

export default async function GearLayout({ params, children }: Props) {
  const { projectId } = await params;
  return (
    <>
      <GearTabs projectId={projectId} />
      {children}
    </>
  );
}
