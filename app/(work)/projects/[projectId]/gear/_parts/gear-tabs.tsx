"use client";

import { usePathname } from "next/navigation";
import { Link } from "#app/_ui/control/link.tsx";
import { currentItem } from "#app/_ui/page/nav-bar.tsx";
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
    { href: paths.reuse(projectId), label: "Reuse" },
  ];
  const current = currentItem(items, usePathname());
  return (
    <nav aria-label="Gear" className="no-print mx-auto max-w-7xl px-3 pt-3 sm:px-6">
      <ul className="flex flex-wrap gap-1">
        {items.map((item) => (
          <li key={item.href} className="grow sm:grow-0">
            <Link
              href={item.href}
              aria-current={item === current ? "page" : undefined}
              className="flex min-h-glove items-center justify-center border border-edge bg-sheet px-3 text-sm font-semibold text-ink no-underline hover:bg-accent-wash sm:min-h-hand sm:text-base aria-[current=page]:border-ink aria-[current=page]:bg-ink aria-[current=page]:text-white"
            >
              {item.label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
