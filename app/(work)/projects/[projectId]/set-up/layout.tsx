import type { ReactNode } from "react";
import { SetUpTabs } from "./_parts/set-up-tabs.tsx";

type Props = { readonly params: Promise<{ projectId: string }>; readonly children: ReactNode };

export default async function SetUpLayout({ params, children }: Props) {
  const { projectId } = await params;
  return (
    <>
      <SetUpTabs projectId={projectId} />
      {children}
    </>
  );
}
