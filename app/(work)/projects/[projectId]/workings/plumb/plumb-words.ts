import type { PlumbToleranceRule } from "#lib/trade/engineering/plumb/plumb-tolerance.ts";

export const OWN = "own";
export const TOLERANCES: readonly { readonly value: PlumbToleranceRule | typeof OWN; readonly label: string; readonly note?: string }[] = [
  { value: "aci-117-90", label: "ACI 117-90", note: "1 in. up to 100 ft" },
  { value: "aci-117-90-exposed-corner", label: "ACI 117-90, exposed corner column", note: "1/2 in. up to 100 ft" },
  { value: "aci-117-10", label: "ACI 117-10", note: "0.3 %, at most 1 in.; from memory" },
  { value: "en-13670-class-1", label: "EN 13670:2009, class 1", note: "15 mm or h/400; from memory" },
  { value: "as-3600", label: "AS 3600, floor to floor", note: "h/200, at least 10 mm; from memory" },
  { value: OWN, label: "The project’s own limit" },
];

export const toleranceLabel = (value: string): string => TOLERANCES.find((tolerance) => tolerance.value === value)?.label ?? value;
