import type { WorkingName } from "#app/paths.ts";

export type CalculatorWords = { readonly name: WorkingName; readonly label: string; readonly about: string };

/** In the order in which a form is worked out, and then built. */
export const CALCULATORS: readonly CalculatorWords[] = [
  { name: "pressure", label: "Concrete pressure", about: "What the fresh concrete presses with over the height of the form, by the method you choose." },
  { name: "sheathing", label: "Sheathing", about: "How far a board spans under that pressure, and which limit it reaches first." },
  { name: "backing", label: "Backing timber", about: "One timber over its clamps: moment, shear, deflection, and the force on every clamp." },
  { name: "clamp-layout", label: "Clamp layout", about: "The fewest clamps that carry the pressure, or a check of clamps as they stand, with any one left out." },
  { name: "strip-time", label: "Strip time", about: "The earliest time to strip an upright face, from the hours and temperatures since the pour." },
  { name: "plumb", label: "Plumb", about: "Readings on the form at two heights: how it leans, which way to knock it and from which side to prop." },
];

export const calculatorWords = (name: WorkingName): CalculatorWords | undefined => CALCULATORS.find((calculator) => calculator.name === name);
