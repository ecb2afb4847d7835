import type { z } from "zod";
import type { createProjectInput } from "#lib/contracts/projects.ts";

/** The demo's company, people, sites and sizes are invented. */
export const COMPANY = "Quillback Formwork";
export const PASSWORD = "string-line-and-wedge";
export const PEOPLE = [
  { email: "maren@quillback.example", name: "Maren Holt", role: "owner" },
  { email: "tavita@quillback.example", name: "Tavita Leo", role: "leading hand" },
  { email: "ines@quillback.example", name: "Ines Okada", role: "office" },
] as const;

type Size = readonly [shape: "rectangle" | "circle", widthMm: number, depthMm: number];
export type Site = {
  readonly project: z.input<typeof createProjectInput>;
  readonly levels: readonly { name: string; elevationMm: number; slabDepthMm: number; beamDepthMm: number }[];
  /** Grid lines along x and along y, by name and offset. */
  readonly alongX: readonly (readonly [string, number])[];
  readonly alongY: readonly (readonly [string, number])[];
  readonly marks: Readonly<Record<string, Size>>;
  readonly markAt: (column: number, row: number) => string;
  /** Sizes that a mark takes from a level upwards. */
  readonly shrinks: readonly { mark: string; fromLevel: string; size: Size }[];
};

export const WHARF: Site = {
  project: {
    name: "Larkmere Wharf, Building B", site: "14 Tidewaiter Lane, Larkmere", timeZone: "Australia/Brisbane", units: "metric",
    currency: "AUD", workingDays: [1, 2, 3, 4, 5, 6],
  },
  levels: [
    { name: "Ground", elevationMm: 0, slabDepthMm: 0, beamDepthMm: 0 },
    { name: "Level 1", elevationMm: 4100, slabDepthMm: 260, beamDepthMm: 600 },
    { name: "Level 2", elevationMm: 7550, slabDepthMm: 240, beamDepthMm: 550 },
    { name: "Level 3", elevationMm: 11_000, slabDepthMm: 240, beamDepthMm: 550 },
    { name: "Level 4", elevationMm: 14_450, slabDepthMm: 240, beamDepthMm: 550 },
    { name: "Roof", elevationMm: 17_750, slabDepthMm: 200, beamDepthMm: 500 },
  ],
  alongX: [["A", 0], ["B", 7800], ["C", 15_300], ["D", 22_800], ["E", 30_600]],
  alongY: [["1", 0], ["2", 6900], ["3", 14_400], ["4", 21_300]],
  marks: { C1: ["rectangle", 400, 400], C2: ["rectangle", 350, 650], C3: ["circle", 550, 550], C4: ["rectangle", 300, 900] },
  markAt: (column, row) => {
    const isEdgeX = column === 0 || column === 4;
    const isEdgeY = row === 0 || row === 3;
    if (isEdgeX && isEdgeY) return "C1";
    if (column === 2 && isEdgeY) return "C4";
    return column === 2 ? "C3" : "C2";
  },
  shrinks: [
    { mark: "C2", fromLevel: "Level 2", size: ["rectangle", 350, 550] },
    { mark: "C2", fromLevel: "Level 3", size: ["rectangle", 350, 550] },
    { mark: "C2", fromLevel: "Level 4", size: ["rectangle", 350, 450] },
    { mark: "C1", fromLevel: "Level 3", size: ["rectangle", 350, 350] },
    { mark: "C1", fromLevel: "Level 4", size: ["rectangle", 350, 350] },
    { mark: "C3", fromLevel: "Level 4", size: ["circle", 450, 450] },
  ],
};

const inches = (value: number): number => Math.round(value * 25.4);
const side = (value: number): number => Math.round(value * 254) / 10;
export const CLINIC: Site = {
  project: {
    name: "Osierfield Clinic", site: "220 Withy Road, Osierfield", timeZone: "America/Chicago", units: "us",
    currency: "USD", workingDays: [1, 2, 3, 4, 5],
  },
  levels: [
    { name: "1st floor", elevationMm: 0, slabDepthMm: 0, beamDepthMm: 0 },
    { name: "2nd floor", elevationMm: inches(162), slabDepthMm: inches(9), beamDepthMm: inches(22) },
    { name: "Roof", elevationMm: inches(312), slabDepthMm: inches(8), beamDepthMm: inches(20) },
  ],
  alongX: [["1", 0], ["2", inches(300)], ["3", inches(600)], ["4", inches(912)], ["5", inches(1212)]],
  alongY: [["A", 0], ["B", inches(324)]],
  marks: { P1: ["rectangle", side(18), side(18)], P2: ["rectangle", side(14), side(26)] },
  markAt: (column) => (column === 0 || column === 4 ? "P1" : "P2"),
  shrinks: [{ mark: "P2", fromLevel: "2nd floor", size: ["rectangle", side(14), side(22)] }],
};
