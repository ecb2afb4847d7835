import type { CuttingProblem, Offer, Prices, Residue } from "../patterns/cutting-problem.ts";
import { guillotineFit, shapesByType, sheetPattern } from "./fitting/guillotine-fit.ts";
import { keepOnly, type Piece, stagesOf, withinStages } from "./filling/piece.ts";
import { type RasterGrid, rasterFilling, rasterGrid } from "./filling/raster-filling.ts";
import type { SheetPattern, SheetProblem } from "./sheet-problem.ts";
import { fillRests } from "./filling/slots.ts";
import { stripFilling, uprightFilling } from "./filling/strip-filling.ts";
import { shelfFit } from "./fitting/shelf-fit.ts";
import { stripFit } from "./fitting/strip-fit.ts";
import { pricedBlocks } from "./filling/priced-blocks.ts";
import { type Block, blockPiece } from "./filling/tight-blocks.ts";

const NEW_BLOCKS_PER_STOCK = 12;
const NEARLY_PAYING_PER_STOCK = 2_000;
// A block may fall this much short of its sheet's price before its rests are filled.
const REFILL = 0.12;
const FULL = 0.95;
const QUICK_THEN_THOROUGH = [250, 1000];
const NEW_RASTERS_PER_STOCK = 8;
const TOLERANCE = 1e-7;
// More than this takes too long for one look at prices.
const MOST_RASTER_WORK = 12_000_000;

type Pricing = (residue: Residue, prices: Prices) => Offer<SheetPattern>;

/** Sheets as a cutting problem: patterns come from tight blocks, from strips and, where the raster is small enough, from all guillotine cuts. */
export function sheetCutting(problem: SheetProblem, blocks: readonly Block[]): CuttingProblem<SheetPattern> {
  const grid = widestGrid(problem);
  const priced = QUICK_THEN_THOROUGH.map((most) => fromBlocks(problem, (residue, prices) => pricedBlocks(problem, residue, prices, blockLimits(problem, prices, most))));
  const further = grid.work <= MOST_RASTER_WORK ? [limitedRaster(problem, grid), freeRaster(problem, grid)] : priced;
  return {
    demand: problem.demand,
    stock: problem.stock,
    price: [fromBlocks(problem, () => blocks), fromStrips(problem), ...further],
    firstFit: (residue) => fitSomehow(problem, residue),
  };
}

/** The same from strips: soon done, and bounded by what all guillotine cuts are worth where the raster is small enough. */
export function stripCutting(problem: SheetProblem): CuttingProblem<SheetPattern> {
  const grid = widestGrid(problem);
  const bounded = grid.work <= MOST_RASTER_WORK ? [freeRaster(problem, grid)] : [];
  return { demand: problem.demand, stock: problem.stock, price: [fromStrips(problem), ...bounded], firstFit: (residue) => fitSomehow(problem, residue) };
}

const widestGrid = ({ shapes, demand, stock }: SheetProblem): RasterGrid =>
  rasterGrid(shapes, demand, Math.max(0, ...stock.map(({ w }) => w)), Math.max(0, ...stock.map(({ h }) => h)));

const blockLimits = (problem: SheetProblem, prices: Prices, mostPerLevel: number) => ({
  mostPerLevel,
  opening: 0.025,
  leastDensity: 0.96 * Math.min(...problem.stock.map((stock, index) => (prices.ofStock[index] ?? 0) / (stock.w * stock.h))),
});

function fromBlocks(problem: SheetProblem, blocksAt: (residue: Residue, prices: Prices) => readonly Block[]): Pricing {
  return (residue, prices) => {
    const blocks = blocksAt(residue, prices);
    const worth = blocks.map((block) => (block.counts.every(([type, copies]) => copies <= (residue.demand[type] ?? 0)) ? block.counts.reduce((sum, [type, copies]) => sum + copies * (prices.ofType[type] ?? 0), 0) : 0));
    const patterns = openStock(problem, residue).flatMap((stock) => {
      const { w, h } = problem.stock[stock] ?? { w: 0, h: 0 };
      return blocks
        .flatMap((block, index) => (block.w <= w && block.h <= h && (worth[index] ?? 0) > (1 - REFILL) * floorOf(problem, prices, stock) ? [index] : []))
        .sort((a, b) => (worth[b] ?? 0) - (worth[a] ?? 0))
        .slice(0, prices.ease > 0 ? NEARLY_PAYING_PER_STOCK : NEW_BLOCKS_PER_STOCK)
        .flatMap((index) => { const block = blocks[index]; return block ? finished(problem, residue, prices, stock, blockPiece(block)) : []; });
    });
    return { patterns, ratio: Infinity };
  };
}

/** The fullest sheets the blocks make, whatever the prices. */
export function fullestSheets(problem: SheetProblem, blocks: readonly Block[], most: number): SheetPattern[] {
  const all = { demand: problem.demand, supply: problem.stock.map((stock) => stock.supply), cost: 0 };
  const byArea = { ofType: problem.areas, ofStock: problem.stock.map(() => 0), ease: 0 };
  return problem.stock.flatMap(({ w, h }, stock) =>
    blocks
      .filter((block) => block.w <= w && block.h <= h && block.used > FULL * w * h)
      .sort((a, b) => b.used - a.used)
      .slice(0, most)
      .flatMap((block) => finished(problem, all, byArea, stock, blockPiece(block))));
}

function fromStrips(problem: SheetProblem): Pricing {
  return (residue, prices) => {
    const patterns = openStock(problem, residue).flatMap((stock) => {
      const { w, h } = problem.stock[stock] ?? { w: 0, h: 0 };
      return [stripFilling, uprightFilling].flatMap((fill) => {
        const filling = fill(problem.shapes, prices.ofType, residue.demand, w, h);
        return filling ? finished(problem, residue, prices, stock, filling.piece) : [];
      });
    });
    return { patterns, ratio: Infinity };
  };
}

function limitedRaster(problem: SheetProblem, grid: RasterGrid): Pricing {
  return (residue, prices) => ({ patterns: rasterPatterns(problem, residue, prices, rasterFilling(grid, prices.ofType, residue.demand)), ratio: Infinity });
}

function freeRaster(problem: SheetProblem, grid: RasterGrid): Pricing {
  return (residue, prices) => {
    const open = prices.ofType.map((price, type) => ((residue.demand[type] ?? 0) > 0 ? price : 0));
    const filling = rasterFilling(grid, open, null);
    const ratios = openStock(problem, residue).map((stock) => {
      const { w, h } = problem.stock[stock] ?? { w: 0, h: 0 };
      return filling(w, h).value / Math.max(1e-9, prices.ofStock[stock] ?? 0);
    });
    return { patterns: rasterPatterns(problem, residue, prices, filling), ratio: Math.max(1, ...ratios) };
  };
}

function rasterPatterns(problem: SheetProblem, residue: Residue, prices: Prices, filling: ReturnType<typeof rasterFilling>): SheetPattern[] {
  return openStock(problem, residue).flatMap((stock) => {
    const { w, h } = problem.stock[stock] ?? { w: 0, h: 0 };
    return filling(w, h).pieces(floorOf(problem, prices, stock), NEW_RASTERS_PER_STOCK).flatMap((piece) => finished(problem, residue, prices, stock, piece));
  });
}

/** On the whole sheet, without parts beyond the demand, rests filled with what is worth most; dropped when not worth the sheet. */
function finished(problem: SheetProblem, residue: Residue, prices: Prices, stock: number, piece: Piece): SheetPattern[] {
  const { w, h } = problem.stock[stock] ?? { w: 0, h: 0 };
  const whole = withinStages(piece, w, h, problem.mostStages);
  if (!whole) return [];
  const left = [...residue.demand];
  const kept = keepOnly(whole, left);
  const byWorth = shapesByType(problem)
    .filter((shapes) => (left[shapes[0]?.type ?? -1] ?? 0) > 0)
    .sort((a, b) => density(problem, prices, b[0]?.type ?? 0) - density(problem, prices, a[0]?.type ?? 0));
  return [fillRests(kept, byWorth, left), kept]
    .filter((filled) => stagesOf(filled) <= problem.mostStages)
    .slice(0, 1)
    .map((filled) => sheetPattern(stock, filled))
    .filter((pattern) => pattern.counts.reduce((sum, [type, copies]) => sum + copies * (prices.ofType[type] ?? 0), 0) > floorOf(problem, prices, stock));
}

/** Everything left, cut somehow. Where the saw may not turn often, parts fitted one by one would hardly ever do. */
const fitSomehow = (problem: SheetProblem, residue: Residue): readonly SheetPattern[] | null =>
  problem.mostStages === Infinity ? guillotineFit(problem, residue) : shelfFit(problem, residue) ?? stripFit(problem, residue);

const density = (problem: SheetProblem, prices: Prices, type: number): number => (prices.ofType[type] ?? 0) / (problem.areas[type] ?? 1);
const floorOf = (problem: SheetProblem, prices: Prices, stock: number): number => (prices.ofStock[stock] ?? 0) * (1 - prices.ease) + TOLERANCE * Math.max(1, problem.stock[stock]?.cost ?? 0);
const openStock = (problem: SheetProblem, residue: Residue): number[] => problem.stock.flatMap((_, index) => (residue.supply[index] === 0 ? [] : [index]));
