import type { CSSProperties } from "react";

/** On paper the drawing gives way to the rows below it, so that the whole calculation keeps to one page. */
export const drawnHigh = (mostMm: number, rows: number): CSSProperties & Record<"--drawing", string> => ({ "--drawing": `${Math.max(34, mostMm - rows * 3.1)}mm` });
