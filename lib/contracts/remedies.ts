import type { z } from "zod";

const WANTED: Readonly<Record<string, string>> = {
  object: "an object", array: "a list", string: "a text", number: "a number", int: "a whole number", boolean: "true or false", null: "null",
};

const KEYS_NAMED = 5;
const named = (keys: readonly string[]): string =>
  `${keys.slice(0, KEYS_NAMED).map((key) => `"${key.slice(0, 60)}"`).join(", ")}${keys.length > KEYS_NAMED ? ` and ${keys.length - KEYS_NAMED} more` : ""}`;

const choices = (values: readonly unknown[]): string => `Give one of: ${values.map((value) => JSON.stringify(value)).join(", ")}.`;

/** What to do about an entry, where its own shape has no words for it. */
export const remedy: z.core.$ZodErrorMap = (issue) => {
  const start = issue.input === undefined ? "Missing. " : "";
  switch (issue.code) {
    case "invalid_type":
      return `${start}Give ${WANTED[issue.expected] ?? issue.expected}.`;
    case "invalid_value":
      return `${start}${choices(issue.values)}`;
    case "invalid_union":
      return Array.isArray(issue.options) ? `${start}${choices(issue.options)}` : undefined;
    case "unrecognized_keys":
      return `Leave out ${named(issue.keys)}: no such name is known here. Units are part of a name.`;
    case "too_small":
      return issue.origin === "array" ? `Give at least ${issue.minimum}.` : undefined;
    case "too_big":
      return issue.origin === "array" ? `Give at most ${issue.maximum}.` : undefined;
    default:
      return undefined;
  }
};
