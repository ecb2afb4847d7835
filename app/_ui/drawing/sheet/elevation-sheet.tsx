import { leastWidth } from "./drawing.tsx";
import { FaceElevation, type FaceElevationProps } from "./face-elevation.tsx";
import { PressureDiagram } from "./pressure-diagram.tsx";
import { elevationHeight, elevationOf, elevationWidth, PRESSURE_WIDTH } from "./sheet-scale.ts";

export type ElevationSheetProps = Omit<FaceElevationProps, "x">;

/** Elevation and pressure side by side at one vertical scale, made larger and smaller together. */
export function ElevationSheet({ height: given, ...rest }: ElevationSheetProps) {
  const elevation = elevationOf(rest.formSet, rest.face);
  if (!elevation) return null;
  const height = given ?? elevationHeight(elevation);
  const beside = elevationWidth(elevation, height, rest.units);
  const width = beside + PRESSURE_WIDTH;
  return (
    <svg className="drawing" style={leastWidth(width)} width={width} height={height} viewBox={`0 0 ${width} ${height}`}>
      <FaceElevation {...rest} height={height} x={0} />
      <PressureDiagram {...rest} height={height} x={beside} />
    </svg>
  );
}
