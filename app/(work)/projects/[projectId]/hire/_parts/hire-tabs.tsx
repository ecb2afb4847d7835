"use client";

import { usePathname } from "next/navigation";
import { Link } from "#app/_ui/control/link.tsx";
import { currentItem } from "#app/_ui/page/nav-bar.tsx";
import { paths } from "#app/paths.ts";

/** The parts of hire, in the order in which they are looked at. */
export function HireTabs({ projectId }: { readonly projectId: string }) {
  const items = [
    { href: paths.hire(projectId), label: "On hire" },
    { href: paths.hirePart(projectId, "dockets"), label: "Dockets" },
    { href: paths.returnPlan(projectId), label: "Return plan" },
    { href: paths.hirePart(projectId, "terms"), label: "Terms and suppliers" },
    { href: paths.hirePart(projectId, "invoices"), label: "Invoices" },
  ];
  const current = currentItem(items, usePathname());
  return (
    <nav aria-label="Hire" className="no-print mx-auto max-w-7xl px-3 pt-3 sm:px-6">
      <ul className="flex flex-wrap gap-1">
        {items.map((item) => (
          <li key={item.href} className="grow sm:grow-0">
            <Link
              href={item.href} aria-current={item === current ? "page" : undefined}
              className="flex min-h-glove items-center justify-center border border-edge bg-sheet px-3 font-semibold text-ink no-underline hover:bg-accent-wash sm:min-h-hand aria-[current=page]:border-ink aria-[current=page]:bg-ink aria-[current=page]:text-white"
            >
              {item.label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
