import type { CautionKey } from "#lib/trade/shutter/form-set.ts";

/** Said beside every form set and clamp layout. */
export const CAUTION_WORDING: Readonly<Record<CautionKey, string>> = {
  "competent-person": "A competent person must check it against the project's formwork design and the codes that apply here.",
  "hirer-data": "Clamp forces and sizes are those entered for the hirer's gear: compare them with the hirer's own data for what is on site.",
  "permissible-stress": "Ply and timber are checked with permissible stresses as entered, all factors included; do not mix in limit-state values.",
  "rise-rate-limit": "It holds only while the concrete rises no faster, is no colder and is of the kind stated in the inputs.",
  "props-and-wind": "Props, bracing, wind and the strength of the slab under the props are not computed.",
  "seal-and-hold-down": "Seal the foot and every sheet joint and hold the form down: concrete that gets under the panels lifts them, by how much is in the working. Faces are taken as upright; a battered face is lifted as well and has to be designed.",
};
