"use client";

import { Link } from "#app/_ui/control/link.tsx";
import { usePathname } from "next/navigation";
import { Button, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";

export type NavItem = { readonly href: string; readonly label: string };

export type NavBarProps = {
  /** Names the bar for a screen reader: "Harbour Road" or "Project". */
  readonly label: string;
  readonly items: readonly NavItem[];
  /** How many stand in the thumb bar of a phone before the rest go behind "More". */
  readonly inThumbBar?: number;
};

const TAB =
  "flex min-h-glove grow basis-0 items-center justify-center border-t-4 px-1 text-center text-sm font-semibold text-ink no-underline";

/** The item whose address is the longest beginning of the one shown. */
export function currentItem(items: readonly NavItem[], path: string): NavItem | undefined {
  return items
    .filter(({ href }) => path === href || path.startsWith(`${href}/`))
    .reduce<NavItem | undefined>((best, item) => (!best || item.href.length > best.href.length ? item : best), undefined);
}

/** A row of pages: along the top at a desk, under the thumb on a phone. */
export function NavBar({ label, items, inThumbBar = 4 }: NavBarProps) {
  const current = currentItem(items, usePathname());
  const fits = items.length <= inThumbBar + 1;
  const first = fits ? items : items.slice(0, inThumbBar);
  const rest = fits ? [] : items.slice(inThumbBar);
  const here = (item: NavItem) => (item === current ? "page" as const : undefined);
  return (
    <>
      <nav aria-label={label} className="no-print hidden border-b-2 border-ink bg-sheet lg:block">
        <ul className="mx-auto flex max-w-7xl px-6">
          {items.map((item) => (
            <li key={item.href}>
              <Link
                href={item.href}
                aria-current={here(item)}
                className="flex min-h-hand items-center border-b-4 border-transparent px-4 font-semibold text-ink no-underline hover:bg-accent-wash aria-[current=page]:border-accent aria-[current=page]:text-accent"
              >
                {item.label}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      <nav aria-label={label} className="no-print fixed inset-x-0 bottom-0 z-20 flex border-t-2 border-ink bg-sheet pb-[env(safe-area-inset-bottom)] lg:hidden">
        {first.map((item) => (
          <Link key={item.href} href={item.href} aria-current={here(item)} className={`${TAB} border-transparent aria-[current=page]:border-accent aria-[current=page]:bg-accent-wash`}>
            {item.label}
          </Link>
        ))}
        {rest.length > 0 ? <MoreMenu items={rest} current={current} /> : null}
      </nav>
    </>
  );
}

function MoreMenu({ items, current }: { readonly items: readonly NavItem[]; readonly current: NavItem | undefined }) {
  const isHere = current !== undefined && items.includes(current);
  return (
    <MenuTrigger>
      <Button className={`${TAB} cursor-pointer ${isHere ? "border-accent bg-accent-wash" : "border-transparent"}`}>
        {isHere ? current.label : "More"}
      </Button>
      <Popover placement="top end" className="min-w-48 border-2 border-ink bg-sheet">
        <Menu aria-label="More pages" className="outline-none">
          {items.map((item) => (
            <MenuItem
              key={item.href}
              href={item.href}
              className="flex min-h-glove cursor-pointer items-center border-b border-rule-soft px-5 text-lg font-semibold text-ink no-underline last:border-b-0 data-focused:bg-accent-wash"
            >
              {item.label}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
