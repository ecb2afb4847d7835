import { linear, type Point, type Scale } from "../scale.ts";

export type CurveGiven = {
  /** One for each whole hour; null where the record has a gap. */
  readonly hourly: readonly (number | null)[];
  /** Gathered by the end of each hour. */
  readonly progress: readonly number[];
  readonly required: number;
  readonly earliestHours: number;
};
export type CurveFrame = { readonly left: number; readonly right: number; readonly curve: readonly [foot: number, top: number]; readonly record: readonly [foot: number, top: number] };
export type CurveNumbers = {
  readonly toX: Scale; readonly toY: Scale; readonly toTemperature: Scale;
  readonly curve: readonly Point[];
  readonly reached: Point;
  /** The record as steps, one to an hour; a gap ends one run and begins another. */
  readonly record: readonly (readonly Point[])[];
  readonly hours: number; readonly most: number; readonly coldest: number; readonly warmest: number;
};

/** What has been gathered, hour by hour, with the moment at which it is enough; below it the record it comes from. */
export function curveNumbers({ hourly, progress, required, earliestHours }: CurveGiven, frame: CurveFrame): CurveNumbers {
  const hours = Math.max(hourly.length, Math.ceil(earliestHours), 1);
  const most = Math.max(required, ...progress) * 1.05;
  const read = hourly.filter((temperature) => temperature !== null);
  const [coldest, warmest] = [Math.min(0, ...read), Math.max(1, ...read)];
  const toX = linear(0, hours, frame.left, frame.right);
  const toY = linear(0, most, ...frame.curve);
  const toTemperature = linear(coldest, warmest, ...frame.record);
  const curve = [{ x: toX(0), y: toY(0) }, ...progress.map((value, hour) => ({ x: toX(hour + 1), y: toY(value) }))];
  const record: Point[][] = [];
  hourly.forEach((temperature, hour) => {
    if (temperature === null) return;
    const step = [{ x: toX(hour), y: toTemperature(temperature) }, { x: toX(hour + 1), y: toTemperature(temperature) }];
    if (hour > 0 && hourly[hour - 1] !== null && record.length > 0) record.at(-1)?.push(...step);
    else record.push(step);
  });
  return { toX, toY, toTemperature, curve, reached: { x: toX(earliestHours), y: toY(required) }, record, hours, most, coldest, warmest };
}
