import { MM_PER_INCH } from "./us-units.ts";

/** A length in whole sixteenths of an inch, as a tape shows it. */
export const sixteenths = (lengthMm: number): number => Math.round((lengthMm / MM_PER_INCH) * 16);

/** Sixteenths as whole inches and the shortest fraction: `3/4`, `19 1/2`, `8`. */
export function inchFigure(count: number): string {
  const whole = Math.floor(count / 16);
  let [over, under] = [count - whole * 16, 16];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  if (over === 0) return String(whole);
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}
