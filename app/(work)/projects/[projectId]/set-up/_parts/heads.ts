/** What a column stops under: it decides the form height. */
export const HEADS = [
  { value: "slab", label: "Slab", note: "the form stops under the slab" },
  { value: "beam", label: "Beam", note: "the form stops under the beam" },
] as const;
