import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import type { Draft, KeptEntry } from "#app/_field/outbox/kept-item.ts";

/** What an entry says, for lists and bars: "clamped", "cage released", "back to stood". */
export function actWords(act: Draft | KeptEntry, units: Units = "metric"): string {
  switch (act.kind) {
    case "stage-reached":
      return act.stage;
    case "set-back":
      return `back to ${act.to ?? "nothing"}`;
    case "gate-released":
      return act.gate;
    case "gate-revoked":
      return `${act.gate}: taken back`;
    case "reading":
      return `reading ${act.when === "after-pour" ? "after" : "before"} the pour: x ${offset(act.offsets_mm.x, units)}, y ${offset(act.offsets_mm.y, units)}`;
    case "held":
      return "on hold";
    case "hold-lifted":
      return "hold lifted";
    case "withdrawn":
      return "entry withdrawn";
    case "settled":
      return act.stands ? "entry stands" : "entry set aside";
    case "gathered":
      return act.to.what === "truck" ? "on the truck" : "at the column";
    case "taken-back":
      return "taken back";
    case "acknowledged":
      return "exception seen";
    default:
      act satisfies never;
      return "";
  }
}

const offset = (value: number, units: Units): string => (units === "us" ? quantityText(value, "mm", "us") : `${value} mm`);
