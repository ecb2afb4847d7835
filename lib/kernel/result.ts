/** A problem with one input: where it is (a dotted path, a row or a cell), and what to do about it. */
export type Problem = { readonly field: string; readonly message: string };

/**
 * Every way a request may fail that its caller is expected to handle. Anything else is thrown.
 * `rule` names the broken rule and carries the numbers that broke it; its wording lives in the screens, keyed by `code`.
 */
export type Failure =
  | { readonly kind: "not-signed-in" }
  | { readonly kind: "not-allowed"; readonly permission: string }
  | { readonly kind: "not-found"; readonly what: string }
  | { readonly kind: "invalid"; readonly problems: readonly Problem[] }
  | { readonly kind: "conflict"; readonly what: string }
  | { readonly kind: "rule"; readonly code: string; readonly values: Readonly<Record<string, string | number>> };

export type Ok<T> = { readonly ok: true; readonly value: T };
export type Fail<F> = { readonly ok: false; readonly failure: F };
/** Plain data, so that it survives the trip through a server action. */
export type Result<T, F = Failure> = Ok<T> | Fail<F>;

export const ok = <T>(value: T): Ok<T> => ({ ok: true, value });
export const fail = <F>(failure: F): Fail<F> => ({ ok: false, failure });

export const notFound = (what: string): Fail<Failure> => fail({ kind: "not-found", what });
export const conflict = (what: string): Fail<Failure> => fail({ kind: "conflict", what });
export const invalid = (...problems: readonly Problem[]): Fail<Failure> => fail({ kind: "invalid", problems });
export const brokenRule = (code: string, values: Readonly<Record<string, string | number>> = {}): Fail<Failure> =>
  fail({ kind: "rule", code, values });

/** Closes a switch over a union: adding a member without handling it no longer compiles. */
export function unreachable(value: never): never {
  throw new Error(`Unexpected value: ${JSON.stringify(value)}`);
}
