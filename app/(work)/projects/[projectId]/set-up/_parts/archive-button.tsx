"use client";

import { useState, useTransition } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { ConfirmButton } from "#app/_ui/control/confirm-button.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { archiveProjectAction } from "./actions.ts";

export type ArchiveButtonProps = { readonly projectId: string; readonly isArchived: boolean };

export function ArchiveButton({ projectId, isArchived }: ArchiveButtonProps) {
  const [failure, setFailure] = useState<Failure>();
  const [isPending, start] = useTransition();
  const set = (archived: boolean) => start(async () => {
    const changed = await archiveProjectAction({ projectId, archived });
    setFailure(changed.ok ? undefined : changed.failure);
  });
  return (
    <div className="flex flex-col items-start gap-3">
      {failure ? <FailureNotice failure={failure} /> : null}
      {isArchived ? (
        <Button isPending={isPending} onPress={() => set(false)}>Take out of the archive</Button>
      ) : (
        <ConfirmButton
          title="Archive this project?"
          explain="It moves to the end of the list of projects. Nothing is lost, and it can be taken out again."
          confirmLabel="Archive"
          isPending={isPending}
          onConfirm={() => set(true)}
        >
          Archive this project
        </ConfirmButton>
      )}
    </div>
  );
}
