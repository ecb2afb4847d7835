import type { AnyPressureMethod, CementGroup, ConsistencyClass } from "#lib/trade/engineering/pour-conditions.ts";
import type { Choice } from "#app/_ui/field/select-field.tsx";

type MethodChoice = Choice & { readonly value: AnyPressureMethod };

const METHODS: readonly MethodChoice[] = [
  { value: "full-head", label: "Full liquid head", note: "no promise about the pour needed" },
  { value: "aci-347-si", label: "ACI 347-04 / 347R-14, SI units" },
  { value: "aci-347-us", label: "ACI 347-04 / 347R-14, US units" },
  { value: "ciria-108", label: "CIRIA Report 108" },
  { value: "din-18218-2010", label: "DIN 18218:2010", note: "characteristic value, for partial factors" },
];
const WITHDRAWN: readonly MethodChoice[] = [
  { value: "din-18218-1980", label: "DIN 18218:1980", note: "withdrawn, for comparison only" },
  { value: "aci-347-us-before-2001", label: "ACI 347 before 2001", note: "withdrawn, for comparison only" },
];
export const methodChoices = (withWithdrawn: boolean): readonly MethodChoice[] => (withWithdrawn ? [...METHODS, ...WITHDRAWN] : METHODS);
export const methodLabel = (method: AnyPressureMethod): string => methodChoices(true).find(({ value }) => value === method)?.label ?? method;

export const CEMENTS = [
  { value: "portland", label: "Portland cement, no blend" },
  { value: "blend-low", label: "Blended, low", note: "under 70 % slag or 40 % fly ash; other types" },
  { value: "blend-high", label: "Blended, high", note: "70 % slag or 40 % fly ash and over" },
] as const satisfies readonly (Choice & { readonly value: CementGroup })[];

export const PLACING = [
  { value: "from-top", label: "From the top" },
  { value: "pumped-from-base", label: "Pumped from the base" },
] as const satisfies readonly Choice[];

type PourEntry = "temperature" | "rate" | "cement" | "retarder" | "slump" | "vibration" | "self-compacting" | "external" | "side" | "consistency" | "setting-end";
const VIBRATED: readonly PourEntry[] = ["temperature", "rate", "self-compacting", "external"];
const ACI: readonly PourEntry[] = [...VIBRATED, "cement", "retarder", "slump", "vibration", "side"];

/** What each method reads besides density, heights and the way of placing. */
export const READ_BY: Readonly<Record<AnyPressureMethod, readonly PourEntry[]>> = {
  "full-head": [],
  "aci-347-si": ACI,
  "aci-347-us": ACI,
  "ciria-108": [...VIBRATED, "cement", "retarder", "side"],
  "din-18218-2010": [...VIBRATED, "consistency", "setting-end"],
  "din-18218-1980": [...VIBRATED, "retarder", "consistency"],
  "aci-347-us-before-2001": ["temperature", "rate", "external", "side"],
};

const F_CLASSES: readonly ConsistencyClass[] = ["F1", "F2", "F3", "F4", "F5", "F6", "SCC"];
const K_CLASSES: readonly ConsistencyClass[] = ["K1", "K2"];
export const classesOf = (method: AnyPressureMethod): readonly ConsistencyClass[] => (method === "din-18218-1980" ? K_CLASSES : F_CLASSES);
