"use client";

import { PartTabs } from "#app/_ui/page/part-tabs.tsx";
import { paths } from "#app/paths.ts";

/** The parts of Gear: what is where first, then how it got there. */
export function GearTabs({ projectId }: { readonly projectId: string }) {
  const items = [
    { href: paths.gear(projectId), label: "Where it is" },
    { href: paths.gearMovements(projectId), label: "Movements" },
    { href: paths.gearPanels(projectId), label: "Panels and sets" },
    { href: paths.gearLabels(projectId), label: "Labels" },
    { href: paths.gather(projectId), label: "Gather" },
    { href: paths.gearCount(projectId), label: "Count" },
    { href: paths.cutting(projectId), label: "Cutting" },
    { href: paths.gearOrders(projectId), label: "Orders" },
    { href: paths.reuse(projectId), label: "Reuse" },
  ];
  return <PartTabs label="Gear" items={items} />;
}
