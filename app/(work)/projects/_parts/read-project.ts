import { choiceOf, textOf } from "#app/_ui/form/read-form.ts";

/** What `ProjectFields` posts, as the contract of a project wants it. */
export const readProject = (data: FormData) => ({
  name: textOf(data, "name"),
  site: textOf(data, "site"),
  timeZone: textOf(data, "timeZone").trim(),
  units: choiceOf(data, "units", ["metric", "us"]),
  currency: textOf(data, "currency"),
  workingDays: data.getAll("workingDays").map(Number),
  startsOn: textOf(data, "startsOn") || null,
});
