"use client";

import { usePathname, useRouter, useSearchParams } from "next/navigation";
import { useEffect, useRef, useState, useTransition, type ReactNode } from "react";
import type { Failure } from "#lib/kernel/result.ts";
import { Button } from "#app/_ui/control/button.tsx";
import { FieldForm } from "#app/_ui/field/field-form.tsx";

export type WorkingFormProps = {
  /** Of the last answer, where an entry was at fault. */
  readonly failure: Failure | undefined;
  readonly children: ReactNode;
};

const queryOf = (data: FormData): string =>
  new URLSearchParams([...data].flatMap(([name, value]) => (typeof value === "string" && !name.startsWith("$") ? [[name, value]] : []))).toString();

/** Where answers lie on a phone. */
const ANSWER = "answer";

/** Puts the entries into the address, which brings the answer; going back in the browser brings the entries before. */
export function WorkingForm({ failure, children }: WorkingFormProps) {
  const router = useRouter();
  const path = usePathname();
  const query = useSearchParams().toString();
  const [isPending, start] = useTransition();
  const [form, setForm] = useState({ query, version: 0 });
  if (form.query !== query && !isPending) setForm({ query, version: form.version + 1 });
  useShowAnswer(isPending);
  const workOut = (data: FormData) => start(() => {
    const next = queryOf(data);
    setForm({ ...form, query: next });
    router.push(`${path}?${next}`, { scroll: false });
  });
  return (
    <FieldForm key={form.version} action={workOut} {...(failure?.kind === "invalid" ? { failure } : {})} className="flex flex-col gap-5">
      {children}
      <div className="sticky bottom-20 z-10 bg-paper py-2 lg:static lg:bottom-auto">
        <Button type="submit" kind="primary" size="glove" wide isPending={isPending}>Work it out</Button>
      </div>
    </FieldForm>
  );
}

/** On a narrow screen the answer lies below the entries. */
function useShowAnswer(isPending: boolean): void {
  const wasPending = useRef(false);
  useEffect(() => {
    if (wasPending.current && !isPending && !window.matchMedia("(min-width: 64rem)").matches) {
      document.getElementById(ANSWER)?.scrollIntoView();
    }
    wasPending.current = isPending;
  }, [isPending]);
}
