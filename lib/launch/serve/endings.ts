type Ending = () => Promise<void>;

/** What has to be undone at the end, in the opposite order of its making. */
export class Endings {
  private readonly list: Ending[] = [];

  add(ending: Ending): void {
    this.list.push(ending);
  }

  async run(): Promise<void> {
    for (let ending = this.list.pop(); ending; ending = this.list.pop()) {
      await ending().catch((error: unknown) => console.error(error));
    }
  }
}

/** Thrown between two steps of a start that was asked to stop meanwhile. */
export class AskedToStop extends Error {}

/** Hears Ctrl-C, a polite kill, a closed terminal and the end of the process that started this one. */
export class StopRequest {
  private asked = false;
  readonly heard: Promise<void>;

  constructor() {
    this.heard = new Promise((resolve) => {
      const hear = (): void => {
        this.asked = true;
        resolve();
      };
      for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.on(signal, hear);
      process.on("disconnect", hear);
      process.channel?.unref();
    });
  }

  throwIfAsked(): void {
    if (this.asked) throw new AskedToStop();
  }
}
