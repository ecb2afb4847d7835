import type { RecordAnswer } from "#lib/contracts/progress.ts";
import type { Failure } from "#lib/kernel/result.ts";
import { isMove, type KeptItem, type KeptMove } from "./kept-item.ts";
import type { Batch } from "./outbox-plan.ts";

export type Sending =
  | { readonly kind: "answered"; readonly answer: RecordAnswer }
  /** Gear was moved, now or when the same was sent before. */
  | { readonly kind: "moved"; readonly takenAt: string | null }
  | { readonly kind: "signed-out" }
  | { readonly kind: "refused"; readonly failure: Failure }
  /** The server was reached and failed. */
  | { readonly kind: "stumbled" }
  | { readonly kind: "unreachable" }
  /** The phone itself knows that it has no reception: nothing went out. */
  | { readonly kind: "never-left" };

const PATIENCE_MS = 15_000;
/** Answers of whatever stands in front of a server that is away. */
const BEFORE_THE_SERVER = [502, 503, 504];

/** One message: ticks together, or one entry that moves gear. */
export function sendBatch(batch: Batch, personId: string): Promise<Sending> {
  const [first] = batch.items;
  return first !== undefined && isMove(first) ? sendMove(first, personId) : sendEvents(batch, personId);
}

const sendEvents = (batch: Batch, personId: string): Promise<Sending> =>
  post("/api/site-events", { projectId: batch.projectId, personId, saved: batch.saved, events: batch.items.map((item) => item.event) },
    (said) => (isAnswer(said) ? { kind: "answered", answer: said } : { kind: "unreachable" }));

const sendMove = ({ event, projectId }: KeptItem<KeptMove>, personId: string): Promise<Sending> =>
  post("/api/gear-moves", { projectId, personId, entry: event },
    (said) => ("movementId" in said ? { kind: "moved", takenAt: "takenAt" in said && typeof said.takenAt === "string" ? said.takenAt : null } : { kind: "unreachable" }));

/** Whatever is not certainly the server's own word counts as not reached, as the sign-in page of a site's wireless network. */
async function post(address: string, message: object, understand: (said: object) => Sending): Promise<Sending> {
  const isOut = !navigator.onLine;
  try {
    const response = await fetch(address, {
      method: "POST", body: JSON.stringify(message), headers: { "content-type": "application/json" }, redirect: "error", cache: "no-store",
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    if (BEFORE_THE_SERVER.includes(response.status)) return { kind: "unreachable" };
    if (response.status >= 500) return { kind: "stumbled" };
    if (response.status === 413) return { kind: "refused", failure: { kind: "invalid", problems: [] } };
    const said = (await response.json()) as unknown;
    if (typeof said !== "object" || said === null) return { kind: "unreachable" };
    return response.status === 200 ? understand(said) : readFailure(said);
  } catch {
    return { kind: isOut ? "never-left" : "unreachable" };
  }
}

function readFailure(said: object): Sending {
  const failure = "failure" in said ? (said.failure as Failure | undefined) : undefined;
  if (failure === undefined) return { kind: "unreachable" };
  return failure.kind === "not-signed-in" ? { kind: "signed-out" } : { kind: "refused", failure };
}

const isAnswer = (said: object): said is RecordAnswer =>
  "answers" in said && Array.isArray(said.answers) && "columns" in said && Array.isArray(said.columns);
