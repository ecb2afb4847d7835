"use client";

import { useState } from "react";

/**
 * What someone enters over what the server gave. It starts again from `fresh` once the server's `stamp` has changed, unless
 * something was entered that is not saved yet: then it stays, and `seen` tells the server which state it was made from.
 */
export function useEntries<Value, Stamp extends string | number>(stamp: Stamp, fresh: () => Value) {
  const begin = () => ({ seen: stamp, isTouched: false, value: fresh() });
  const [state, setState] = useState(begin);
  if (state.seen !== stamp && !state.isTouched) setState(begin());
  return {
    value: state.value,
    seen: state.seen,
    /** Somebody else has saved since, and what was entered here cannot be saved over it. */
    isOutdated: state.seen !== stamp,
    set: (next: (value: Value) => Value) => setState((now) => ({ ...now, isTouched: true, value: next(now.value) })),
    /** Shown otherwise, though nothing was entered. */
    show: (next: (value: Value) => Value) => setState((now) => ({ ...now, value: next(now.value) })),
    /** Waits for a save; once what was entered is on the server, it follows that again. */
    saving: async <Answer extends { readonly ok: boolean }>(save: Promise<Answer>): Promise<Answer> => {
      const answer = await save;
      if (answer.ok) setState((now) => ({ ...now, isTouched: false }));
      return answer;
    },
    /** Lets go of what was entered. */
    startAgain: () => setState(begin()),
  };
}
