import type { Day } from "#lib/kernel/days.ts";
import type { Share } from "./terms/hire-terms.ts";

type OfItem = { readonly docketId: string; readonly itemId: string; readonly on: Day; readonly quantity: number };

/** Pieces that came on a delivery docket, as counted at the gate. */
export type Delivered = OfItem & { readonly dispatchedOn: Day | null };
/** Pieces whose hire was called off, by number and name, whether or not they have left. */
export type CalledOff = OfItem;
/** Pieces that left on a return docket; `callId` names the call they were called off by, where somebody wrote it down. */
export type Returned = OfItem & { readonly callId: string | null; readonly damaged: number; readonly dirty: number };
/** Pieces reported missing; settled once the loss is paid. */
export type Missing = OfItem & { readonly settledOn: Day | null };
/** A trip the supplier made and charges for. */
export type Trip = { readonly docketId: string; readonly on: Day; readonly kind: "delivery" | "collection" | "failed-collection" };
/** Hire reduced by written agreement over some days, both included; of one item or of everything. */
export type StandDown = { readonly id: string; readonly from: Day; readonly to: Day; readonly share: Share; readonly itemId: string | null };

/** What happened between us and one supplier on one project; nothing that was reversed. */
export type HireFacts = {
  readonly delivered: readonly Delivered[];
  readonly calledOff: readonly CalledOff[];
  readonly returned: readonly Returned[];
  readonly missing: readonly Missing[];
  readonly trips: readonly Trip[];
  readonly standDowns: readonly StandDown[];
};
export const NO_FACTS: HireFacts = { delivered: [], calledOff: [], returned: [], missing: [], trips: [], standDowns: [] };
