import type { PressureClause } from "../pour-conditions.ts";
import type { Working } from "../working.ts";

/** The answer of one pressure method: the largest pressure, the rule that set it, and how. */
export type LimitingPressure<Unit> = { readonly limit: Unit; readonly governs: PressureClause; readonly working: Working };
