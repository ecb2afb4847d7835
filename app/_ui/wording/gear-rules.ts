import type { Wording } from "./rules.ts";

/** Broken rules of the gear ledger by their code. */
export const GEAR_WORDING: Readonly<Record<string, Wording>> = {
  "gear-moves-nothing": { title: "Nothing would move.", todo: "Enter how many pieces of at least one item." },
  "gear-not-whole": { title: "{quantity} is not a count of pieces.", todo: "Enter a whole number from 1 to {most}." },
  "gear-unbalanced": { title: "{item}: what leaves one place has to arrive at another.", todo: "Give both places; {sum} pieces are left over." },
  "gear-not-there": {
    title: "{item}: {there} at {place}, {asked} asked for.",
    todo: "Move what is there, look where the rest is under What is where, or count the place.",
  },
  "gear-more-than-came": { title: "{item}: {asked} would go back to {place}, but only {out} came from there.", todo: "Check the count, and from whom the rest was." },
  "panel-twice": { title: "{item} exists once, and is somewhere else already.", todo: "Open the panel to see where it is, and move it from there to {place}." },
  "movement-is-reversal": { title: "This took back another movement.", todo: "Enter the movement anew if it did happen." },
  "movement-reversed-already": { title: "This movement was taken back before.", todo: "Load the page again to see it." },
  "movement-follows-tick": { title: "This followed from a tick on a column.", todo: "Withdraw the tick on the column's page; the gear goes back with it." },
  "place-not-for-moving": { title: "Gear is not simply moved to or from {place}.", todo: "What is lost or found is settled by a count, what is scrapped on its panel, hired gear by its docket." },
  "gear-item-known": { title: "There is an item called {name} already.", todo: "Use that one, or give this one another name." },
  "gear-place-known": { title: "There is a place called {name} already.", todo: "Use that one, or give this one another name." },
};
