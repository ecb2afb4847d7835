/** From 0 up to, not including, 1. */
export type RandomNumbers = () => number;

/** The same numbers for the same seed on every machine (a 32-bit counter, mixed), so that what is searched at random can be searched again. */
export function randomNumbers(seed: number): RandomNumbers {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
