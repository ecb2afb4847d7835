import "server-only";
import { Client } from "pg";
import { env } from "./env.ts";
import { log } from "./log.ts";

export type Wake = { readonly companyId: string; readonly projectId: string; readonly seq: number };
type Listener = (wake: Wake) => void;

/**
 * One connection of this process listens for changes committed by any process on the same database, and wakes those
 * who follow the project. It says only that something changed; what changed is read from the change lines, so a lost
 * wake-up or connection loses nothing: followers are woken again on every reconnect.
 */
class Feed {
  private readonly listeners = new Map<string, Set<Listener>>();
  private connecting: Promise<void> | undefined;

  follow(projectId: string, listener: Listener): () => void {
    const followers = this.listeners.get(projectId) ?? new Set<Listener>();
    this.listeners.set(projectId, followers.add(listener));
    this.connecting ??= this.connect();
    return () => {
      followers.delete(listener);
      if (followers.size === 0) this.listeners.delete(projectId);
    };
  }

  private async connect(): Promise<void> {
    const client = new Client({ connectionString: env().DATABASE_URL, application_name: "shutterwright live", keepAlive: true });
    const again = once(() => setTimeout(() => void (this.connecting = this.connect()), 1000));
    client.on("error", (error) => {
      log.warn({ error: error.message }, "live: connection lost, reconnecting");
      again();
    });
    client.on("end", again);
    client.on("notification", ({ payload }) => this.wake(payload ?? ""));
    try {
      await client.connect();
      await client.query("LISTEN shutterwright_changes");
      this.wakeAll();
    } catch (error) {
      log.warn({ error: String(error) }, "live: cannot listen, trying again");
      again();
    }
  }

  private wake(payload: string): void {
    const wake = JSON.parse(payload) as Wake;
    for (const listener of this.listeners.get(wake.projectId) ?? []) listener(wake);
  }

  private wakeAll(): void {
    for (const [projectId, followers] of this.listeners) {
      for (const listener of followers) listener({ companyId: "", projectId, seq: 0 });
    }
  }
}

function once(run: () => void): () => void {
  let done = false;
  return () => {
    if (!done) run();
    done = true;
  };
}

const kept = globalThis as typeof globalThis & { shutterwrightFeed?: Feed };

/** Calls back when the project may have changed; returns what ends it. */
export const followChanges = (projectId: string, listener: Listener): (() => void) =>
  (kept.shutterwrightFeed ??= new Feed()).follow(projectId, listener);
