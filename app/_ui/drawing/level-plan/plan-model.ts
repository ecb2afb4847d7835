/** A column on the plan of one level; x to the right and y upwards, in millimetres from the grid's origin. */
export type PlanColumn = {
  readonly id: string;
  /** Short name drawn beside it: grid reference or mark. */
  readonly name: string;
  readonly x_mm: number;
  readonly y_mm: number;
  readonly shape: "rectangle" | "circle";
  readonly width_mm: number;
  readonly depth_mm: number;
  /** Anticlockwise. */
  readonly rotation_deg?: number;
  readonly done: number;
  readonly flagged: boolean;
  /** Left out by a filter: drawn faintly, still reachable. */
  readonly isFaint?: boolean;
};

/** A grid line: `x` lines run up the sheet at an offset from the origin to the right, `y` lines across at an offset upwards. */
export type GridAxis = { readonly name: string; readonly direction: "x" | "y"; readonly offset_mm: number };

export type Bounds = { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };

/** Everything drawn, with a column's width around it; a lone column still gets room. */
export function boundsOf(columns: readonly PlanColumn[], axes: readonly GridAxis[]): Bounds {
  const xs = [...columns.map(({ x_mm }) => x_mm), ...axes.filter(({ direction }) => direction === "x").map(({ offset_mm }) => offset_mm)];
  const ys = [...columns.map(({ y_mm }) => y_mm), ...axes.filter(({ direction }) => direction === "y").map(({ offset_mm }) => offset_mm)];
  const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), values[0] ?? 0);
  const most = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), values[0] ?? 0);
  const room = 600;
  return { left: least(xs) - room, right: most(xs) + room, bottom: least(ys) - room, top: most(ys) + room };
}

const STANDS_ON_MM = 200;

/** The columns standing on a grid line: those it cuts, or misses by less than a hand's breadth or two. */
export function columnsOnAxis(columns: readonly PlanColumn[], { direction, offset_mm }: GridAxis): readonly PlanColumn[] {
  return columns.filter((column) => {
    const half = Math.max(column.width_mm, column.depth_mm) / 2;
    return Math.abs((direction === "x" ? column.x_mm : column.y_mm) - offset_mm) <= half + STANDS_ON_MM;
  });
}

export type Direction = "left" | "right" | "up" | "down";

/** The column a person would go to next in a direction: near, and rather straight ahead than aside. */
export function neighbourOf(columns: readonly PlanColumn[], from: PlanColumn, direction: Direction): PlanColumn | undefined {
  const sideways = direction === "left" || direction === "right";
  const sign = direction === "right" || direction === "up" ? 1 : -1;
  let best: PlanColumn | undefined;
  let least = Infinity;
  for (const column of columns) {
    const dx = column.x_mm - from.x_mm;
    const dy = column.y_mm - from.y_mm;
    const ahead = sign * (sideways ? dx : dy);
    const aside = Math.abs(sideways ? dy : dx);
    if (ahead <= 1 || aside > ahead) continue;
    const cost = ahead + 2 * aside;
    if (cost < least) [best, least] = [column, cost];
  }
  return best;
}
