import "server-only";
import { z } from "zod";

const shape = z.object({
  DATABASE_URL: z.string().regex(/^postgres(ql)?:\/\//, "must be a postgresql:// address"),
  NEXTAUTH_SECRET: z.string().min(32, "must hold at least 32 characters"),
  ALLOW_NEW_COMPANIES: z.enum(["true", "false"]).default("false"),
  DATABASE_CONNECTIONS: z.coerce.number().int().min(2).max(200).default(10),
  LOG_LEVEL: z.enum(["debug", "info", "warn", "error", "silent"]).default("info"),
});

export type Env = z.infer<typeof shape>;
let parsed: Env | undefined;

/** The environment, read once; a missing or wrong variable stops the process with a line that names it. */
export function env(): Env {
  if (parsed) return parsed;
  const result = shape.safeParse(process.env);
  if (!result.success) {
    const lines = result.error.issues.map((issue) => `${issue.path.join(".")} ${issue.message}`);
    throw new Error(`The environment is not complete: ${lines.join("; ")}. See .env.example.`);
  }
  parsed = result.data;
  return parsed;
}
