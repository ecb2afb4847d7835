"use client";

import { PartTabs } from "#app/_ui/page/part-tabs.tsx";
import { paths } from "#app/paths.ts";

/** The parts of hire, in the order in which they are looked at. */
export function HireTabs({ projectId }: { readonly projectId: string }) {
  const items = [
    { href: paths.hire(projectId), label: "On hire" },
    { href: paths.hirePart(projectId, "dockets"), label: "Dockets" },
    { href: paths.returnPlan(projectId), label: "Return plan" },
    { href: paths.hirePart(projectId, "column-gear"), label: "Gear per column" },
    { href: paths.hirePart(projectId, "terms"), label: "Terms and suppliers" },
    { href: paths.hirePart(projectId, "invoices"), label: "Invoices" },
  ];
  return <PartTabs label="Hire" items={items} />;
}
