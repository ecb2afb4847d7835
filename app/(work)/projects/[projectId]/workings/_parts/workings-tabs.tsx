"use client";

import { PartTabs } from "#app/_ui/page/part-tabs.tsx";
import { paths } from "#app/paths.ts";
import { CALCULATORS } from "./calculators.ts";

/** From one calculator to the next. */
export function WorkingsTabs({ projectId }: { readonly projectId: string }) {
  const items = CALCULATORS.map(({ name, label }) => ({ href: paths.working(projectId, name), label }));
  return <PartTabs label="Workings" items={items} />;
}
