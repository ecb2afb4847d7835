import type { Refusal } from "#lib/trade/engineering/working.ts";
import type { ShutterRefusal, ShutterRefusalKind } from "#lib/trade/shutter/form-set.ts";
import { inchesOnly } from "#app/_ui/value/feet-inches.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import { significant } from "./working-words.ts";

export const REFUSAL_TITLES: Readonly<Record<ShutterRefusalKind | "form-height", string>> = {
  "round-section": "A box of timber panels and clamps does not serve a round column.",
  "invalid-input": "A size lies outside what a form set can be drawn for.",
  "pressure-limit": "The pressure cannot be worked out for this pour.",
  "ply-span": "The ply cannot carry this pressure.",
  "no-clamp-fits": "No clamp fits over this form.",
  "no-clamp-layout": "No clamp layout carries this pressure.",
  "form-height": "The form height cannot be right.",
};

export const refusalKind = (refusal: ShutterRefusal | Refusal): ShutterRefusalKind | "form-height" =>
  "kind" in refusal ? refusal.kind : "form-height";

/** What to do, without the numbers the message opens with: those stand in rows of their own. */
export function remedyOf({ message, allowed }: Refusal): string {
  const opening = `allowed: ${allowed}. `;
  const at = message.indexOf(opening);
  return at < 0 ? message : message.slice(at + opening.length);
}

const MILLIMETRES = /\(mm\)/;

/** What was given, with feet and inches beside millimetres where the project reads those. */
export function givenText({ limit, given }: Refusal, units: Units): string {
  const figures = typeof given === "number" ? [given] : given.split(" × ").map(Number);
  const text = typeof given === "number" ? significant(given) : given;
  if (units === "metric" || !MILLIMETRES.test(limit) || figures.some(Number.isNaN)) return text;
  return `${text} (${figures.map(inchesOnly).join(" × ")})`;
}
