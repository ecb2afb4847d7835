/**
 * Whole millimetres, as a saw plan counts them. A length is never less than the piece, since the form has to come up to
 * its height; of a width, half a millimetre is lost in the saw (common practice, no source).
 */
export const wholeLength = (millimetres: number): number => Math.ceil(millimetres - 1e-6);
export const wholeWidth = (millimetres: number): number => Math.round(millimetres);
