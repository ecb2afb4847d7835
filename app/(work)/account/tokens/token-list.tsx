"use client";

import { useState, useTransition, type ReactNode } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { ConfirmButton } from "#app/_ui/control/confirm-button.tsx";
import { EmptyState } from "#app/_ui/message/empty-state.tsx";
import { FailureNotice } from "#app/_ui/message/failure-notice.tsx";
import { TimeText } from "#app/_ui/value/time-text.tsx";
import { revokeTokenAction } from "../actions.ts";

export type TokenRow = { readonly id: string; readonly name: string; readonly createdAt: string; readonly expiresAt: string; readonly lastUsedAt: string | null };

/** An account belongs to no project, so there is no other zone to tell its times in. */
const at = (instant: string) => <TimeText at={instant} timeZone="UTC" />;

const Fact = ({ label, children }: { readonly label: string; readonly children: ReactNode }) => (
  <div className="flex flex-wrap gap-x-2"><dt className="text-ink-soft">{label}</dt><dd>{children}</dd></div>
);

export function TokenList({ tokens }: { readonly tokens: readonly TokenRow[] }) {
  const [failure, setFailure] = useState<Failure>();
  const [isPending, start] = useTransition();
  const revoke = (tokenId: string) => start(async () => {
    const revoked = await revokeTokenAction({ tokenId });
    setFailure(revoked.ok ? undefined : revoked.failure);
  });
  return (
    <div className="flex flex-col gap-3">
      {failure ? <FailureNotice failure={failure} /> : null}
      {tokens.length === 0 ? <EmptyState title="No token yet">Make one below for each program that asks, so that one can be revoked without the others.</EmptyState> : (
        <ul aria-label="Your tokens" className="border-2 border-ink bg-sheet">
          {tokens.map(({ id, name, createdAt, lastUsedAt, expiresAt }) => (
            <li key={id} className="flex flex-wrap items-center justify-between gap-3 border-b border-rule-soft p-3 last:border-b-0">
              <div className="min-w-0">
                <p className="font-semibold wrap-anywhere">{name}</p>
                <dl className="flex flex-wrap gap-x-6">
                  <Fact label="Made">{at(createdAt)}</Fact>
                  <Fact label="Last used">{lastUsedAt === null ? "not yet" : at(lastUsedAt)}</Fact>
                  <Fact label="Runs out">{at(expiresAt)}</Fact>
                </dl>
              </div>
              <ConfirmButton title={`Revoke the token ${name}?`} explain="Every program that uses it is shut out at once. It cannot be taken back; you can make another." confirmLabel="Revoke" isPending={isPending} onConfirm={() => revoke(id)}>
                Revoke
              </ConfirmButton>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
