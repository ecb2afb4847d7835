/** Overall sizes in millimetres, by the face they close. */
export type FacePanel = { readonly face: string; readonly widthMm: number; readonly heightMm: number };
export type Misfit = { readonly face: string; readonly wanted: string; readonly given: string };

/** A panel may stand this far from the width a column asks for: what a saw and swollen edges make of it. Common practice, no source. */
export const WIDTH_TOLERANCE_MM = 2;

const sizeText = ({ widthMm, heightMm }: Omit<FacePanel, "face">): string => `${Math.round(widthMm * 10) / 10} × ${Math.round(heightMm)} mm`;
const closes = (wanted: FacePanel, given: FacePanel): boolean =>
  Math.abs(wanted.widthMm - given.widthMm) <= WIDTH_TOLERANCE_MM && given.heightMm >= wanted.heightMm;

/** The faces of a column that a set does not close: missing, too narrow, too wide or too short. Taller is cut at the head or stands over. */
export const misfits = (wanted: readonly FacePanel[], given: readonly FacePanel[]): readonly Misfit[] =>
  wanted.flatMap((face) => {
    const panel = given.find((each) => each.face === face.face);
    return panel && closes(face, panel) ? [] : [{ face: face.face, wanted: sizeText(face), given: panel ? sizeText(panel) : "nothing" }];
  });
