import { codeSquares, QUIET_SQUARES } from "./code-squares.ts";

export type LabelDrawingProps = {
  /** The address the code holds, whole: "https://…". */
  readonly address: string;
  /** Panel mark, set name or grid reference: in the largest letters that fit. */
  readonly name: string;
  /** One line below: size, panels or level. */
  readonly detail: string;
};

/** The label and its code, quiet margin included, in millimetres. */
const WIDTH = 62, HEIGHT = 63, CODE = 44;
const TEXT_WIDTH = WIDTH - 6;
/** The widest a letter of the bold face is, as a share of its size. */
const LETTER = 0.68;
const fitted = (text: string, most: number): number => Math.min(most, TEXT_WIDTH / (LETTER * Math.max(1, text.length)));

/** A label to hang on a panel, a set or a column: the code that opens it on a phone, and its name for those who stand before it. */
export function LabelDrawing({ address, name, detail }: LabelDrawingProps) {
  const { size, path } = codeSquares(address);
  const square = CODE / (size + 2 * QUIET_SQUARES);
  return (
    <svg role="img" aria-label={`Code of ${name}, ${detail}`} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} className="block h-auto w-full" textAnchor="middle">
      <rect width={WIDTH} height={HEIGHT} fill="#fff" />
      <path d={path} fill="#000" shapeRendering="crispEdges" transform={`translate(${(WIDTH - CODE) / 2 + QUIET_SQUARES * square} ${QUIET_SQUARES * square}) scale(${square})`} />
      <text x={WIDTH / 2} y={53} fontSize={fitted(name, 12)} fontWeight={700} fill="#000">{name}</text>
      <text x={WIDTH / 2} y={59.5} fontSize={fitted(detail, 4.2)} fill="#000">{detail}</text>
    </svg>
  );
}
