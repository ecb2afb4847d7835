"use client";

import { Button } from "../control/button.tsx";
import { Notice } from "../message/notice.tsx";

type Props = { readonly isOutdated: boolean; readonly startAgain: () => void };

/** Over rows that were typed from a list that somebody else has saved since. */
export function OutdatedNotice({ isOutdated, startAgain }: Props) {
  if (!isOutdated) return null;
  return (
    <Notice title="Somebody saved this list meanwhile.">
      <p>What you typed is still here to be read, but it cannot be saved over theirs.</p>
      <div className="mt-2"><Button onPress={startAgain}>Start again from what they saved</Button></div>
    </Notice>
  );
}
