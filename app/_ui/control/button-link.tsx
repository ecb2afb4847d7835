import { Link } from "./link.tsx";
import type { ReactNode } from "react";
import { buttonLook, type ButtonKind, type ButtonSize } from "./button-look.ts";

export type ButtonLinkProps = {
  readonly href: string;
  readonly kind?: ButtonKind;
  readonly size?: ButtonSize;
  readonly wide?: boolean;
  /** A file to save rather than a page to open. */
  readonly download?: boolean;
  readonly children: ReactNode;
};

/** A link that looks like a button: it goes somewhere and changes nothing. */
export function ButtonLink({ href, kind, size, wide, download, children }: ButtonLinkProps) {
  const look = buttonLook(kind, size, wide);
  if (download) return <a href={href} download className={look}>{children}</a>;
  return <Link href={href} className={look}>{children}</Link>;
}
