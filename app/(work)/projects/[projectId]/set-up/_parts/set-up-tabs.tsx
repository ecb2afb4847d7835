"use client";

import { Link } from "#app/_ui/control/link.tsx";
import { usePathname } from "next/navigation";
import { currentItem } from "#app/_ui/page/nav-bar.tsx";
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
  const current = currentItem(items, usePathname());
  return (
    <nav aria-label="Set-up" className="no-print mx-auto max-w-7xl px-3 pt-3 sm:px-6">
      <ul className="flex flex-wrap gap-1">
        {items.map((item) => (
          <li key={item.href} className="grow sm:grow-0">
            <Link
              href={item.href}
              aria-current={item === current ? "page" : undefined}
              className="flex min-h-hand items-center justify-center border border-edge bg-sheet px-2 text-sm font-semibold text-ink no-underline hover:bg-accent-wash sm:px-3 sm:text-base aria-[current=page]:border-ink aria-[current=page]:bg-ink aria-[current=page]:text-white"
            >
              {item.label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
