import type { SignIn } from "./demo-sign-ins.ts";

type Demo = { loadDemo(databaseUrl: string): Promise<readonly SignIn[]> };

const { loadDemo } = (await import(new URL("../demo/load-demo.ts", import.meta.url).href)) as Demo;
const signIns = await loadDemo(process.env["DATABASE_URL"] ?? "");
process.send?.(signIns, () => process.exit(0));
