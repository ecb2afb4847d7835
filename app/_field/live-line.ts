import type { LiveMessage } from "#lib/contracts/columns-sheet.ts";
import { noteContact } from "./reception.ts";

export type LiveStanding = "live" | "connecting" | "offline";
export type LiveState = { readonly standing: LiveStanding; readonly seq: number };

type Hearer = { readonly onMessage: (message: LiveMessage) => void; readonly onState: (state: LiveState) => void };

/** Without an answer for this long the screen says so. */
const PATIENCE_MS = 6_000;
const LONGEST_WAIT_MS = 30_000;
/** After being out of sight for so long a connection may be dead without anyone having been told. */
const DOUBTFUL_AFTER_MS = 20_000;

/** Follows one project and goes on from the last number heard, whatever becomes of the connection. */
export class LiveLine {
  private source: EventSource | undefined;
  private seq: number;
  private standing: LiveStanding = "connecting";
  private failures = 0;
  /** Refused by a server that was reached, as after signing out: no matter of reception. */
  private isRefused = false;
  private patience: ReturnType<typeof setTimeout> | undefined;
  private again: ReturnType<typeof setTimeout> | undefined;
  private hiddenAt: number | undefined;

  constructor(private readonly projectId: string, since: number, private readonly hearer: Hearer) {
    this.seq = since;
  }

  open(): void {
    window.addEventListener("online", this.reopen);
    window.addEventListener("offline", this.lose);
    document.addEventListener("visibilitychange", this.look);
    this.connect();
  }

  close(): void {
    window.removeEventListener("online", this.reopen);
    window.removeEventListener("offline", this.lose);
    document.removeEventListener("visibilitychange", this.look);
    this.hangUp();
    clearTimeout(this.patience);
    this.patience = undefined;
  }

  private connect(): void {
    this.hangUp();
    this.wait();
    const source = new EventSource(`/api/live/${this.projectId}?since=${this.seq}`);
    this.source = source;
    source.onopen = () => {
      this.failures = 0;
      this.isRefused = false;
      clearTimeout(this.patience);
      this.patience = undefined;
      this.tell("live");
      noteContact(true);
    };
    source.onmessage = ({ data }: MessageEvent<string>) => this.hear(JSON.parse(data) as LiveMessage);
    source.onerror = () => this.stumble(source);
  }

  private hear(message: LiveMessage): void {
    noteContact(true);
    if (message.seq <= this.seq) return;
    this.seq = message.seq;
    this.hearer.onMessage(message);
    this.tell("live");
  }

  /** The browser tries again by itself after a lost connection, but gives up for good after a refusal. */
  private stumble(source: EventSource): void {
    if (source !== this.source) return;
    this.wait();
    this.isRefused = source.readyState === EventSource.CLOSED;
    if (!this.isRefused) return;
    this.failures += 1;
    const pause = Math.min(LONGEST_WAIT_MS, 1_000 * 2 ** this.failures);
    clearTimeout(this.again);
    this.again = setTimeout(() => this.connect(), pause);
  }

  private wait(): void {
    if (this.standing === "live") this.tell("connecting");
    this.patience ??= setTimeout(this.lose, PATIENCE_MS);
  }

  private readonly lose = (): void => {
    this.tell("offline");
    if (!this.isRefused || !navigator.onLine) noteContact(false);
  };

  private readonly reopen = (): void => {
    this.failures = 0;
    this.connect();
  };

  private readonly look = (): void => {
    if (document.visibilityState === "hidden") this.hiddenAt = Date.now();
    else if (Date.now() - (this.hiddenAt ?? Date.now()) > DOUBTFUL_AFTER_MS || this.standing !== "live") this.reopen();
  };

  private hangUp(): void {
    clearTimeout(this.again);
    this.source?.close();
    this.source = undefined;
  }

  private tell(standing: LiveStanding): void {
    this.standing = standing;
    this.hearer.onState({ standing, seq: this.seq });
  }
}
