import { fork } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { projectFolder } from "../steps/project.mjs";
import { type AppTerms, appEnvironment } from "./children.ts";

export type SignIn = { readonly email: string; readonly password: string; readonly role: string };

/** Loads the demo company in a process of its own, which takes its database connections with it. */
export async function loadDemoCompany(terms: AppTerms): Promise<readonly SignIn[]> {
  const program = join(projectFolder, "lib/launch/demo/load-demo.ts");
  if (!existsSync(program)) return [];
  const child = fork(join(projectFolder, "lib/launch/serve/load-demo-process.ts"), {
    execArgv: ["--conditions=react-server", "--import", "tsx"], env: appEnvironment(terms), cwd: projectFolder,
  });
  return new Promise((resolve, reject) => {
    let answer: readonly SignIn[] | undefined;
    child.on("message", (message) => (answer = message as readonly SignIn[]));
    child.once("error", reject);
    child.once("exit", (code) => (answer && code === 0 ? resolve(answer) : reject(new Error("The demo company could not be loaded."))));
  });
}
