"use client";

import { useEffect, useRef } from "react";
import type { Failure, Problem } from "#lib/kernel/result.ts";

export type FormProblemsProps = { readonly problems: readonly Problem[] };

const FOCUSABLE = "input:not([type=hidden]):not([tabindex='-1']), textarea, button";

/** The problems of an `invalid` failure under the names of their fields. */
export function problemsByField(failure: Failure | undefined): Record<string, string[]> {
  const byField: Record<string, string[]> = {};
  if (failure?.kind !== "invalid") return byField;
  for (const { field, message } of failure.problems) (byField[field] ??= []).push(message);
  return byField;
}

/** Everything the server refused in one list; goes to the first field at fault when it appears. */
export function FormProblems({ problems }: FormProblemsProps) {
  const box = useRef<HTMLDivElement>(null);
  const goTo = (field: string): boolean => {
    const place = box.current?.closest("form") ?? document;
    const target = place.querySelector(`[data-field="${CSS.escape(field)}"]`)?.querySelector<HTMLElement>(FOCUSABLE);
    target?.focus();
    return target !== undefined && target !== null;
  };
  useEffect(() => {
    const found = problems.some(({ field }) => goTo(field));
    if (!found) box.current?.focus();
  }, [problems]);
  if (problems.length === 0) return null;
  return (
    <div ref={box} role="alert" tabIndex={-1} className="border-2 border-flag bg-flag-wash p-3">
      <p className="font-semibold text-flag-deep">
        {problems.length === 1 ? "One entry needs another look" : `${problems.length} entries need another look`}
      </p>
      <ul className="mt-1 list-disc pl-5">
        {problems.map(({ field, message }, index) => (
          <li key={`${field} ${index}`}>
            <button type="button" onClick={() => goTo(field)} className="min-h-8 cursor-pointer text-left underline underline-offset-2">
              {message}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
