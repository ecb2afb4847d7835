import { Validator } from "@seriousme/openapi-schema-validator";
import { describe, expect, it } from "vitest";
import { CALCULATORS } from "#app/api/v1/_parts/calculators.ts";
import { GET } from "#app/api/v1/openapi.json/route.ts";

type Operation = { operationId: string; summary: string; security?: unknown[]; responses: Record<string, object>; requestBody?: { content: Record<string, { examples: object }> } };
type Document = {
  openapi: string; paths: Record<string, Record<string, Operation>>; security: unknown[];
  components: { schemas: Record<string, object>; responses: Record<string, { content: Record<string, object> }>; securitySchemes: Record<string, object> };
};
const text = await GET().text();
const document = JSON.parse(text) as Document;

describe("the document of the open API", () => {
  // The schema that the OpenAPI Initiative publishes for 3.1, as the validator carries it.
  it("is valid OpenAPI 3.1 by the published schema", async () => {
    const validator = new Validator();
    expect(await validator.validate(structuredClone(document) as unknown as Record<string, unknown>)).toEqual({ valid: true });
    expect(validator.version).toBe("3.1");
  });

  it("leads nowhere that is not there", () => {
    for (const [, pointer = ""] of text.matchAll(/"\$ref":"#([^"]+)"/g)) {
      const found = pointer.slice(1).split("/").reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], document);
      expect([pointer, typeof found]).toEqual([pointer, "object"]);
    }
  });

  it("lists every calculator with its examples, and every refusal there is", () => {
    expect(Object.keys(document.paths).sort()).toEqual([...Object.keys(CALCULATORS).map((name) => `/api/v1/workings/${name}`), "/api/v1/openapi.json"].sort());
    for (const name of Object.keys(CALCULATORS)) {
      const operation = document.paths[`/api/v1/workings/${name}`]?.["post"];
      expect(Object.keys(operation?.responses ?? {})).toEqual(["200", "400", "401", "403", "404", "405", "413", "415", "422", "429", "503"]);
      expect(Object.keys(operation?.requestBody?.content["application/json"]?.examples ?? {})).not.toHaveLength(0);
    }
    for (const { content } of Object.values(document.components.responses)) expect(Object.keys(content)).toEqual(["application/problem+json"]);
  });

  // OpenAPI 3.1.1 section 4.8.10.1: identifiers are unique; section 4.8.27.1: bearer by the HTTP scheme; section 4.8.30: an empty list opens an operation.
  it("names each operation once, asks for a token, and for itself asks nothing", () => {
    const operations = Object.values(document.paths).flatMap((path) => Object.values(path));
    expect(new Set(operations.map(({ operationId }) => operationId)).size).toBe(operations.length);
    expect(document.security).toEqual([{ token: [] }]);
    expect(document.components.securitySchemes["token"]).toMatchObject({ type: "http", scheme: "bearer" });
    expect(operations.filter(({ security }) => security?.length === 0).map(({ operationId }) => operationId)).toEqual(["get-document"]);
  });
});
