/** One reading: the sum of its coefficients times the unknowns should be `value`. */
export type Equation = { readonly coefficients: readonly number[]; readonly value: number };

const SINGULAR = 1e-9;

/**
 * Unknowns that fit all readings best.
 *
 * Formula: normal equations A^T A x = A^T b, Gauss elimination with pivoting.
 * Parameters: equations [-], each with a coefficient for every unknown, scaled so that the coefficients are of one order.
 * Result: the unknowns [as given], in the unit of the values, or null where the readings do not fix them all.
 * Limits: none; fewer readings than unknowns give null.
 * Example: x = 3, x = 4, y = 2: 3.5 and 2.
 * Source: method of least squares, equations of Gauss.
 */
export function leastSquares(equations: readonly Equation[]): readonly number[] | null {
  const count = equations[0]?.coefficients.length ?? 0;
  const rows = Array.from({ length: count }, (_, row) => [
    ...Array.from({ length: count }, (__, column) => equations.reduce((sum, { coefficients: c }) => sum + (c[row] ?? 0) * (c[column] ?? 0), 0)),
    equations.reduce((sum, { coefficients: c, value }) => sum + (c[row] ?? 0) * value, 0),
  ]);
  for (let pivot = 0; pivot < count; pivot += 1) {
    const best = rows.slice(pivot).reduce((at, row, offset) => (Math.abs(row[pivot] ?? 0) > Math.abs(rows[at]?.[pivot] ?? 0) ? pivot + offset : at), pivot);
    const [chosen, swapped] = [rows[best], rows[pivot]];
    if (chosen === undefined || swapped === undefined || !(Math.abs(chosen[pivot] ?? 0) > SINGULAR)) return null;
    rows[best] = swapped;
    rows[pivot] = chosen;
    for (const [index, row] of rows.entries()) {
      if (index === pivot) continue;
      const factor = (row[pivot] ?? 0) / (chosen[pivot] ?? 1);
      for (let column = pivot; column <= count; column += 1) row[column] = (row[column] ?? 0) - factor * (chosen[column] ?? 0);
    }
  }
  return rows.map((row, index) => (row[count] ?? 0) / (row[index] ?? 1));
}
