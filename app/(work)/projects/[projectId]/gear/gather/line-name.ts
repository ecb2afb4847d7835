/** `12 × Wedge`, or a panel by the label on its back. */
export function lineName(items: Readonly<Record<string, string>>, itemId: string, quantity: number): string {
  const name = items[itemId] ?? "item";
  return name.startsWith("P-") ? `Panel ${name}` : `${quantity} × ${name}`;
}
