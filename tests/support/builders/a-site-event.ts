import { randomBytes } from "node:crypto";
import type { ProposedEventInput } from "#lib/contracts/progress.ts";
import { uuidv7From } from "#lib/kernel/ids.ts";

type Kind = ProposedEventInput["kind"];
type Own<K extends Kind> = Omit<Extract<ProposedEventInput, { kind: K }>, "id" | "columnId" | "happenedAt" | "reason" | "kind">;
type Told = { id?: string; at?: string; reason?: string | null };

export const anId = (at: string = new Date().toISOString()): string => uuidv7From(Date.parse(at), randomBytes(10));

/** `aSiteEvent("stage-reached", columnId, { stage: "cut" })`, happening now unless told otherwise. */
export function aSiteEvent<K extends Kind>(kind: K, columnId: string, own: Own<K>, told: Told = {}): ProposedEventInput {
  const happenedAt = told.at ?? new Date().toISOString();
  return { ...own, kind, id: told.id ?? anId(happenedAt), columnId, happenedAt, reason: told.reason ?? null } as unknown as ProposedEventInput;
}

export const aTick = (columnId: string, stage: Own<"stage-reached">["stage"], told: Told = {}): ProposedEventInput =>
  aSiteEvent("stage-reached", columnId, { stage }, told);
