import type { ReactNode } from "react";
import type { Quantities } from "#lib/trade/shutter/form-set.ts";
import { Quantity } from "#app/_ui/value/quantity.tsx";
import type { Units } from "#app/_ui/value/format-quantity.ts";

export type FormFiguresProps = {
  readonly quantities: Quantities;
  /** Of the panels together, without clamps; left out where there are none. */
  readonly weight?: number;
  readonly units: Units;
};

/** What is measured and ordered by: contact area and volume, and what the crew has to lift. */
export function FormFigures({ quantities: { contactArea, volume }, weight, units }: FormFiguresProps) {
  return (
    <dl className="form-figures flex flex-wrap gap-px border-2 border-ink bg-rule-soft">
      <Cell label="Contact area"><Quantity value={contactArea} unit="m2" units={units} /></Cell>
      <Cell label="Concrete"><Quantity value={volume} unit="m3" units={units} places={3} /></Cell>
      {weight === undefined ? null : <Cell label="All panels, without clamps"><Quantity value={weight} unit="kg" units={units} /></Cell>}
    </dl>
  );
}

const Cell = ({ label, children }: { readonly label: string; readonly children: ReactNode }) => (
  <div className="min-w-36 grow bg-sheet px-3 py-1.5">
    <dt className="lettering">{label}</dt>
    <dd className="text-lg font-semibold">{children}</dd>
  </div>
);
