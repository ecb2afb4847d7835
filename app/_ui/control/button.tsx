"use client";

import type { ReactNode } from "react";
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from "react-aria-components";
import { buttonLook, type ButtonKind, type ButtonSize } from "./button-look.ts";

export type ButtonProps = Omit<AriaButtonProps, "className" | "style" | "children"> & {
  readonly kind?: ButtonKind;
  readonly size?: ButtonSize;
  /** Takes the whole width of its place. */
  readonly wide?: boolean;
  readonly children: ReactNode;
};

/** A button; `type="submit"` sends the form around it, `isPending` keeps it focusable while the answer is on its way. */
export function Button({ kind, size, wide, children, ...rest }: ButtonProps) {
  return (
    <AriaButton {...rest} className={buttonLook(kind, size, wide)}>
      {children}
      {rest.isPending ? <span className="font-normal">… wait</span> : null}
    </AriaButton>
  );
}
