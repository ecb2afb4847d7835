import { z } from "zod";
import { returnSettings } from "#lib/contracts/hire/returns.ts";
import type { Day } from "#lib/kernel/days.ts";
import type { ReturnOrder, Stay } from "#lib/trade/planning/returns/return-order.ts";

const day = z.string().transform((text) => text as Day);
const perItem = { itemId: z.string(), item: z.string() };

/** What a plan was computed from, whole, so that it can be told whether it still holds and computed again. Costs in hundredths of a minor unit. */
export const planInput = z.object({
  settings: returnSettings,
  /** Today, then every day a truck may come. */
  dates: z.array(day),
  /** In the order of their trucks; for each date, the last day on which a return to them may be called. */
  suppliers: z.array(z.object({ supplierId: z.string(), supplier: z.string(), callOn: z.array(day) })),
  order: z.custom<ReturnOrder>((value) => typeof value === "object" && value !== null),
  /** By day from the first date: what the columns need with the float, and what is on hire to cover it. */
  need: z.array(z.object({ ...perItem, needed: z.array(z.number()), owned: z.number(), hired: z.array(z.object({ supplierId: z.string(), count: z.number() })) })),
  pinned: z.array(z.object({ ...perItem, on: day, needed: z.number(), spare: z.number(), columns: z.array(z.string()) })),
  /** Needed before more can be had. */
  short: z.array(z.object({ ...perItem, on: day, needed: z.number(), there: z.number() })),
  /** On hire, but nothing is known of what columns need of it. */
  leftOut: z.array(z.object({ supplierId: z.string(), supplier: z.string(), ...perItem, hired: z.number(), why: z.enum(["no-need", "no-rate"]) })),
});
export type PlanInput = z.output<typeof planInput>;

const cost = z.object({ hire: z.number(), handling: z.number(), trips: z.number(), total: z.number() });
export const planResult = z.object({
  stays: z.custom<readonly Stay[]>((value) => Array.isArray(value)),
  trips: z.array(z.array(z.number())),
  cost,
  bound: z.number(), gap: z.number(), proven: z.boolean(),
  justInTime: cost.nullable(), keepToLast: cost.nullable(),
});
export type PlanResult = z.output<typeof planResult>;
