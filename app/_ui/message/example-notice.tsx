import { Notice } from "./notice.tsx";
import { EXAMPLE_MARK } from "#lib/trade/shutter/example-rule.ts";

/** True while the source line still says that nobody stands behind the figures. */
export const isExample = (source: string): boolean => source.startsWith(EXAMPLE_MARK);

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;

/** Stands above figures we made up to start from. */
export function ExampleNotice({ what }: { readonly what: readonly string[] }) {
  if (what.length === 0) return null;
  return (
    <Notice kind="problem" title={`Example figures: ${listed(what)}.`}>
      These are round figures to start from, not any supplier&rsquo;s or hirer&rsquo;s. Replace them, and the line that names their source,
      before a form is made to them. Until then every form set made from them carries this warning.
    </Notice>
  );
}
