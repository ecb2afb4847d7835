import { groupBy } from "#lib/kernel/group-by.ts";
import type { KeptGathering, MoveDraft } from "./kept-item.ts";

type Lines = KeptGathering["lines"];

/** One entry refused for one of its lines, made into an entry for each thing and place, as if they had been ticked one by one. */
export const splitGathering = ({ kind, to, lines, readAt, happenedAt }: KeptGathering, nameOf: (lines: Lines) => string): MoveDraft[] =>
  [...groupBy(lines, ({ itemId, fromId }) => `${itemId} ${fromId}`).values()].map((own) => ({ kind, to, readAt, happenedAt, lines: own, about: nameOf(own) }));

export const mayBeSplit = ({ lines: [first, ...others] }: KeptGathering): boolean => others.some(({ itemId, fromId }) => itemId !== first?.itemId || fromId !== first.fromId);
