import type { Material } from "#lib/contracts/planning/orders.ts";
import type { OrderState } from "#lib/trade/gear/orders.ts";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";

export const STATE_WORDS: Readonly<Record<OrderState, string>> = {
  open: "nothing yet", part: "part received", complete: "all received", cancelled: "cancelled", closed: "closed, the rest not to come",
};

/** "Film-faced ply 18 mm, 2400 × 1200": as it is bought, in the project's units. */
export const materialText = ({ material, lengthMm, widthMm }: Material, units: Units): string =>
  `${material}, ${lengthFigure(lengthMm, units)}${widthMm === null ? (units === "metric" ? " mm" : "") : ` × ${lengthFigure(widthMm, units)}${units === "metric" ? " mm" : ""}`}`;

/** Hundredths of a percent: 750 is "7.5 %". */
export const percentText = (waste: number): string => `${waste / 100} %`;
