import loadHighs from "highs";

// Plain JavaScript, so that a worker runs it with no loader for TypeScript.
const highs = await loadHighs();
const { modelStatus, objectiveSense, basisStatus } = highs.constants;
const UNANSWERED = { status: "unknown", objective: Infinity, bound: -Infinity, values: new Float64Array(), duals: new Float64Array(), basis: null };
const HELD_BACK = new Set([modelStatus.timeLimit, modelStatus.solutionLimit, modelStatus.interrupted, modelStatus.objectiveTarget]);

// One for all: making a new one costs more than a small solve. It goes when the worker does.
const model = highs.createModel();
model.options.set({ output_flag: false, random_seed: 1 });
const WHOLE_DEFAULTS = { mip_rel_gap: 0, mip_abs_gap: 1e-6, mip_max_nodes: 2147483647, mip_detect_symmetry: true, mip_heuristic_effort: 0.05 };
// With a good solution in hand: little search for better ones, and none for symmetry.
const FOR_PROOF = { mip_detect_symmetry: false, mip_heuristic_effort: 0.01 };

function asInput(model) {
  return {
    numCols: model.cost.length,
    numRows: model.rowLower.length,
    sense: objectiveSense.minimize,
    offset: 0,
    colCost: model.cost,
    colLower: model.lower,
    colUpper: model.upper,
    rowLower: model.rowLower,
    rowUpper: model.rowUpper,
    matrix: { format: "csc", numRows: model.rowLower.length, numCols: model.cost.length, starts: model.starts, indices: model.indices, values: model.values },
    ...(model.whole ? { integrality: new Array(model.cost.length).fill(1) } : {}),
  };
}

export function solveModel({ model: data, from, hint, nodeLimit, stopAtGap, isNearlyThere }, timeLimitMs) {
  model.clearSolver();
  model.passModel(asInput(data));
  model.zeroAllClocks();
  model.options.set({ time_limit: Math.max(0.01, timeLimitMs / 1000) });
  if (data.whole) model.options.set({ ...WHOLE_DEFAULTS, ...(stopAtGap ? { mip_rel_gap: stopAtGap } : {}), ...(nodeLimit ? { mip_max_nodes: nodeLimit } : {}), ...(isNearlyThere ? FOR_PROOF : {}) });
  if (from) model.setBasis({ colStatus: grown(from.columns, data.cost.length, basisStatus.lower), rowStatus: grown(from.rows, data.rowLower.length, basisStatus.basic) });
  if (hint) model.setSolution({ colValue: hint });
  model.run();
  return data.whole ? wholeAnswer() : linearAnswer();
}

function wholeAnswer() {
  const status = model.getModelStatus();
  if (status === modelStatus.infeasible) return { ...UNANSWERED, status: "infeasible" };
  const objective = model.info.get("objective_function_value");
  const found = status === modelStatus.optimal || (HELD_BACK.has(status) && Number(model.info.get("primal_solution_status")) === 2);
  if (!found) return { ...UNANSWERED, bound: finite(model.info.get("mip_dual_bound"), -Infinity) };
  const bound = finite(model.info.get("mip_dual_bound"), -Infinity);
  return { ...UNANSWERED, status: status === modelStatus.optimal && bound >= objective - 1e-6 * Math.max(1, Math.abs(objective)) ? "optimal" : "feasible", objective, bound, values: model.getSolution().colValue };
}

function linearAnswer() {
  const status = model.getModelStatus();
  if (status === modelStatus.infeasible) return { ...UNANSWERED, status: "infeasible" };
  if (status !== modelStatus.optimal) return UNANSWERED;
  const { colValue, rowDual } = model.getSolution();
  const { colStatus, rowStatus } = model.getBasis();
  const objective = model.getObjectiveValue();
  return { status: "optimal", objective, bound: objective, values: colValue, duals: rowDual, basis: { columns: Int32Array.from(colStatus), rows: Int32Array.from(rowStatus) } };
}

const grown = (held, length, rest) => Array.from({ length }, (_, index) => (index < held.length ? held[index] : rest));
const finite = (value, otherwise) => (typeof value === "number" && Math.abs(value) < 1e25 ? value : otherwise);
