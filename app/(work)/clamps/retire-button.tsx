"use client";

import { useState, useTransition } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { ConfirmButton } from "#app/_ui/control/confirm-button.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { retireClampKindAction } from "./actions.ts";

export type RetireButtonProps = { readonly clampKindId: string; readonly name: string; readonly onDone: () => void };

export function RetireButton({ clampKindId, name, onDone }: RetireButtonProps) {
  const [failure, setFailure] = useState<Failure>();
  const [isPending, start] = useTransition();
  return (
    <>
      <ConfirmButton
        title={`Take ${name} out of use?`}
        explain="New layouts no longer use it. Form sets are drawn anew from the kinds that are left."
        confirmLabel="Take out of use"
        isPending={isPending}
        onConfirm={() => start(async () => {
          const retired = await retireClampKindAction({ clampKindId });
          setFailure(retired.ok ? undefined : retired.failure);
          if (retired.ok) onDone();
        })}
      >
        Take out of use
      </ConfirmButton>
      {failure ? <FailureNotice failure={failure} /> : null}
    </>
  );
}
