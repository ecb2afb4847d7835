import { fileURLToPath } from "node:url";
import { spawn } from "node:child_process";
import type { LiveMessage } from "#lib/contracts/columns-sheet.ts";
import type { Caller } from "#lib/server/gate/caller.ts";

type Told = { readonly caller: Caller; readonly projectId: string; readonly since: number };
type News = LiveMessage | "following" | "ended";
export type FollowingProcess = { readonly heard: readonly LiveMessage[]; readonly hasEnded: () => boolean; readonly stop: () => Promise<void> };

/** Another process of the product on the same database, that follows a project. */
export async function aFollowingProcess(told: Told): Promise<FollowingProcess> {
  const args = ["--conditions=react-server", "--import", "tsx", fileURLToPath(import.meta.url), JSON.stringify(told)];
  const child = spawn(process.execPath, args, { stdio: ["ignore", "inherit", "inherit", "ipc"] });
  const gone = new Promise<void>((fulfil) => child.once("exit", () => fulfil()));
  const heard: LiveMessage[] = [];
  let hasEnded = false;
  await new Promise<void>((fulfil, reject) => {
    child.once("exit", (code) => reject(new Error(`The following process ended with ${code}.`)));
    child.on("message", (news: News) => {
      if (news === "following") fulfil();
      else if (news === "ended") hasEnded = true;
      else heard.push(news);
    });
  });
  const stop = (): Promise<void> => {
    child.kill();
    return gone;
  };
  return { heard, hasEnded: () => hasEnded, stop };
}

async function follow({ caller, projectId, since }: Told): Promise<void> {
  const { followProject } = await import("#lib/server/progress/follow-project.ts");
  const tell = (news: News): void => void process.send?.(news);
  const followed = await followProject(caller, projectId, since, tell, () => tell("ended"));
  if (!followed.ok) throw new Error(JSON.stringify(followed.failure));
  tell("following");
}

const [, program, given] = process.argv;
if (program === fileURLToPath(import.meta.url) && given !== undefined) await follow(JSON.parse(given) as Told);
