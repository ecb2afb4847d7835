import type { Wording } from "./shape.ts";

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
  "panel-ended": { title: "{panel} is {how} already.", todo: "Take another panel; if that entry is wrong, withdraw it on the panel's page." },
  "panel-one-face": { title: "{panel} has film on one face only.", todo: "Repair or demote it instead of turning it." },
  "panel-turned-already": { title: "{panel} has been turned before: both faces are used.", todo: "Repair, demote or scrap it." },
  "panel-demoted-already": { title: "{panel} is demoted already.", todo: "Scrap it when it is no longer good for hidden faces." },
  "panel-cut-larger": { title: "{piece} does not come out of {panel}, which is {size}.", todo: "Cut smaller pieces, the saw cut between them counted, or take a larger panel." },
  "panel-event-withdrawn": { title: "This entry was withdrawn before.", todo: "Load the page again to see it." },
  "panel-in-other-set": { title: "{panel} belongs to set {set}.", todo: "Take it out of {set} first, or choose another panel." },
  "set-name-taken": { title: "There is a set called {name} already.", todo: "Use that one, or give this one another name." },
  "set-does-not-fit": { title: "{set} does not close {column}: face {face} needs {wanted} and has {given}.", todo: "Choose a set of that size, or change the panel of this face." },
  "set-stands-on-column": { title: "The set stands on {column}.", todo: "Set the column back first; the panels come off with it." },
  "column-has-set": { title: "{column} has a set already.", todo: "Take that one off the column first." },
  "column-stripped-already": { title: "{column} is stripped already.", todo: "Choose a column that is still to be formed." },
  "column-without-form": { title: "No form set could be designed for {column}.", todo: "Open the column to see which limit stands against it." },
  "shortfall-only-dismissed": { title: "{item} is not added to the ledger here.", todo: "See where the ledger has it and move it there, then dismiss this entry with a reason." },
  "gear-item-known": { title: "There is an item called {name} already.", todo: "Use that one, or give this one another name." },
  "gear-place-known": { title: "There is a place called {name} already.", todo: "Use that one, or give this one another name." },
};
