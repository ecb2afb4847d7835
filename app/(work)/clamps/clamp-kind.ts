import { choiceOf, numberOf, textOf } from "#app/_ui/form/read-form.ts";

/** A clamp kind as the page holds it: plain numbers in mm, kN and kg. */
export type ClampKind = {
  readonly id: string; readonly name: string; readonly minSize: number; readonly maxSize: number; readonly sideCapacity: number;
  readonly barLength: number; readonly barDepth: number; readonly barThickness: number; readonly weight: number;
  readonly source: string; readonly isExample: boolean;
};

export const readClampKind = (data: FormData, id: string | undefined) => ({
  ...(id === undefined ? {} : { id }),
  name: textOf(data, "name"),
  minSize: numberOf(data, "minSize"),
  maxSize: numberOf(data, "maxSize"),
  sideCapacity: numberOf(data, "sideCapacity"),
  barLength: numberOf(data, "barLength"),
  barDepth: numberOf(data, "barDepth"),
  barThickness: numberOf(data, "barThickness"),
  weight: numberOf(data, "weight"),
  source: textOf(data, "source"),
  isExample: choiceOf(data, "standing", ["stated", "example"]) === "example",
});
