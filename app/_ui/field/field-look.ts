/** What every field has: a name in the form, a label always in sight, a hint, and what is wrong with it. */
export type FieldProps = {
  readonly name: string;
  readonly label: string;
  /** What to enter and in which form; stays in sight while typing. */
  readonly hint?: string;
  readonly problem?: string;
  readonly isRequired?: boolean;
  readonly isDisabled?: boolean;
  /** Narrows what is shown rather than being filled in; says nothing of staying empty. */
  readonly isFilter?: boolean;
  /** Marks fields a gloved hand fills in. */
  readonly size?: "hand" | "glove";
};

export const FIELD = "flex min-w-0 flex-col gap-1";
export const LABEL = "font-semibold";
export const HINT = "text-sm text-ink-soft";
export const PROBLEM = "border-l-4 border-flag pl-2 text-sm font-semibold text-flag-deep";

export const boxLook = (size: FieldProps["size"] = "hand"): string =>
  "w-full min-w-0 border-2 border-edge bg-sheet px-3 placeholder:text-ink-soft hover:border-ink " +
  "data-focused:border-accent data-invalid:border-flag disabled:bg-wash disabled:text-ink-soft " +
  (size === "glove" ? "min-h-glove text-lg" : "min-h-hand");

/** What the form around a field was told about it, for fields whose box does not carry the name itself. */
export function refusalOf(errors: Readonly<Record<string, string | string[]>>, name: string): string | undefined {
  const found = errors[name];
  return typeof found === "string" ? found : found?.join(" ");
}
