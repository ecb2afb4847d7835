import type { Wording } from "./shape.ts";

/** Broken rules of ply and timber orders by their code. */
export const ORDER_WORDING: Readonly<Record<string, Wording>> = {
  "order-to-come": { title: "{on} is still to come; on site it is {today}.", todo: "Give the day the order was given, today at the latest." },
  "order-known": { title: "There is an order {number} with {supplier} already.", todo: "Open that one, or check the number on the merchant's confirmation." },
  "order-recorded-already": { title: "Order {number} is written down already.", todo: "See it in the list; nothing was entered twice." },
  "order-has-ended": { title: "Order {number} is {how}.", todo: "Write a new order for what is still needed, or for what has come after all." },
  "order-received": { title: "Something of order {number} has come: docket {docket}.", todo: "Close it if the rest will not come; reverse the receipt first if it was entered by mistake." },
  "order-nothing-came": { title: "Nothing of order {number} has come.", todo: "Cancel it instead." },
  "receipt-before-order": { title: "Received on {on}, but order {number} was given on {ordered}.", todo: "Check the day on the docket, and whether it belongs to this order." },
  "receipt-to-come": { title: "{on} is still to come; on site it is {today}.", todo: "Give the day it came, today at the latest." },
  "receipt-known": { title: "Docket {docket} is received against order {number} already.", todo: "See it below; if it was entered wrong, it is reversed and entered anew." },
  "receipt-recorded-already": { title: "Docket {docket} is received already.", todo: "See it below; nothing was entered twice." },
  "receipt-not-ordered": { title: "{item} is not on order {number}.", todo: "Receive it against the order it belongs to, or write one for it." },
  "receipt-over": {
    title: "{item}: {ordered} ordered, {before} taken before, {taken} now: {over} over.",
    todo: "Count again; if more was truly taken, say why. Otherwise send the rest back.",
  },
  "receipt-refused-why": { title: "{item}: {refused} sent back.", todo: "Say what was wrong with them." },
  "receipt-reversed-already": { title: "Docket {docket} was reversed before.", todo: "Load the page again to see it." },
  "movement-of-receipt": { title: "This came with docket {docket} of order {number}.", todo: "Reverse the receipt on the order's page; the pieces leave with it." },
  "cut-up-no-material": { title: "Only sheets and timber are cut up.", todo: "Clamps, props and panels are moved, lost or scrapped under Gear." },
};
