import { z } from "zod";
import { ENGINEERING_LIMIT, refused } from "#lib/contracts/workings/answer-parts.ts";
import { paths } from "#app/paths.ts";

/** Everything the open API may refuse with: the HTTP status, and what each kind of refusal has in common. */
export const PROBLEMS = {
  "broken-json": { status: 400, title: "The body is not JSON." },
  "wrong-shape": { status: 400, title: "The body does not fit the contract." },
  "no-token": { status: 401, title: "A personal token is needed." },
  "token-not-valid": { status: 401, title: "The token opens nothing." },
  "not-allowed": { status: 403, title: "The role of the token's owner does not cover this." },
  "not-found": { status: 404, title: "There is nothing at this address." },
  "wrong-method": { status: 405, title: "This address does not take the method." },
  "body-too-large": { status: 413, title: "The body is too large." },
  "not-json": { status: 415, title: "The body has to be JSON." },
  "too-many-questions": { status: 429, title: "Too many questions in a minute." },
  busy: { status: 503, title: "Others' questions are being worked out." },
  [ENGINEERING_LIMIT]: { status: 422, title: "The question lies outside a limit of the method." },
} as const;
export type ProblemCode = keyof typeof PROBLEMS;
export const PROBLEM_CODES = Object.keys(PROBLEMS) as readonly ProblemCode[];

export const PROBLEM_TYPE = "application/problem+json";
export const schemaName = (code: ProblemCode): string => `problem-${code}`;
/** RFC 9457 section 3.1.1: a full path, where the kind of problem is described. */
const typeOf = (code: ProblemCode): string => `${paths.openApi()}#/components/schemas/${schemaName(code)}`;

const errors = z
  .array(z.strictObject({ pointer: z.string().describe("JSON Pointer (RFC 6901) to the entry; empty for the body itself."), detail: z.string().describe("What to do about it.") }))
  .describe("Every entry that has to change, up to fifty.");
const MOST_ERRORS = 50;

const extras = (code: ProblemCode): z.ZodRawShape =>
  code === "wrong-shape" ? { errors } : code === ENGINEERING_LIMIT ? { values: refused.describe("The limit by name, what was given, what would be allowed, and where the limit comes from.") } : {};

/** RFC 9457 section 3.1, with the code once more by itself for programs. */
export const problemShape = (code: ProblemCode): z.ZodType =>
  z.object({
    type: z.literal(typeOf(code)), title: z.literal(PROBLEMS[code].title), status: z.literal(PROBLEMS[code].status), code: z.literal(code),
    detail: z.string().describe("What was wrong this time, and what to do."), ...extras(code),
  });

type Extras = { readonly errors?: z.output<typeof errors>; readonly values?: Readonly<Record<string, string | number>> };

export function problem(code: ProblemCode, detail: string, more: Extras & { readonly headers?: Readonly<Record<string, string>> } = {}): Response {
  const { status, title } = PROBLEMS[code];
  const { headers, ...extra } = more;
  const body = { type: typeOf(code), title, status, code, detail, ...extra };
  return new Response(JSON.stringify(body), { status, headers: { "content-type": PROBLEM_TYPE, "cache-control": "no-store", ...headers } });
}

/** The problems of an input by its contract; dotted fields become pointers. */
export function wrongShape(problems: readonly { readonly field: string; readonly message: string }[]): Response {
  const found = problems.slice(0, MOST_ERRORS).map(({ field, message }) => ({ pointer: field === "" ? "" : `/${field.replaceAll(".", "/")}`, detail: message }));
  const count = problems.length === 1 ? "One entry has" : `${problems.length} entries have`;
  return problem("wrong-shape", `${count} to change; "errors" names ${problems.length > MOST_ERRORS ? `the first ${MOST_ERRORS}` : "each"}.`, { errors: found });
}
