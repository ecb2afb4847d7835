import { columnSignPaths, type ColumnSignInput } from "./column-sign-paths.ts";
import { SignPaths } from "./sign-paths.tsx";

export type ColumnSignProps = ColumnSignInput & {
  /** Read out in place of the drawing; leave out where the words stand beside it. */
  readonly label?: string;
};

/** The sign of a column is the column: a small plan section that shows what has been done to it. */
export function ColumnSign({ label, ...input }: ColumnSignProps) {
  const { size } = input;
  const { parts } = columnSignPaths(input);
  const named = label === undefined ? { "aria-hidden": true } : { role: "img", "aria-label": label };
  return (
    <svg {...named} className="sign shrink-0 overflow-visible" width={size} height={size} viewBox={`${-size / 2} ${-size / 2} ${size} ${size}`}>
      <SignPaths parts={parts} />
    </svg>
  );
}
