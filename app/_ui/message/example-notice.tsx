import { Notice } from "./notice.tsx";
import { EXAMPLE_MARK } from "#lib/trade/shutter/example-rule.ts";

/** True while the source line still says that nobody stands behind the figures. */
export const isExample = (source: string): boolean => source.startsWith(EXAMPLE_MARK);

/** Stands above figures we made up to start from. */
export function ExampleNotice({ what }: { readonly what: readonly string[] }) {
  if (what.length === 0) return null;
  return (
    <Notice kind="problem" title={`Example figures: ${what.join(" and ")}.`}>
      These are round figures to start from, not any supplier&rsquo;s or hirer&rsquo;s. Replace them, and the line that names their source,
      before a form is made to them. Until then every form set made from them carries this warning.
    </Notice>
  );
}
