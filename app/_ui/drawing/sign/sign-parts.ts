import { hasDone } from "#lib/trade/progress/stages.ts";

export type SignPartName = "dashed" | "outline" | "strips" | "ply" | "clamps" | "hatch" | "cross-halo" | "cross" | "solid" | "flag";
export type SignPart = { readonly name: SignPartName; readonly d: string; readonly stroke: number; readonly dash?: string };

/** The sign in its own pixels, centred on 0,0: the concrete is `w` by `h`, drawn ply and bars are `t` thick. */
export type SignShape = {
  readonly shape: "rectangle" | "circle";
  readonly w: number;
  readonly h: number;
  readonly t: number;
  readonly done: number;
  readonly flagged: boolean;
};

/** Bars stand out beyond the ply by this many thicknesses, the tail end included. */
export const BAR_REACH = 1.9;

const n = (value: number): string => String(Math.round(value * 100) / 100);
const box = (x: number, y: number, w: number, h: number): string => `M${n(x)} ${n(y)}h${n(w)}v${n(h)}h${n(-w)}z`;
const around = (w: number, h: number): string => box(-w / 2, -h / 2, w, h);
const circle = (r: number): string => `M${n(-r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0z`;

const concreteOf = ({ shape, w, h }: SignShape): string => (shape === "circle" ? circle(w / 2) : around(w, h));

/** One strip to the right and one below, clear of the outline. */
function stripsOf({ w, h, t }: SignShape): string {
  const gap = t * 0.8;
  return box(w / 2 + gap, -h / 2 + t * 0.5, t, h) + box(-w / 2 - t * 0.5, h / 2 + gap, w, t);
}

function plyOf({ shape, w, h, t }: SignShape): string {
  return shape === "circle" ? circle(w / 2) + circle(w / 2 + t) : around(w, h) + around(w + 2 * t, h + 2 * t);
}

/** Four bars, each flush at its hook end and running past the corner at its tail. */
function clampsOf({ w, h, t }: SignShape): string {
  const x = w / 2 + t;
  const y = h / 2 + t;
  const tail = t * BAR_REACH;
  return [
    box(-x, -y - t, 2 * x + tail, t),
    box(x, -y, t, 2 * y + tail),
    box(-x - tail, y, 2 * x + tail, t),
    box(-x - t, -y - tail, t, 2 * y + tail),
  ].join("");
}

/** Strokes rising to the right, cut off at the concrete's edge. */
function hatchOf({ shape, w, h, t }: SignShape): string {
  const gap = Math.max(3.2, t * 1.7);
  const reach = (w + h) / 2;
  const lines: string[] = [];
  for (let k = -Math.floor(reach / gap) * gap + gap / 2; k < reach; k += gap) {
    const span = shape === "circle" ? chord(w / 2, k) : crossing(w / 2, h / 2, k);
    if (span) lines.push(`M${n(span[0])} ${n(k - span[0])}L${n(span[1])} ${n(k - span[1])}`);
  }
  return lines.join("");
}

/** From where to where along x the line x + y = k runs inside the half-sizes a, b. */
function crossing(a: number, b: number, k: number): readonly [number, number] | null {
  const from = Math.max(-a, k - b);
  const to = Math.min(a, k + b);
  return to - from > 0.3 ? [from, to] : null;
}

function chord(r: number, k: number): readonly [number, number] | null {
  const half = r * r / 2 - (k * k) / 4;
  return half > 0.1 ? [k / 2 - Math.sqrt(half), k / 2 + Math.sqrt(half)] : null;
}

function crossOf({ w, h, t }: SignShape): string {
  const r = Math.max(t * 1.5, Math.min(w, h) * 0.32);
  return `M${n(-r)} 0H${n(r)}M0 ${n(-r)}V${n(r)}`;
}

function flagOf({ w, h, t }: SignShape): string {
  const right = w / 2 + t * (1 + BAR_REACH);
  const top = -h / 2 - t * (1 + BAR_REACH);
  const side = Math.max(t * 3.8, Math.min(7.5, t * 4.4));
  return `M${n(right)} ${n(top)}v${n(side)}L${n(right - side)} ${n(top)}z`;
}

/** What lies on the drawing, lowest first. The only thing that decides how a stage looks. */
export function signParts(sign: SignShape): readonly SignPart[] {
  const { t, done } = sign;
  const line = Math.max(1, t * 0.42);
  const parts: SignPart[] = [];
  const draw = (name: SignPartName, d: string, stroke: number, dash?: string) => parts.push(dash ? { name, d, stroke, dash } : { name, d, stroke });
  const stripped = hasDone(done, "stripped");
  const poured = hasDone(done, "poured");
  const stood = hasDone(done, "stood") && !stripped;
  if (stripped) draw("solid", concreteOf(sign), line);
  else if (stood || poured) draw("outline", concreteOf(sign), line);
  else draw("dashed", concreteOf(sign), line, `${n(t * 1.3)} ${n(t)}`);
  if (!stripped && poured) draw("hatch", hatchOf(sign), line * 0.9);
  if (stood) draw("ply", plyOf(sign), line * 0.8);
  if (!stripped && !stood && hasDone(done, "cut")) draw("strips", stripsOf(sign), 0);
  if (!stripped && hasDone(done, "clamped")) draw("clamps", clampsOf(sign), 0);
  if (!stripped && hasDone(done, "plumbed")) {
    draw("cross-halo", crossOf(sign), t * 0.75 + 2);
    draw("cross", crossOf(sign), t * 0.75);
  }
  if (sign.flagged) draw("flag", flagOf(sign), Math.max(1, line * 0.8));
  return parts;
}
