/** Rounded to 5 psf as in the book's tables; where a cell is printed in both they agree, but for 23/32 in. at 16 in. by L/270. */
import { apaSection } from "#lib/trade/engineering/sheathing/apa-sections.ts";
import { valueOf } from "#tests/support/builders/value-of.ts";
import { figure, rel, type PublishedCase, type PublishedSource } from "#tests/support/figures/published-figures.ts";
import { tablePressure, type ApaBoard } from "./apa-board.ts";

const CENTRES = [4, 8, 12, 16, 19.2, 24];

const board = (thickness: ApaBoard["thickness"], grain: ApaBoard["grain"]): ApaBoard => ({ thickness, grade: "class-i", grain });
const row = (of: ApaBoard, ratio: 270 | 360, from: number, cells: readonly number[]) =>
  figure(cells, "psf", { abs: 2.5, rel: 0.01 + 0.0005 / valueOf(apaSection(of.thickness, of.grade, of.grain)).inertia }, () => cells.map((_, column) => tablePressure(of, CENTRES[from + column] ?? Number.NaN, ratio)));
const entry = (id: string, of: ApaBoard, centres: number, expected: number): PublishedCase => ({
  id, at: "face grain parallel to supports", what: `${of.thickness} in. class I along, supports at ${centres} in., L/360`, figures: { pressure: figure(expected, "psf", rel(0.02), () => tablePressure(of, centres, 360)) },
});
const line = (of: ApaBoard, by360: readonly number[], by270: readonly number[]): PublishedCase => ({
  id: `Mill reprint, ${of.thickness} in. ${of.grain}`, at: "supports from 4 in. up", what: `class I, face grain ${of.grain}, ${of.thickness} in.`, figures: { L_360: row(of, 360, 0, by360), L_270: row(of, 270, 0, by270) },
});

export const published: PublishedSource = {
  source: "A mill's public reprint of the APA concrete-form pressure tables (product standard PS 1-09)",
  cases: [
    entry("CASE-B10", board("19/32", "along"), 8, 530),
    entry("CASE-B11", board("19/32", "along"), 12, 165),
    line(board("19/32", "across"), [3110, 1195, 540, 245, 145], [3110, 1195, 540, 305, 190, 100]),
    line(board("23/32", "across"), [4010, 1540, 695, 345, 210, 110], [4010, 1540, 695, 390, 270, 145]),
    line(board("19/32", "along"), [1620, 530, 165], [1620, 530, 225]),
    line(board("23/32", "along"), [2170, 835, 375, 160, 115], [2170, 835, 400, 215, 125]),
  ],
};
