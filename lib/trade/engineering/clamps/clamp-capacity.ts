import type { Kilonewtons, Millimetres, NewtonsPerSquareMillimetre, Quantity } from "#lib/kernel/units.ts";

export type CubicCentimetres = Quantity<"cm3">;

/** What one clamp may take, as its hirer states it; permissible or design values as the format asks. */
export type ClampCapacity = {
  /** The force that one face of the form may put on one clamp. */
  readonly sideCapacity: Kilonewtons;
  /** Where the hirer lists the load by the span between wedges; a span between two lines takes the longer line's load. */
  readonly capacityBySpan?: readonly { readonly span: Millimetres; readonly load: Kilonewtons }[];
  /** The arm as a beam between its wedges. */
  readonly arm?: { readonly sectionModulus: CubicCentimetres; readonly stress: NewtonsPerSquareMillimetre };
  /** Pull that one wedged corner may take. */
  readonly wedgeCapacity?: Kilonewtons;
};

/** The two sides of a column as its clamps see them. */
export type ClampSides = {
  /** Concrete width that presses on the arm. */
  readonly across: { readonly side: Millimetres; readonly wedgeSpan: Millimetres };
  readonly along: { readonly side: Millimetres; readonly wedgeSpan: Millimetres };
};
