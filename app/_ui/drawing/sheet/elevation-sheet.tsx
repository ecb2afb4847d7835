import { FaceElevation, type FaceElevationProps } from "./face-elevation.tsx";
import { PressureDiagram } from "./pressure-diagram.tsx";

/** Elevation and pressure side by side at one vertical scale; scrolls sideways rather than lose it. */
export function ElevationSheet(props: FaceElevationProps) {
  return (
    <div className="flex w-max items-start [&_.drawing]:max-w-none">
      <FaceElevation {...props} />
      <PressureDiagram {...props} />
    </div>
  );
}
