/** One line of a derivation as it is printed: `lateral pressure p = 50.2 kPa`. */
export type Term = { readonly name: string; readonly value: number | string; readonly unit: string };

/** How a number came about, complete enough to be checked by hand from a print-out. */
export type Working = {
  readonly title: string;
  readonly inputs: readonly Term[];
  readonly formula: string;
  readonly steps: readonly Term[];
  readonly result: Term;
  /** Title, edition and clause. */
  readonly source: string;
};

/** A formula that was asked outside its limits: the limit by name, what was given, what would be allowed. Never a number instead. */
export type Refusal = {
  readonly limit: string;
  readonly given: number | string;
  readonly allowed: string;
  readonly source: string;
  readonly message: string;
};

export const term = (name: string, value: number | string, unit: string): Term => ({ name, value, unit });

/** The message opens with the numbers, so that no caller can show it without them. */
export const refusal = (given: Refusal): Refusal => ({
  ...given,
  message: `${given.limit} is ${typeof given.given === "number" ? Number(given.given.toPrecision(6)) : given.given}; allowed: ${given.allowed}. ${given.message}`,
});
