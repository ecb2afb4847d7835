import { z } from "zod";
import { paths } from "#app/paths.ts";
import { refused, working } from "#lib/contracts/workings/answer-parts.ts";
import { MOST_QUESTIONS_A_MINUTE } from "#lib/contracts/people.ts";
import { formatShape, timberShape } from "#lib/contracts/workings/beam-parts.ts";
import { envelopeTold, pressureShape } from "#lib/contracts/workings/pressure.ts";
import { CALCULATORS, type Calculator } from "./calculators.ts";
import { PROBLEM_CODES, PROBLEM_TYPE, PROBLEMS, problemShape, schemaName, type ProblemCode } from "./problems.ts";
import { MOST_BYTES } from "./read-json.ts";

type Json = Readonly<Record<string, unknown>>;
const ref = (kind: "schemas" | "responses", name: string): Json => ({ $ref: `#/components/${kind}/${name}` });

/** Shapes as JSON Schema 2020-12, the dialect of OpenAPI 3.1; one shape inside another becomes a reference. */
function schemasOf(io: "input" | "output", shapes: Readonly<Record<string, z.ZodType>>): Json {
  const registry = z.registry<{ id: string }>();
  for (const [id, shape] of Object.entries(shapes)) registry.add(shape, { id });
  const { schemas } = z.toJSONSchema(registry, { io, uri: (id) => `#/components/schemas/${id}` });
  return Object.fromEntries(Object.entries(schemas).map(([id, { $id: _id, $schema: _schema, ...schema }]) => [id, schema]));
}

const each = (suffix: string, shape: (calculator: Calculator) => z.ZodType) =>
  Object.fromEntries(Object.entries(CALCULATORS).map(([name, calculator]) => [`${name}-${suffix}`, shape(calculator)]));

const schemas = (): Json => ({
  ...schemasOf("input", { ...each("question", ({ input }) => input), "pressure-question": pressureShape, timber: timberShape, "safety-format": formatShape }),
  ...schemasOf("output", { ...each("answer", ({ answer }) => answer), envelope: envelopeTold, working, limit: refused }),
  ...schemasOf("output", Object.fromEntries(PROBLEM_CODES.map((code) => [schemaName(code), problemShape(code)]))),
});

const NO_STORE = { "Cache-Control": { description: "Answers are not to be kept.", schema: { type: "string", const: "no-store" } } };
const RETRY = { "Retry-After": { description: "Whole seconds, RFC 9110 section 10.2.3.", schema: { type: "integer" } } };
const HEADERS: Partial<Record<number, Json>> = {
  401: { "WWW-Authenticate": { description: "RFC 6750 section 3.", schema: { type: "string" } } },
  429: RETRY,
  503: RETRY,
  405: { Allow: { description: "The methods that are taken.", schema: { type: "string" } } },
};
const statuses = [...new Set(PROBLEM_CODES.map((code) => PROBLEMS[code].status))];
const codesOf = (status: number): readonly ProblemCode[] => PROBLEM_CODES.filter((code) => PROBLEMS[code].status === status);

const refusalOf = (status: number): Json => {
  const known = codesOf(status).map((code) => ref("schemas", schemaName(code)));
  return {
    description: codesOf(status).map((code) => PROBLEMS[code].title).join(" Or: "),
    headers: { ...NO_STORE, ...HEADERS[status] },
    content: { [PROBLEM_TYPE]: { schema: known.length === 1 ? known[0] : { oneOf: known } } },
  };
};
const refusals = (from: (status: number) => string): Json => Object.fromEntries(statuses.map((status) => [String(status), ref("responses", from(status))]));
const responseName = (status: number): string => `refused-${status}`;

const operation = (name: string, { title, about, examples }: Calculator): Json => ({
  post: {
    operationId: `work-out-${name}`, tags: ["workings"], summary: title, description: about,
    requestBody: { required: true, description: `At most ${MOST_BYTES} bytes.`, content: { "application/json": { schema: ref("schemas", `${name}-question`), examples } } },
    responses: {
      200: { description: "The answer with its working.", headers: NO_STORE, content: { "application/json": { schema: ref("schemas", `${name}-answer`) } } },
      ...refusals(responseName),
    },
  },
});

const ABOUT = `The calculators of Shutterwright for programs: numbers in, numbers and their working out. Nothing is kept.

A name carries its unit: \`height_mm\`, \`pressure_kPa\`. Numbers outside what a method covers are refused with the limit (422), never answered.

One person's programs may ask ${MOST_QUESTIONS_A_MINUTE} questions a minute.

An answer is arithmetic, not a design: a competent person checks it, local codes and the hirer's data go before it.`;

/** The open API as an OpenAPI 3.1 document, made from the contracts that the gate itself parses with. */
export const openApiDocument = (): Json => ({
  openapi: "3.1.1",
  info: { title: "Shutterwright workings", version: "1.0.0", summary: "Formwork calculators over HTTP", description: ABOUT },
  servers: [{ url: "/", description: "Where this document came from." }],
  security: [{ token: [] }],
  tags: [{ name: "workings", description: "One calculator each." }, { name: "document", description: "This document." }],
  paths: {
    ...Object.fromEntries(Object.entries(CALCULATORS).map(([name, calculator]) => [paths.apiWorking(name), operation(name, calculator)])),
    [paths.openApi()]: {
      get: {
        operationId: "get-document", tags: ["document"], summary: "This document", security: [],
        responses: { 200: { description: "OpenAPI 3.1.", content: { "application/json": { schema: { type: "object" } } } } },
      },
    },
  },
  components: {
    schemas: schemas(),
    responses: Object.fromEntries(statuses.map((status) => [responseName(status), refusalOf(status)])),
    securitySchemes: { token: { type: "http", scheme: "bearer", description: "A personal token, made under Account, Tokens for programs. It acts as its owner and is shown once." } },
  },
});
