"use client";

import { useState, useTransition } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { ConfirmButton } from "#app/_ui/control/confirm-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { DataTable, type DataColumn } from "#app/_ui/page/data-table.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { revokeTokenAction } from "../actions.ts";

export type TokenRow = { readonly id: string; readonly name: string; readonly createdAt: string; readonly expiresAt: string; readonly lastUsedAt: string | null };

/** An account belongs to no project, so there is no other zone to tell its times in. */
const at = (instant: string) => <TimeText at={instant} timeZone="UTC" />;

export function TokenTable({ tokens }: { readonly tokens: readonly TokenRow[] }) {
  const [failure, setFailure] = useState<Failure>();
  const [isPending, start] = useTransition();
  const revoke = (tokenId: string) => start(async () => {
    const revoked = await revokeTokenAction({ tokenId });
    setFailure(revoked.ok ? undefined : revoked.failure);
  });
  const columns: readonly DataColumn<TokenRow>[] = [
    { key: "name", head: "Name", isRowHead: true, cell: ({ name }) => <span className="break-words">{name}</span> },
    { key: "made", head: "Made", cell: ({ createdAt }) => at(createdAt) },
    { key: "used", head: "Last used", cell: ({ lastUsedAt }) => (lastUsedAt === null ? <span className="text-ink-soft">not yet</span> : at(lastUsedAt)) },
    { key: "until", head: "Runs out", cell: ({ expiresAt }) => at(expiresAt) },
    {
      key: "revoke", head: <span className="sr-only">Revoke</span>,
      cell: ({ id, name }) => (
        <ConfirmButton title={`Revoke the token ${name}?`} explain="Every program that uses it is shut out at once. It cannot be taken back; you can make another." confirmLabel="Revoke" isPending={isPending} onConfirm={() => revoke(id)}>
          Revoke
        </ConfirmButton>
      ),
    },
  ];
  return (
    <div className="flex flex-col gap-3">
      {failure ? <FailureNotice failure={failure} /> : null}
      <DataTable
        caption="Your tokens" isCaptionHidden columns={columns} rows={tokens} rowKey={({ id }) => id}
        empty={<EmptyState title="No token yet">Make one below for each program that asks, so that one can be revoked without the others.</EmptyState>}
      />
    </div>
  );
}
