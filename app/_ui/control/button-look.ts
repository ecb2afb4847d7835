export type ButtonKind = "primary" | "plain" | "danger";
/** `glove` is for actions taken on site, with a gloved thumb; `small` only inside dense tables at a desk. */
export type ButtonSize = "small" | "hand" | "glove";

const BASE =
  "inline-flex cursor-pointer select-none items-center justify-center gap-2 border-2 text-center font-semibold leading-tight " +
  "no-underline hover:no-underline disabled:cursor-not-allowed disabled:border-rule-soft disabled:bg-wash disabled:text-ink-soft " +
  "data-pending:cursor-progress";

const KIND: Readonly<Record<ButtonKind, string>> = {
  primary: "border-accent bg-accent text-white hover:border-accent-deep hover:bg-accent-deep data-pressed:bg-ink",
  plain: "border-ink bg-sheet text-ink hover:bg-accent-wash data-pressed:bg-rule-soft",
  danger: "border-flag bg-sheet text-flag-deep hover:bg-flag-wash data-pressed:bg-flag data-pressed:text-white",
};

const SIZE: Readonly<Record<ButtonSize, string>> = {
  small: "min-h-8 min-w-8 px-2 text-sm",
  hand: "min-h-hand min-w-hand px-4",
  glove: "min-h-glove min-w-glove px-5 text-lg",
};

export const buttonLook = (kind: ButtonKind = "plain", size: ButtonSize = "hand", wide = false): string =>
  `${BASE} ${KIND[kind]} ${SIZE[size]}${wide ? " w-full" : ""}`;
