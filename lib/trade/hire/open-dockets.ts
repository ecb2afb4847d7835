/** A docket as far as the chain goes: what it says, and which one it answers. */
export type ChainDocket = {
  readonly id: string; readonly kind: string; readonly answersId: string | null;
  readonly lines: readonly { readonly itemId: string; readonly quantity: number; readonly damaged: number; readonly dirty: number }[];
};

/** What a docket still waits for. */
export type OpenPart = {
  readonly code: "to-deliver" | "to-collect" | "no-yard-count" | "yard-counts-fewer" | "yard-counts-more" | "yard-claims-damage" | "unsettled";
  readonly itemId: string | null;
  readonly quantity: number;
};

/**
 * The open ends of a chain order → delivery → off-hire call → return → yard count, by docket: pieces ordered and not
 * delivered, called off and not collected, returned and counted otherwise in the supplier's yard.
 */
export function openParts(dockets: readonly ChainDocket[]): ReadonlyMap<string, readonly OpenPart[]> {
  const answering = (docket: ChainDocket, kind: string): ChainDocket[] => dockets.filter((other) => other.answersId === docket.id && other.kind === kind);
  return new Map(dockets.map((docket) => [docket.id, openOf(docket, answering)]));
}

const piecesOf = (dockets: readonly ChainDocket[], itemId: string): number =>
  dockets.reduce((sum, { lines }) => sum + lines.reduce((own, line) => own + (line.itemId === itemId ? line.quantity : 0), 0), 0);

function openOf(docket: ChainDocket, answering: (docket: ChainDocket, kind: string) => ChainDocket[]): OpenPart[] {
  const rest = (code: OpenPart["code"], by: readonly ChainDocket[]): OpenPart[] =>
    docket.lines.map(({ itemId, quantity }) => ({ code, itemId, quantity: quantity - piecesOf(by, itemId) })).filter(({ quantity }) => quantity > 0);
  switch (docket.kind) {
    case "order": return rest("to-deliver", answering(docket, "delivery"));
    case "off-hire": return rest("to-collect", answering(docket, "return"));
    case "missing": return answering(docket, "settlement").length > 0 ? [] : [{ code: "unsettled", itemId: null, quantity: docket.lines.reduce((sum, { quantity }) => sum + quantity, 0) }];
    case "return": return againstYard(docket, answering(docket, "yard-count"));
    default: return [];
  }
}

function againstYard(docket: ChainDocket, counts: readonly ChainDocket[]): OpenPart[] {
  if (counts.length === 0) return [{ code: "no-yard-count", itemId: null, quantity: docket.lines.reduce((sum, { quantity }) => sum + quantity, 0) }];
  return docket.lines.flatMap(({ itemId, quantity, damaged }): OpenPart[] => {
    const apart = piecesOf(counts, itemId) - quantity;
    const claimed = counts.reduce((sum, { lines }) => sum + lines.reduce((own, line) => own + (line.itemId === itemId ? line.damaged : 0), 0), 0) - damaged;
    return [
      ...(apart === 0 ? [] : [{ code: apart < 0 ? ("yard-counts-fewer" as const) : ("yard-counts-more" as const), itemId, quantity: Math.abs(apart) }]),
      ...(claimed > 0 ? [{ code: "yard-claims-damage" as const, itemId, quantity: claimed }] : []),
    ];
  });
}
