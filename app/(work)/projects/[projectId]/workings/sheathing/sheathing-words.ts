import type { FaceGrain, PlyGrade } from "#lib/trade/engineering/sheathing/apa-sections.ts";

export const GRADES: readonly { readonly value: PlyGrade; readonly label: string }[] = [
  { value: "class-i", label: "Class I" }, { value: "class-ii", label: "Class II" }, { value: "structural-i", label: "Structural I" },
];
export const GRAINS: Readonly<Record<FaceGrain, string>> = { across: "across the timbers, strong way", along: "along the timbers, weak way" };
