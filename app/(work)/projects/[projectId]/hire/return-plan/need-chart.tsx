import { addDays, toDay, weekday } from "#lib/kernel/days.ts";
import { Drawing } from "#app/_ui/drawing/sheet/drawing.tsx";
import { dayWords } from "#app/_ui/value/time-words.ts";

export type NeedChartProps = {
  readonly item: string; readonly from: string; readonly needed: readonly number[]; readonly onHire: readonly number[]; readonly owned: number;
};

const [WIDTH, HEIGHT, LEFT, RIGHT, TOP, FOOT] = [760, 190, 44, 12, 14, 30];

/** What the columns need of an item day by day, against what the plan keeps on hire on top of own stock. */
export function NeedChart({ item, from, needed, onHire, owned }: NeedChartProps) {
  const days = needed.length;
  const most = Math.max(1, ...needed, ...onHire.map((count) => count + owned));
  const x = (day: number): number => LEFT + (day * (WIDTH - LEFT - RIGHT)) / days;
  const y = (count: number): number => TOP + ((most - count) * (HEIGHT - TOP - FOOT)) / most;
  const steps = (counts: readonly number[]): string => counts.map((count, day) => `${day === 0 ? "M" : "L"}${x(day).toFixed(1)} ${y(count).toFixed(1)}H${x(day + 1).toFixed(1)}`).join("");
  const there = onHire.map((count) => count + owned);
  const mondays = Array.from({ length: days }, (_, day) => day).filter((day) => weekday(addDays(toDay(from), day)) === 1);
  const every = Math.max(1, Math.ceil(mondays.length / 9));
  const peak = needed.indexOf(Math.max(...needed));
  return (
    <div className="overflow-x-auto" tabIndex={0} role="group" aria-label={`${item}, day by day`}>
      <Drawing
        title={`${item}: needed and on hire`} width={WIDTH} height={HEIGHT}
        description={`From ${dayWords(from)} over ${days} days. Most needed: ${needed[peak] ?? 0} on ${dayWords(addDays(toDay(from), Math.max(0, peak)))}. On hire at the start: ${onHire[0] ?? 0}${owned > 0 ? `, own stock: ${owned}` : ""}.`}
      >
        <path d={`${steps(there)}V${y(0)}H${x(0)}Z`} fill="var(--color-accent-wash)" />
        {owned > 0 ? <rect x={x(0)} y={y(owned)} width={x(days) - x(0)} height={y(0) - y(owned)} fill="var(--color-ply)" /> : null}
        {[0, Math.round(most / 2), most].map((count) => (
          <g key={count}>
            <line x1={LEFT} x2={WIDTH - RIGHT} y1={y(count)} y2={y(count)} stroke="var(--color-rule-soft)" strokeWidth={1} />
            <text x={LEFT - 6} y={y(count) + 4} textAnchor="end">{count}</text>
          </g>
        ))}
        <path d={steps(there)} fill="none" stroke="var(--color-accent)" strokeWidth={2.5} />
        <path d={steps(needed)} fill="none" stroke="var(--color-ink)" strokeWidth={1.5} strokeDasharray="5 3" />
        {mondays.filter((_, index) => index % every === 0).map((day) => (
          <g key={day}>
            <line x1={x(day)} x2={x(day)} y1={y(0)} y2={y(0) + 5} stroke="var(--color-ink)" />
            <text x={x(day)} y={HEIGHT - 8} textAnchor="middle">{dayWords(addDays(toDay(from), day)).replace(/^\w+ /, "").replace(/ \d{4}$/, "")}</text>
          </g>
        ))}
        <line x1={LEFT} x2={WIDTH - RIGHT} y1={y(0)} y2={y(0)} stroke="var(--color-ink)" strokeWidth={1.5} />
      </Drawing>
    </div>
  );
}

