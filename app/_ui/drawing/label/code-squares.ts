import { create } from "qrcode";

/** Light squares that a reader wants on every side of the code. ISO/IEC 18004, 6.3.8 (from memory): four. */
export const QUIET_SQUARES = 4;

export type CodeSquares = { /** Squares along one side, without the quiet margin. */ readonly size: number; /** Dark squares as an SVG path, one unit a square. */ readonly path: string };

/** The QR code of an address. Level Q: it is still read with about a quarter of it dirty or torn off. */
export function codeSquares(address: string): CodeSquares {
  const { size, data } = create(address, { errorCorrectionLevel: "Q" }).modules;
  const runs: string[] = [];
  for (let row = 0; row < size; row += 1) {
    for (let from = 0; from < size; from += 1) {
      let to = from;
      while (to < size && data[row * size + to]) to += 1;
      if (to > from) runs.push(`M${from} ${row}h${to - from}v1h${from - to}z`);
      from = to;
    }
  }
  return { size, path: runs.join("") };
}
