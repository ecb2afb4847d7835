import { hireChargeRows } from "./parts/hire-charges.ts";
import { returnPlanRows } from "./parts/return-plans.ts";
import type { Row } from "./parts/row.ts";

/** What hire costs to work out, and the plans of what goes back when. */
export const run = async (): Promise<Row[]> => [...hireChargeRows(), ...(await returnPlanRows())];
