import NextLink from "next/link";
import type { ComponentProps } from "react";

/** A link that fetches its page when it is pressed: every page is read fresh, so fetching those in sight ahead would only ask the database for nothing. */
export function Link(props: ComponentProps<typeof NextLink>) {
  return <NextLink prefetch={false} {...props} />;
}
