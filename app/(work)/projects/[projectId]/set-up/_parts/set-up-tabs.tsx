"use client";

import { PartTabs } from "#app/_ui/page/part-tabs.tsx";
import { paths, type SetUpPart } from "#app/paths.ts";

const PARTS: readonly (readonly [SetUpPart, string])[] = [
  ["levels", "Levels"],
  ["grid", "Grid"],
  ["marks", "Marks"],
  ["columns", "Add columns"],
  ["schedule", "Schedule"],
  ["shutter", "Shutter"],
  ["stock", "Stock"],
  ["pour", "Pour and pressure"],
  ["stages", "Stages and gates"],
];

/** The parts of a project's set-up, in the order in which they are filled in. */
export function SetUpTabs({ projectId }: { readonly projectId: string }) {
  const items = [
    { href: paths.setUp(projectId), label: "Project" },
    ...PARTS.map(([part, label]) => ({ href: paths.setUpPart(projectId, part), label })),
  ];
  return <PartTabs label="Set-up" items={items} />;
}
