import type { Warning } from "#lib/trade/shutter/form-set.ts";
import { inchesOnly } from "#app/_ui/value/feet-inches.ts";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";

/** A warning in the project's units. */
export function warningWords({ code, values, message }: Warning, units: Units): string {
  const number = (name: string): number => Number(values[name]);
  const length = (name: string): string => (units === "us" ? inchesOnly(number(name)) : `${number(name)} mm`);
  const weight = (name: string): string => quantityText(number(name), "kg", units);
  switch (code) {
    case "heavy-panel":
      return `Panel ${values["face"] ?? ""} weighs about ${weight("weightKg")}, over the two-person lift of ${weight("limitKg")}: plan a crane or more hands.`;
    case "joint-in-backing":
      return `Backing timbers of ${length("formHeightMm")} are longer than the stock of ${length("stockLengthMm")}: the checks hold for timbers in one length, so a joint in them must be designed.`;
    case "pour-below-form":
      return `Checked for concrete up to ${length("pourHeightMm")}, not to the top of the form.`;
    case "vertical-ply-joint": case "example-figures": case "utilisation-high":
      return message;
    default:
      return code satisfies never;
  }
}
