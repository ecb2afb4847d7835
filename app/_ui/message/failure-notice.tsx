import type { Failure } from "#lib/kernel/result.ts";
import { wordFailure } from "#app/_ui/wording.ts";
import { Notice } from "./notice.tsx";

export type FailureNoticeProps = { readonly failure: Failure };

/** Says what was refused and what to do now. */
export function FailureNotice({ failure }: FailureNoticeProps) {
  const { title, todo } = wordFailure(failure);
  return <Notice kind="problem" title={title}>{todo}</Notice>;
}
