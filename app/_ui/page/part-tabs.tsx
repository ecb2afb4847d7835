"use client";

import { usePathname } from "next/navigation";
import { Link } from "../control/link.tsx";
import { currentItem } from "./nav-bar.tsx";

export type PartTabsProps = { readonly label: string; readonly items: readonly { readonly href: string; readonly label: string }[] };

/** The parts of one page of a project, as addresses of their own. */
export function PartTabs({ label, items }: PartTabsProps) {
  const current = currentItem(items, usePathname());
  return (
    <nav aria-label={label} className="no-print mx-auto max-w-7xl px-3 pt-3 sm:px-6">
      <ul className="flex flex-wrap gap-1">
        {items.map((item) => (
          <li key={item.href} className="grow sm:grow-0">
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
