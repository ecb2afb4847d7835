import type { RecordAnswer } from "#lib/contracts/progress.ts";
import type { Failure } from "#lib/kernel/result.ts";
import type { Batch } from "./outbox-plan.ts";

export type Sending =
  | { readonly kind: "answered"; readonly answer: RecordAnswer }
  | { readonly kind: "signed-out" }
  | { readonly kind: "refused"; readonly failure: string }
  /** The server was reached and failed. */
  | { readonly kind: "stumbled" }
  | { readonly kind: "unreachable" };

const PATIENCE_MS = 15_000;
/** Answers of whatever stands in front of a server that is away. */
const BEFORE_THE_SERVER = [502, 503, 504];

/** Sends one message. Whatever is not certainly the server's own word counts as not reached, as the sign-in page of a site's wireless network. */
export async function sendEvents(batch: Batch, personId: string): Promise<Sending> {
  const body = JSON.stringify({
    projectId: batch.projectId, personId, saved: batch.saved, events: batch.items.map((item) => item.event),
  });
  try {
    const response = await fetch("/api/site-events", {
      method: "POST", body, headers: { "content-type": "application/json" }, redirect: "error", cache: "no-store",
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    if (BEFORE_THE_SERVER.includes(response.status)) return { kind: "unreachable" };
    if (response.status >= 500) return { kind: "stumbled" };
    if (response.status === 413) return { kind: "refused", failure: "invalid" };
    return understand(response.status, (await response.json()) as unknown);
  } catch {
    return { kind: "unreachable" };
  }
}

function understand(status: number, said: unknown): Sending {
  if (typeof said !== "object" || said === null) return { kind: "unreachable" };
  if (status === 200) return isAnswer(said) ? { kind: "answered", answer: said } : { kind: "unreachable" };
  const failure = "failure" in said ? (said.failure as Failure | undefined) : undefined;
  if (failure === undefined) return { kind: "unreachable" };
  return failure.kind === "not-signed-in" ? { kind: "signed-out" } : { kind: "refused", failure: failure.kind };
}

const isAnswer = (said: object): said is RecordAnswer =>
  "answers" in said && Array.isArray(said.answers) && "columns" in said && Array.isArray(said.columns);
