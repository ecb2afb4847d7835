import { isValidElement, type ReactNode } from "react";
import jsQR from "jsqr";
import { describe, expect, it } from "vitest";
import { LabelDrawing } from "#app/_ui/drawing/label/label-drawing.tsx";
import { paths } from "#app/paths.ts";
import { isOwnMachineOnly, ownAddress } from "#app/(work)/projects/[projectId]/gear/labels/own-address.ts";

/** Dots a millimetre: about 200 to the inch. */
const DOTS = 8;
const [WIDTH, HEIGHT] = [62, 63].map((side) => side * DOTS) as [number, number];
const PROJECT = "01a9c3de-5f10-7b42-9c1e-3a5d7e9f1b20";
const COLUMN = "01a9c3de-77aa-7c01-8e55-b2d4f6081a3c";
const ADDRESS = `https://columns.quillback.example${paths.label("column", PROJECT, COLUMN)}`;

type Shape = { readonly d?: string; readonly transform?: string; readonly children?: ReactNode };
const shapesIn = (node: ReactNode): Shape[] =>
  Array.isArray(node) ? node.flatMap(shapesIn) : isValidElement<Shape>(node) ? [node.props, ...shapesIn(node.props.children)] : [];

/** The label as a camera sees it: white paper, and black where the drawing's path is filled. */
function photographed(address: string): Uint8ClampedArray {
  const code = shapesIn(LabelDrawing({ address, name: "C4", detail: "Level 2 · K1" })).find(({ d }) => d !== undefined);
  const [x = 0, y = 0, scale = 0] = [...(code?.transform ?? "").matchAll(/-?\d+(\.\d+)?/g)].map(([figure]) => Number(figure));
  const dots = new Uint8ClampedArray(WIDTH * HEIGHT * 4).fill(255);
  for (const [, column = "", row = "", run = ""] of (code?.d ?? "").matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)) {
    const at = (from: number, squares: number): number => Math.round((from + squares * scale) * DOTS);
    paint(dots, [at(x, Number(column)), at(x, Number(column) + Number(run))], [at(y, Number(row)), at(y, Number(row) + 1)], 0);
  }
  return dots;
}

function paint(dots: Uint8ClampedArray, [left, right]: readonly [number, number], [top, bottom]: readonly [number, number], shade: number): void {
  for (let y = top; y < bottom; y += 1) for (let x = left; x < right; x += 1) dots.fill(shade, (y * WIDTH + x) * 4, (y * WIDTH + x) * 4 + 3);
}

// The outside check: jsQR, a general-purpose reader of QR codes that shares no code with what draws them.
describe("the code on a label", () => {
  it.each([ADDRESS, "http://192.168.1.20:3210/label/panel/a/b", `https://a-rather-long-name.of-a-server.example:8443${paths.label("set", PROJECT, COLUMN)}`])("is read back as %s", (address) => {
    expect(jsQR(photographed(address), WIDTH, HEIGHT)?.data).toBe(address);
  });

  // Level Q restores about 25 % of the code (ISO/IEC 18004, error correction levels, from memory). 8 × 8 mm of some 38 × 38 mm is 4 %.
  it("is still read with a splash of concrete on it", () => {
    const dots = photographed(ADDRESS);
    paint(dots, [30 * DOTS, 38 * DOTS], [18 * DOTS, 26 * DOTS], 120);
    expect(jsQR(dots, WIDTH, HEIGHT)?.data).toBe(ADDRESS);
  });

  it("is not read once half of it is gone", () => {
    const dots = photographed(ADDRESS);
    paint(dots, [9 * DOTS, 53 * DOTS], [0, 22 * DOTS], 120);
    expect(jsQR(dots, WIDTH, HEIGHT)).toBeNull();
  });
});

describe("the address on a label", () => {
  const asked = (said: Record<string, string>) => new Headers(said);
  it("is the server's public one where that is set", () =>
    expect(ownAddress(asked({ host: "localhost:3210" }), "https://columns.quillback.example/")).toBe("https://columns.quillback.example"));
  it("is else the one the page was asked by, as a proxy in front tells it", () => {
    expect(ownAddress(asked({ host: "10.0.0.7:3210" }), undefined)).toBe("http://10.0.0.7:3210");
    expect(ownAddress(asked({ host: "10.0.0.7:3210", "x-forwarded-host": "columns.quillback.example", "x-forwarded-proto": "https, http" }), undefined)).toBe("https://columns.quillback.example");
  });
  it.each([["http://localhost:3210", true], ["http://127.0.0.1:3210", true], ["http://[::1]:3210", true], ["http://192.168.1.20:3210", false], ["https://columns.quillback.example", false]])(
    "%s is this machine only: %s", (address, only) => expect(isOwnMachineOnly(address)).toBe(only));
});
