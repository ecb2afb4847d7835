import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { openApiDocument } from "#app/api/v1/_parts/document.ts";
import { POST } from "#app/api/v1/workings/[working]/route.ts";
import { createToken } from "#lib/server/people/access-tokens.ts";
import type { Caller } from "#lib/server/gate/caller.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";

export const aToken = async (by: Caller): Promise<string> => valueOf(await createToken(by, { name: "spreadsheet", days: 1 })).token;

type Asked = { readonly token?: string; readonly body?: BodyInit; readonly headers?: Readonly<Record<string, string>> };

export const aRequest = (working: string, { token, body = "{}", headers = {} }: Asked): Request =>
  new Request(`http://hut.example/api/v1/workings/${working}`, {
    method: "POST", body, duplex: "half",
    headers: { "content-type": "application/json", ...(token === undefined ? {} : { authorization: `Bearer ${token}` }), ...headers },
  } as RequestInit);

export const send = (working: string, request: Request): Promise<Response> => POST(request, { params: Promise.resolve({ working }) });
export const ask = (working: string, asked: Asked): Promise<Response> => send(working, aRequest(working, asked));
export const askFor = (working: string, token: string, question: unknown): Promise<Response> => ask(working, { token, body: JSON.stringify(question) });

/** The published document, read by a general JSON Schema validator rather than by our own contracts. */
const ajv = new Ajv2020({ strict: false });
ajv.addSchema(JSON.parse(JSON.stringify({ $id: "document", ...openApiDocument() })) as object);
export function published(name: string): ValidateFunction {
  const found = ajv.getSchema(`document#/components/schemas/${name}`);
  if (found === undefined) throw new Error(`The document has no schema ${name}.`);
  return found;
}

/** The body of a refusal, which must be what the document says of its code. */
export async function refusalOf(response: Response): Promise<Record<string, unknown>> {
  const body = (await response.json()) as Record<string, unknown>;
  const fits = published(`problem-${String(body["code"])}`);
  if (!fits(body)) throw new Error(JSON.stringify([body, fits.errors]));
  return body;
}
