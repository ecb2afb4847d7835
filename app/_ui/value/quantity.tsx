import { formatQuantity, type Unit, type Units } from "./format-quantity.ts";

export type QuantityProps = {
  readonly value: number;
  /** The unit the number is kept in. */
  readonly unit: Unit;
  /** The project's setting. */
  readonly units: Units;
  readonly places?: number;
};

/** A number with its unit, kept on one line. */
export function Quantity({ value, unit, units, places }: QuantityProps) {
  const { figure, unit: name } = formatQuantity(value, unit, units, places);
  return (
    <span className="whitespace-nowrap">
      {figure}
      {name === "" ? null : <span className="text-ink-soft">{` ${name}`}</span>}
    </span>
  );
}
