"use client";

import type { PanelSize } from "#lib/trade/gear/panel-life.ts";
import type { RestDoubt } from "#lib/trade/gear/panel-rests.ts";
import { CheckField } from "#app/_ui/field/check-field.tsx";
import { isTicked } from "#app/_ui/form/read-form.ts";
import { lengthFigure, type Units } from "#app/_ui/value/format-quantity.ts";

type Props = { readonly rests: readonly PanelSize[]; /** Kept unless somebody says no where there is none. */ readonly doubt: RestDoubt | null; readonly units: Units };

const WORDS: Record<RestDoubt | "none", string> = {
  none: "Kept as an offcut of ply; the next cutting plan takes it first.",
  film: "Kept as an offcut of ply only where you say so: this panel's film is worn, damaged or on one face, and the cutting plan takes an offcut for good on both.",
  joint: "Kept as an offcut of ply only where you say so: this panel is larger than a sheet, and a joint of its sheets may run through what is left.",
};

/** What is left of a panel once it is cut down, each to be kept or not. */
export function RestChecks({ rests, doubt, units }: Props) {
  if (rests.length === 0) return null;
  return (
    <fieldset className="flex flex-col gap-1">
      <legend className="lettering">What is left, width × height</legend>
      <p className="text-ink-soft">{WORDS[doubt ?? "none"]}</p>
      {rests.map(({ widthMm, heightMm }, index) => (
        <CheckField key={`${index} ${widthMm} ${heightMm}`} name={`rest-${index}`} label={`Keep ${lengthFigure(widthMm, units)} × ${lengthFigure(heightMm, units)}${units === "metric" ? " mm" : ""}`} defaultSelected={doubt === null} size="glove" />
      ))}
    </fieldset>
  );
}

/** Those that are ticked. */
export const keptOf = (data: FormData, rests: readonly PanelSize[]): { widthMm: number; heightMm: number }[] =>
  rests.filter((_, index) => isTicked(data, `rest-${index}`)).map(({ widthMm, heightMm }) => ({ widthMm, heightMm }));
