import { randomUUID } from "node:crypto";
import { readFile, rm, writeFile } from "node:fs/promises";
import { connect, createServer } from "node:net";
import { join } from "node:path";
import { ClearLine } from "../database/clear-line.ts";

type Note = { readonly pid: number; readonly port: number; readonly word: string };
type Answer = { readonly word: string; readonly address: string | null };

export type InstanceLock = {
  /** What to tell a second start. */
  announce(address: string): void;
  release(): Promise<void>;
};

/** A start that found another one at work on the same data folder. */
export class AlreadyRunning extends Error {
  constructor(readonly address: string) {
    super(address);
  }
}

const noteOf = (folder: string): string => join(folder, "running.json");

function ask(note: Note): Promise<Answer | undefined> {
  return new Promise((resolve) => {
    const socket = connect({ host: "127.0.0.1", port: note.port, timeout: 2_000 });
    let text = "";
    const settle = (): void => {
      socket.destroy();
      try {
        const answer = JSON.parse(text) as Answer;
        resolve(answer.word === note.word ? answer : undefined);
      } catch {
        resolve(undefined);
      }
    };
    socket.on("data", (chunk) => (text += chunk.toString()));
    for (const event of ["end", "error", "timeout"]) socket.once(event, settle);
  });
}

async function readNote(path: string): Promise<Note | undefined> {
  try {
    return JSON.parse(await readFile(path, "utf8")) as Note;
  } catch {
    return undefined;
  }
}

async function refuseIfHeld(folder: string): Promise<void> {
  const note = await readNote(noteOf(folder));
  const answer = note && (await ask(note));
  if (!note || !answer) return;
  if (answer.address !== null) throw new AlreadyRunning(answer.address);
  throw new ClearLine(`Another start is already at work on ${folder} (process ${note.pid}): wait for it, or stop it first.`);
}

/**
 * Takes the data folder for this process. A process id alone may be another program's by now, so the holder is asked:
 * only one that knows the word in the note is alive. A note nobody answers for is left over and replaced.
 */
export async function holdFolder(folder: string): Promise<InstanceLock> {
  await refuseIfHeld(folder);
  const word = randomUUID();
  let address: string | null = null;
  const server = createServer((socket) => {
    socket.on("error", () => undefined);
    socket.end(JSON.stringify({ word, address } satisfies Answer));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  server.unref();
  const listening = server.address();
  const port = typeof listening === "object" && listening ? listening.port : 0;
  const path = noteOf(folder);
  await rm(path, { force: true });
  await writeFile(path, JSON.stringify({ pid: process.pid, port, word } satisfies Note), { mode: 0o600, flag: "wx" }).catch(async (error: unknown) => {
    await refuseIfHeld(folder);
    throw error;
  });
  return {
    announce: (told) => void (address = told),
    release: async () => {
      server.close();
      if ((await readNote(path))?.word === word) await rm(path, { force: true });
    },
  };
}
