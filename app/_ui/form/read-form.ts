/** A posted form or the query of an address. */
export type Entries = { readonly get: (name: string) => FormDataEntryValue | null };

/** Entries of a posted form as a contract wants them; what is missing or no number is passed on, to be refused there. */
export const textOf = (data: Entries, name: string): string => {
  const value = data.get(name);
  return typeof value === "string" ? value : "";
};

export const numberOf = (data: Entries, name: string): number => {
  const text = textOf(data, name).trim();
  return text === "" ? Number.NaN : Number(text);
};

/** Null where the field was left empty. */
export const numberOrNull = (data: Entries, name: string): number | null =>
  textOf(data, name).trim() === "" ? null : numberOf(data, name);

export const isTicked = (data: Entries, name: string): boolean => data.get(name) !== null;

/** One of the choices, or the first when something else was posted. */
export function choiceOf<Choice extends string>(data: Entries, name: string, choices: readonly [Choice, ...Choice[]]): Choice {
  const text = textOf(data, name);
  return choices.find((choice) => choice === text) ?? choices[0];
}
