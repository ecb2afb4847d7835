export const PLY_THICKNESSES = ["15/32", "1/2", "19/32", "5/8", "23/32", "3/4", "7/8", "1", "1-1/8"] as const;
export type PlyThickness = (typeof PLY_THICKNESSES)[number];

export const PLY_GRADES = ["class-i", "class-ii", "structural-i"] as const;
export type PlyGrade = (typeof PLY_GRADES)[number];

/** across: face grain at right angles to the supports; along: parallel to them. */
export const FACE_GRAINS = ["across", "along"] as const;
export type FaceGrain = (typeof FACE_GRAINS)[number];
