/**
 * Minimise cost · x with rowLower <= A x <= rowUpper and lower <= x <= upper, A by columns: column j has the rows
 * indices[starts[j]..starts[j+1]) with the coefficients values[...]. Plain arrays, so that it crosses to a worker.
 */
export type LinearModel = {
  readonly cost: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly whole: boolean;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly starts: Int32Array;
  readonly indices: Int32Array;
  readonly values: Float64Array;
};

/** Where a linear solve left off; columns added since then are taken to start at their lower limit. */
export type Basis = { readonly columns: Int32Array; readonly rows: Int32Array };

export type Question = {
  readonly model: LinearModel;
  readonly from?: Basis;
  readonly hint?: Float64Array;
  /** Branching stops here: a count, unlike a time, gives the same answer on every machine. */
  readonly nodeLimit?: number;
  readonly stopAtGap?: number;
  /** Never more than this of the time that is left. */
  readonly timeShareMs?: number;
  /** No more than this part of the time that is left, 0 to 1. */
  readonly timeShare?: number;
  /** The hint is a good solution already: work for the proof, not for better ones. */
  readonly isNearlyThere?: boolean;
};

/** `optimal` is proven; `feasible` holds a solution and the bound reached; `unknown` holds neither. */
export type Answer = {
  readonly status: "optimal" | "feasible" | "infeasible" | "unknown";
  readonly objective: number;
  readonly bound: number;
  readonly values: Float64Array;
  readonly duals: Float64Array;
  readonly basis: Basis | null;
};

export const NO_ANSWER: Answer = {
  status: "unknown", objective: Infinity, bound: -Infinity, values: new Float64Array(), duals: new Float64Array(), basis: null,
};

export type Reply = { readonly answer: Answer; readonly timeIsUp: boolean };

/**
 * A calculation that stops on its way to have a model solved (or, yielding null, to let others run and hear whether its
 * time is up), so that it stays free of clocks, workers and promises. Once its time is up, models go unanswered.
 */
export type Asking<T> = Generator<Question | null, T, Reply>;

export function* askFor(question: Question): Asking<Answer> {
  return (yield question).answer;
}

export function* isTimeUp(): Asking<boolean> {
  return (yield null).timeIsUp;
}
