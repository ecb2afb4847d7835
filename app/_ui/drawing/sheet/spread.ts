/**
 * Moves labels as little as possible (least squares) so that each keeps `gap` from the next, in their order.
 * Takes the wished places ascending; gives the places in the same order, kept between `from` and `to` where they fit.
 */
export function spread(wished: readonly number[], gap: number, from = -Infinity, to = Infinity): readonly number[] {
  const runs: { sum: number; count: number }[] = [];
  wished.forEach((place, index) => {
    let run = { sum: place - index * gap, count: 1 };
    for (let before = runs.at(-1); before && before.sum / before.count > run.sum / run.count; before = runs.at(-1)) {
      run = { sum: run.sum + before.sum, count: run.count + before.count };
      runs.pop();
    }
    runs.push(run);
  });
  const last = (wished.length - 1) * gap;
  return runs
    .flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
    .map((place, index) => Math.max(Math.min(place, to - last), from) + index * gap);
}
