"use client";

import { useActionState } from "react";
import { brokenRule, type Failure, type Result } from "#lib/kernel/result.ts";

export type Answered<T> = {
  readonly value: T | undefined;
  readonly failure: Failure | undefined;
  readonly isDone: boolean;
  readonly isPending: boolean;
  readonly submit: (data: FormData) => void;
};

/** What a fetch throws when nothing came back; the entries stay on the page, and sending can be tried again. */
const isUnreached = (error: unknown): boolean => error instanceof TypeError;

/** Sends a form to a server action and keeps its last answer. */
export function useAnswer<T>(send: (data: FormData) => Promise<Result<T>>): Answered<T> {
  const [answer, submit, isPending] = useActionState(async (_last: Result<T> | undefined, data: FormData): Promise<Result<T>> => {
    try {
      return await send(data);
    } catch (error) {
      if (isUnreached(error)) return brokenRule("not-reached");
      throw error;
    }
  }, undefined);
  return {
    value: answer?.ok ? answer.value : undefined,
    failure: answer && !answer.ok ? answer.failure : undefined,
    isDone: answer?.ok === true,
    isPending,
    submit,
  };
}
