import { CUTTING_WORDING } from "./cutting-rules.ts";
import { GEAR_WORDING } from "./gear-rules.ts";
import { HIRE_WORDING } from "./hire-rules.ts";
import { ORDER_WORDING } from "./order-rules.ts";
import type { Wording } from "./shape.ts";

/** Broken rules by their code; whoever adds a rule adds its words here. */
export const RULE_WORDING: Readonly<Record<string, Wording>> = {
  ...GEAR_WORDING,
  ...CUTTING_WORDING,
  ...HIRE_WORDING,
  ...ORDER_WORDING,
  "wrong-sign-in": {
    title: "E-mail and password do not match.",
    todo: "Check both and try again; if the password is lost, ask the owner of your company for a link.",
  },
  "too-many-sign-ins": {
    title: "Too many tries.",
    todo: "Wait {minutes} minutes and try again.",
  },
  "wrong-current-password": {
    title: "The current password is not right.",
    todo: "Enter the password you signed in with, then the new one.",
  },
  "email-in-use": {
    title: "This e-mail address is in use already.",
    todo: "Sign in with it, or take another address.",
  },
  "person-not-active": {
    title: "{name} is deactivated.",
    todo: "Reactivate first, then make the link.",
  },
  "too-many-tokens": {
    title: "You hold {most} tokens already.",
    todo: "Revoke one that is no longer used.",
  },
  "engineering-limit": {
    title: "No answer: {limit} is outside what the method covers.",
    todo: "{message}",
  },
  "last-owner": {
    title: "A company needs at least one owner.",
    todo: "Make somebody else owner first, then change this role.",
  },
  "founding-closed": {
    title: "No further company can be set up here.",
    todo: "Ask the owner of your company for an invitation.",
  },
  "project-name-taken": {
    title: "There is a project called {name} already.",
    todo: "Open that one, or give this one another name.",
  },
  "clamp-name-taken": {
    title: "There is a clamp kind called {name} already.",
    todo: "Change that one, or give this one another name.",
  },
  "still-used-by-columns": {
    title: "Columns still use this, so it cannot be taken out of the {what}.",
    todo: "Move or remove those columns first.",
  },
  "level-not-above": {
    title: "{to} does not lie above {from}.",
    todo: "Choose a higher level for the head of the column, or correct the elevations in Set-up.",
  },
  "column-already-stood": {
    title: "{column} is stood already.",
    todo: "Give a reason for changing it now, and tell the crew.",
  },
  "too-many-questions": { title: "{most} questions a minute are answered.", todo: "Ask again in {seconds} s." },
  "not-reached": {
    title: "The server was not reached.",
    todo: "Your entries are still here. Check the connection and send them again.",
  },
  "nothing-to-import": {
    title: "There is nothing to import.",
    todo: "Every row is refused or known already. Correct the rows named in the preview and load the file again.",
  },
};
