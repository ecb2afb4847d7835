"use client";

import { signOut } from "next-auth/react";
import { Button, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import type { Role } from "#lib/access/roles.ts";
import { paths } from "#app/paths.ts";

const ITEM =
  "flex min-h-glove cursor-pointer items-center border-b border-rule-soft px-5 font-semibold text-ink no-underline " +
  "last:border-b-0 data-focused:bg-accent-wash";

const PAGES = [
  { href: paths.projects(), label: "Projects" },
  { href: paths.clamps(), label: "Clamp kinds" },
  { href: paths.people(), label: "People" },
  { href: paths.account(), label: "Account" },
] as const;

export type PersonMenuProps = { readonly name: string; readonly role: Role };

/** Who is signed in, and the pages that belong to the company rather than to one project. */
export function PersonMenu({ name, role }: PersonMenuProps) {
  return (
    <MenuTrigger>
      <Button className="flex min-h-hand min-w-0 cursor-pointer items-center gap-3 py-1 pl-2 text-right data-focus-visible:outline-white">
        <span className="min-w-0">
          <span className="block truncate font-semibold">{name}</span>
          <span className="block text-sm">{role}</span>
        </span>
        <span aria-hidden className="size-2.5 shrink-0 -translate-y-0.5 rotate-45 border-b-2 border-r-2 border-white" />
      </Button>
      <Popover placement="bottom end" className="min-w-56 border-2 border-ink bg-sheet">
        <Menu aria-label="Company and account" className="outline-none">
          {PAGES.map(({ href, label }) => (
            <MenuItem key={href} href={href} className={ITEM}>{label}</MenuItem>
          ))}
          <MenuItem className={ITEM} onAction={() => void signOut({ callbackUrl: paths.signIn() })}>Sign out</MenuItem>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
