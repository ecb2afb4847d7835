import { useId, type CSSProperties, type ReactNode } from "react";

export type DrawingProps = {
  readonly title: string;
  /** The drawing in words, for those who cannot see it. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
  /** Set when it lies inside a larger drawing: how far from that one's left edge. */
  readonly x?: number;
  readonly children: ReactNode;
};

/** On a narrow screen a drawing shrinks to this share of its size and scrolls beyond, so that its figures stay legible. */
const LEAST_SHARE = 0.8;

export const leastWidth = (width: number): CSSProperties & Record<"--least", string> => ({ "--least": `${Math.round(width * LEAST_SHARE)}px` });

/** The frame of a still drawing: one picture to a screen reader, with its title and description. */
export function Drawing({ title, description, width, height, x, children }: DrawingProps) {
  const id = useId();
  return (
    <svg
      role="img"
      aria-labelledby={`${id}t ${id}d`}
      {...(x === undefined ? { className: "drawing", style: leastWidth(width) } : { x })}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      fontSize={12}
    >
      <title id={`${id}t`}>{title}</title>
      <desc id={`${id}d`}>{description}</desc>
      {children}
    </svg>
  );
}
