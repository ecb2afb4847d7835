import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { z } from "zod";
import { backingAnswer, backingExample, backingInput, tellBacking } from "#lib/contracts/workings/backing.ts";
import { clampLayoutAnswer, clampLayoutExample, clampLayoutInput, clampLayoutMeasuredExample, tellClampLayout } from "#lib/contracts/workings/clamp-layout.ts";
import { plumbAnswer, plumbExample, plumbInput, tellPlumb } from "#lib/contracts/workings/plumb.ts";
import { pressureAnswer, pressureExample, pressureInput, tellPressure } from "#lib/contracts/workings/pressure.ts";
import { sheathingAnswer, sheathingExample, sheathingInput, tellSheathing } from "#lib/contracts/workings/sheathing.ts";
import { stripTimeAnswer, stripTimeExample, stripTimeInput, tellStripTime } from "#lib/contracts/workings/strip-time.ts";
import type { Result } from "#lib/kernel/result.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { backingWorking } from "#lib/trade/engineering/workings/backing.ts";
import { clampLayoutWorking } from "#lib/trade/engineering/workings/clamp-layout.ts";
import { plumbWorking } from "#lib/trade/engineering/workings/plumb.ts";
import { pressureWorking } from "#lib/trade/engineering/workings/pressure.ts";
import { sheathingWorking } from "#lib/trade/engineering/workings/sheathing.ts";
import { stripTimeWorking } from "#lib/trade/engineering/workings/strip-time.ts";

type Calculator = { readonly input: z.ZodType; readonly answer: z.ZodType; readonly example: object; readonly told: (input: unknown) => Result<unknown, Refusal> };

function calculator<Input, Answer>(
  input: z.ZodType<Input>, answer: z.ZodType, example: object, work: (input: Input) => Result<Answer, Refusal>, tell: (answer: Answer) => unknown,
): Calculator {
  const told = (given: unknown): Result<unknown, Refusal> => {
    const result = work(given as Input);
    return result.ok ? { ok: true, value: tell(result.value) } : result;
  };
  return { input, answer, example, told };
}

const CALCULATORS: Readonly<Record<string, Calculator>> = {
  pressure: calculator(pressureInput, pressureAnswer, pressureExample, pressureWorking, tellPressure),
  sheathing: calculator(sheathingInput, sheathingAnswer, sheathingExample, sheathingWorking, tellSheathing),
  backing: calculator(backingInput, backingAnswer, backingExample, backingWorking, tellBacking),
  "clamp layout": calculator(clampLayoutInput, clampLayoutAnswer, clampLayoutExample, clampLayoutWorking, tellClampLayout),
  "clamps as measured": calculator(clampLayoutInput, clampLayoutAnswer, clampLayoutMeasuredExample, clampLayoutWorking, tellClampLayout),
  "strip time": calculator(stripTimeInput, stripTimeAnswer, stripTimeExample, stripTimeWorking, tellStripTime),
  plumb: calculator(plumbInput, plumbAnswer, plumbExample, plumbWorking, tellPlumb),
};

/** Every number of an example put to another one, within what JSON can say. */
const shaken = (example: unknown): fc.Arbitrary<unknown> => {
  if (typeof example === "number") return fc.oneof(fc.constant(example), fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }));
  if (Array.isArray(example)) return fc.tuple(...example.map(shaken));
  if (example !== null && typeof example === "object") {
    return fc.record(Object.fromEntries(Object.entries(example).map(([key, value]) => [key, shaken(value)])));
  }
  return fc.constant(example);
};

describe.each(Object.entries(CALCULATORS))("the contract of %s", (_name, { input, answer, example, told }) => {
  it("takes its own example and gives an answer that keeps the contract", () => {
    const result = told(input.parse(example));
    expect(result.ok).toBe(true);
    if (result.ok) expect(answer.safeParse(result.value).error).toBeUndefined();
  });

  it("refuses what it does not know", () => {
    expect(input.safeParse({ ...example, colour: "blue" }).success).toBe(false);
  });

  it("answers or refuses whatever it takes, never with a number that is none", () => {
    fc.assert(fc.property(shaken(example), (given) => {
      const parsed = input.safeParse(given);
      if (!parsed.success) return;
      const result = told(parsed.data);
      if (result.ok) expect(answer.safeParse(result.value).error).toBeUndefined();
      else expect(result.failure.limit).not.toBe("");
    }), { numRuns: 300, seed: 11 });
  });
});
