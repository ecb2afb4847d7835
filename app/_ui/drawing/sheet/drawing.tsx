import { useId, type ReactNode } from "react";

export type DrawingProps = {
  readonly title: string;
  /** The drawing in words, for those who cannot see it. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly className?: string;
  readonly children: ReactNode;
};

/** The frame of a still drawing: one picture to a screen reader, with its title and description. */
export function Drawing({ title, description, width, height, className = "", children }: DrawingProps) {
  const id = useId();
  return (
    <svg
      role="img"
      aria-labelledby={`${id}t ${id}d`}
      className={`drawing ${className}`}
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
