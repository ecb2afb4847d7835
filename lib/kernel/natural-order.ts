/** Orders names as a person does: A2 before A10, B.3 between B and C. Ties keep code-point order, so the order is total. */
export function naturalOrder(left: string, right: string): number {
  const leftParts = left.match(/\d+|\D+/g) ?? [];
  const rightParts = right.match(/\d+|\D+/g) ?? [];
  for (let index = 0; index < Math.min(leftParts.length, rightParts.length); index += 1) {
    const a = leftParts[index] ?? "";
    const b = rightParts[index] ?? "";
    const bothNumbers = /^\d/.test(a) && /^\d/.test(b);
    const order = bothNumbers ? Number(a) - Number(b) : compare(a.toUpperCase(), b.toUpperCase());
    if (order !== 0) return order;
  }
  return leftParts.length - rightParts.length || compare(left, right);
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
