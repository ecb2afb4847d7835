import "server-only";
import type { LiveMessage } from "#lib/contracts/columns-sheet.ts";
import { fail, ok, type Result } from "#lib/kernel/result.ts";
import type { Caller } from "../gate/caller.ts";
import { followChanges } from "../platform/live.ts";
import { log } from "../platform/log.ts";
import { readChanges } from "./changes.ts";

/** A person deactivated while following is let go within this time. */
const RECHECK_MS = 60_000;
const RETRY_MS = 1000;

type Follower = { readonly caller: Caller; readonly push: (message: LiveMessage) => unknown; readonly end: () => void };

/** Everyone in this process who follows one project: each change is read once and handed to all. */
class Room {
  private readonly followers = new Set<Follower>();
  private readonly stop: () => void;
  private reading: Promise<void> | undefined;
  private wokenAgain = false;

  constructor(private readonly projectId: string, private since: number) {
    this.stop = followChanges(projectId, () => this.wake());
  }

  join(follower: Follower): () => void {
    this.followers.add(follower);
    return () => {
      this.followers.delete(follower);
      if (this.followers.size > 0) return;
      this.stop();
      if (rooms.get(this.projectId) === this) rooms.delete(this.projectId);
    };
  }

  wake(): void {
    this.wokenAgain = true;
    this.reading ??= this.readAll().catch((error: unknown) => this.readLater(error)).finally(() => (this.reading = undefined));
  }

  /** A database that does not answer for a while loses nobody: what was missed is read once it does. */
  private readLater(error: unknown): void {
    log.warn({ error: String(error) }, "live: cannot read changes, trying again");
    setTimeout(() => this.wake(), RETRY_MS);
  }

  private async readAll(): Promise<void> {
    while (this.wokenAgain) {
      this.wokenAgain = false;
      const [first] = this.followers;
      if (!first) return;
      const changes = await readChanges(first.caller, { projectId: this.projectId, since: this.since });
      if (!changes.ok) {
        // Deactivated since it joined: that one leaves, and another reads.
        this.followers.delete(first);
        first.end();
        this.wokenAgain = true;
        continue;
      }
      for (const message of changes.value.messages) for (const follower of this.followers) follower.push(message);
      this.since = changes.value.seq;
    }
  }
}

const kept = globalThis as typeof globalThis & { shutterwrightRooms?: Map<string, Room> };
const rooms = (kept.shutterwrightRooms ??= new Map<string, Room>());

/**
 * Sends what changed after `since`, then everything that follows, in order and without gaps. Ends by itself when the
 * person may no longer see the project; `end` is called then.
 */
export async function followProject(
  caller: Caller | null, projectId: string, since: number, push: (message: LiveMessage) => void, end: () => void,
): Promise<Result<() => void>> {
  const first = await readChanges(caller, { projectId, since });
  if (!first.ok) return first;
  if (!caller) return fail({ kind: "not-signed-in" });
  let sent = Math.min(since, first.value.seq);
  const pushNew = (message: LiveMessage): void => {
    if (message.seq <= sent) return;
    sent = message.seq;
    push(message);
  };
  const room = rooms.get(projectId) ?? new Room(projectId, first.value.seq);
  rooms.set(projectId, room);
  const waiting: LiveMessage[] = [];
  let isWaiting = true;
  const leave = room.join({ caller, push: (message) => (isWaiting ? waiting.push(message) : pushNew(message)), end });
  // Read once more after joining: what the room handed out between the first reading and the joining is in it.
  const second = await readChanges(caller, { projectId, since: first.value.seq });
  for (const message of [...first.value.messages, ...(second.ok ? second.value.messages : []), ...waiting]) pushNew(message);
  isWaiting = false;
  const recheck = setInterval(() => {
    const still = readChanges(caller, { projectId, since: sent });
    still.then(({ ok: isStillIn }) => (isStillIn ? undefined : end()), (error: unknown) => log.warn({ error: String(error) }, "live: cannot recheck"));
  }, RECHECK_MS);
  return ok(() => {
    clearInterval(recheck);
    leave();
  });
}
