import type { Wording } from "./shape.ts";

/** Broken rules of hire by their code. */
export const HIRE_WORDING: Readonly<Record<string, Wording>> = {
  "supplier-known": { title: "There is a supplier or a place called {name} already.", todo: "Use that one, or give this one another name." },
  "hire-foreign-currency": { title: "These terms are in {currency}, the project is in {project}.", todo: "Hire is kept in the project's own currency. Agree terms in {project}, or hire from another supplier." },
  "terms-overlap": {
    title: "Terms from {latest} are in force already; new ones from {validFrom} would lie over them.",
    todo: "Give a day after {latest}. If those terms were entered wrongly, reverse them first.",
  },
  "terms-not-latest": { title: "Later terms, from {latest}, follow those from {validFrom}.", todo: "Reverse the latest first." },
  "reversed-already": { title: "{number} was reversed before.", todo: "Load the page again to see it." },
  "docket-number-known": { title: "A docket {number} of this kind is entered already.", todo: "Look it up under Dockets. If it was entered wrongly, reverse it first." },
  "docket-ahead": { title: "{on} lies ahead; today is {today}.", todo: "Enter it once it has happened." },
  "docket-before-answered": { title: "{on} lies before {answers}, which is from {answeredOn}.", todo: "Correct the day, or choose another docket it belongs to." },
  "more-than-on-hire": { title: "{item}: {asked} would leave, but only {there} can have been on hire on {on}.", todo: "Count again, check the day, or enter the delivery that is missing." },
  "more-than-callable": { title: "{item}: {asked} called off, but only {there} are on hire and not called off yet.", todo: "Check the count against what is on hire." },
  "docket-answered": { title: "{by} rests on {number}.", todo: "Reverse {by} first." },
  "docket-needed": { title: "Without {number} more would have gone back than came.", todo: "Reverse the returns that rest on it first." },
  "settled-already": { title: "The loss on {number} is settled already.", todo: "Nothing more to do." },
  "no-stand-down": { title: "The terms of {supplier} grant no stand-down on that day.", todo: "If it was agreed in writing, enter terms that say so, then the stand-down." },
  "photos-enough": { title: "A docket carries up to {most} photos.", todo: "Those that are there stay; put further ones on the next docket." },
  "invoice-known": { title: "Invoice {number} of this supplier is entered already.", todo: "Open it in the list. If it was entered wrongly, reverse it first." },
  "invoice-foreign-currency": { title: "The invoice is in {currency}, the project is in {project}.", todo: "Send it back for one in {project}; amounts are never converted here." },
  "no-hire-terms": { title: "There are no terms of {supplier} in force.", todo: "Enter them under Terms and suppliers; without them nothing says what a day costs." },
  "nothing-on-hire": { title: "Nothing that columns need is on hire from {supplier}.", todo: "A plan is made for what a delivery docket has brought, the terms have a rate for, and columns are known to need: clamps and wedges by their clamp layout, all else by Hire, Gear per column." },
  "hire-falls-short": { title: "More is needed than is there, and no more can be had in time.", todo: "Check the planned days of the columns under Pours, or order now." },
  "return-call-too-late": { title: "The return on {collect} had to be called by {call}.", todo: "Make a new plan; it starts from today." },
  "return-plan-replaced": { title: "A newer plan was ordered on {ordered}.", todo: "Load the page again and accept from that one." },
  "return-plan-outdated": { title: "This plan no longer holds.", todo: "What columns need or what is on hire has changed since. Make a new plan and accept from that one." },
  "no-return-plan-in-time": { title: "No plan was found in the time there was.", todo: "Try again, or choose fewer days on which a truck may come." },
  "return-trips-too-few": { title: "{trips} trips a day cannot carry what must go.", todo: "Allow more, or a larger truck." },
};
