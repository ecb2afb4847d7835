"use client";

import { usePathname } from "next/navigation";
import { Link } from "#app/_ui/control/link.tsx";
import { currentItem } from "#app/_ui/page/nav-bar.tsx";
import { paths } from "#app/paths.ts";
import { CALCULATORS } from "./calculators.ts";

/** From one calculator to the next. */
export function WorkingsTabs({ projectId }: { readonly projectId: string }) {
  const items = CALCULATORS.map(({ name, label }) => ({ href: paths.working(projectId, name), label }));
  const current = currentItem(items, usePathname());
  return (
    <nav aria-label="Workings" className="no-print mx-auto max-w-7xl px-3 pt-3 sm:px-6">
      <ul className="grid grid-cols-2 gap-1 sm:flex sm:flex-wrap">
        {items.map((item) => (
          <li key={item.href}>
            <Link
              href={item.href}
              aria-current={item === current ? "page" : undefined}
              className="flex min-h-glove items-center justify-center border border-edge bg-sheet px-2 text-center text-sm font-semibold text-ink no-underline hover:bg-accent-wash sm:min-h-hand sm:px-3 sm:text-base aria-[current=page]:border-ink aria-[current=page]:bg-ink aria-[current=page]:text-white"
            >
              {item.label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
