"use client";

import { useState, useTransition } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { ConfirmButton } from "#app/_ui/control/confirm-button.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { DayText } from "#app/_ui/value/day-text.tsx";
import { revokeInvitationAction } from "./actions.ts";

export type OpenInvitation = { readonly id: string; readonly email: string; readonly role: string; readonly expiresAt: string };

export function OpenInvitations({ invitations }: { readonly invitations: readonly OpenInvitation[] }) {
  const [failure, setFailure] = useState<Failure>();
  const [isPending, start] = useTransition();
  const revoke = (invitationId: string) => start(async () => {
    const revoked = await revokeInvitationAction({ invitationId });
    setFailure(revoked.ok ? undefined : revoked.failure);
  });
  const columns: readonly DataColumn<OpenInvitation>[] = [
    { key: "email", head: "E-mail", isRowHead: true, cell: ({ email }) => <span className="break-all">{email}</span> },
    { key: "role", head: "Role", cell: ({ role }) => role },
    { key: "until", head: "Open until", cell: ({ expiresAt }) => <DayText day={expiresAt.slice(0, 10)} /> },
    {
      key: "revoke", head: <span className="sr-only">Take back</span>,
      cell: ({ id, email }) => (
        <ConfirmButton title={`Take back the invitation of ${email}?`} explain="Its link stops working at once." confirmLabel="Take back" isPending={isPending} onConfirm={() => revoke(id)}>
          Take back
        </ConfirmButton>
      ),
    },
  ];
  return (
    <div className="flex flex-col gap-3">
      {failure ? <FailureNotice failure={failure} /> : null}
      <DataTable caption="Invitations not yet taken" isCaptionHidden columns={columns} rows={invitations} rowKey={({ id }) => id} />
    </div>
  );
}
