/** A field's start value: nothing where an entry was left empty or is no number. */
export const known = (value: number | null | undefined): number | undefined =>
  value === null || value === undefined || Number.isNaN(value) ? undefined : value;
