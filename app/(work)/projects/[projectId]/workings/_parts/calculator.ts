import type { ReactNode } from "react";
import type { Caller } from "#lib/server/gate/caller.ts";
import type { startWorkings } from "#lib/server/workings/start-workings.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { Working } from "#lib/trade/engineering/working.ts";
import type { Entries } from "#app/_ui/form/read-form.ts";
import type { Units } from "#app/_ui/value/format-quantity.ts";
import type { WorkingName } from "#app/paths.ts";

export type Start = Extract<Awaited<ReturnType<typeof startWorkings>>, { ok: true }>["value"];
/** In the address beside the entries: which clamp to look at the layout without. */
export const LEFT_OUT = "without";
/** In the address in place of entries: the column to start from. */
export const COLUMN = "column";

/** One entry as it is printed above the answer. */
export type InputLine = readonly [label: string, value: string];

/** What the parts of a page are drawn from besides entries and answer. */
export type FieldsContext<Told> = { readonly units: Units; readonly told: Told | null; readonly start: Start };
export type AnswerContext = {
  readonly units: Units;
  /** The address as it stands, to link to the same calculation looked at another way. */
  readonly query: URLSearchParams;
};

/** One calculation as a page: where its entries come from, who works it out, and how both are shown. */
export type Calculator<Input, Told extends { readonly working: readonly Working[] }> = {
  readonly name: WorkingName;
  /** What the caution is about: "concrete pressure". */
  readonly of: string;
  readonly start: (start: Start) => Input;
  /** Where the start values come from, said until something else is entered. */
  readonly startNote: (start: Start) => string;
  /** Parts of the entries that are still the example figures of the project's set-up. */
  readonly examples: (input: Input, start: Start) => readonly string[];
  readonly read: (entries: Entries) => Input;
  readonly workOut: (caller: Caller | null, input: Input) => Promise<Result<Told>>;
  readonly fields: (input: Input, context: FieldsContext<Told>) => ReactNode;
  readonly inputLines: (input: Input, units: Units) => readonly InputLine[];
  readonly answer: (told: Told, input: Input, context: AnswerContext) => ReactNode;
  /** Limits and assumptions of this answer, said in the caution. */
  readonly mind: (told: Told | null) => readonly string[];
};
