import type { Refusal } from "#lib/trade/engineering/working.ts";
import { inchesOnly } from "./feet-inches.ts";
import type { Units } from "./format-quantity.ts";
import { significant } from "./working-words.ts";

/** What to do, without the numbers the message opens with: those stand in rows of their own. */
export function remedyOf({ message, allowed }: Pick<Refusal, "message" | "allowed">): string {
  const opening = `allowed: ${allowed}. `;
  const at = message.indexOf(opening);
  return at < 0 ? message : message.slice(at + opening.length);
}

const MILLIMETRES = /\(mm\)/;

/** What was given, with feet and inches beside millimetres where the project reads those. */
export function givenText({ limit, given }: Pick<Refusal, "limit" | "given">, units: Units): string {
  const figures = typeof given === "number" ? [given] : given.split(" × ").map(Number);
  const text = typeof given === "number" ? significant(given) : given;
  if (units === "metric" || !MILLIMETRES.test(limit) || figures.some(Number.isNaN)) return text;
  return `${text} (${figures.map(inchesOnly).join(" × ")})`;
}
