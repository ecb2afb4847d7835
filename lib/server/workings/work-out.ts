import "server-only";
import type { z } from "zod";
import { ENGINEERING_LIMIT } from "#lib/contracts/workings/answer-parts.ts";
import { backingInput, tellBacking } from "#lib/contracts/workings/backing.ts";
import { clampLayoutInput, tellClampLayout, type ClampLayoutTold } from "#lib/contracts/workings/clamp-layout.ts";
import { plumbInput, tellPlumb } from "#lib/contracts/workings/plumb.ts";
import { pressureInput, tellPressure } from "#lib/contracts/workings/pressure.ts";
import { sheathingInput, tellSheathing } from "#lib/contracts/workings/sheathing.ts";
import { stripTimeInput, tellStripTime } from "#lib/contracts/workings/strip-time.ts";
import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import { calculateApart } from "#lib/solver/calculate-apart.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { backingWorking } from "#lib/trade/engineering/workings/backing.ts";
import { plumbWorking } from "#lib/trade/engineering/workings/plumb.ts";
import { pressureWorking } from "#lib/trade/engineering/workings/pressure.ts";
import { sheathingWorking } from "#lib/trade/engineering/workings/sheathing.ts";
import { stripTimeWorking } from "#lib/trade/engineering/workings/strip-time.ts";
import type { Caller } from "../gate/caller.ts";
import { companyUseCase } from "../gate/use-case.ts";

/** A calculator of its own: numbers in, numbers and their working out; nothing is kept. A limit that is not kept comes back whole in `values`. */
const calculator = <Input extends z.ZodType, Answer, Told>(
  name: string, input: Input, work: (given: z.output<Input>) => Result<Answer, Refusal>, tell: (answer: Answer) => Told,
) =>
  companyUseCase(`workings.${name}`, "workings.use", input, async (_scope, given): Promise<Result<Told>> => {
    const result = work(given);
    return result.ok ? ok(tell(result.value)) : brokenRule(ENGINEERING_LIMIT, result.failure);
  });

export const workOutPressure = calculator("workOutPressure", pressureInput, pressureWorking, tellPressure);
export const workOutSheathing = calculator("workOutSheathing", sheathingInput, sheathingWorking, tellSheathing);
export const workOutBacking = calculator("workOutBacking", backingInput, backingWorking, tellBacking);
export const workOutStripTime = calculator("workOutStripTime", stripTimeInput, stripTimeWorking, tellStripTime);
export const workOutPlumb = calculator("workOutPlumb", plumbInput, plumbWorking, tellPlumb);

const CLAMPS_MS = 4_000;
const calculate = calculateApart({ mostWaiting: 8, mostKept: 40 });
const askForClamps = companyUseCase("workings.workOutClampLayout", "workings.use", clampLayoutInput, async (_scope, given) => ok(given));

/** The one calculator that may take a second: outside the transaction and the thread that serve everybody else. */
export async function workOutClampLayout(caller: Caller | null, input: z.input<typeof clampLayoutInput>): Promise<Result<ClampLayoutTold>> {
  const asked = await askForClamps(caller, input);
  if (!asked.ok) return asked;
  const answered = await calculate("clamps", asked.value, CLAMPS_MS);
  if (!answered.ok) return answered;
  const result = answered.value;
  return result.ok ? ok(tellClampLayout(result.value)) : brokenRule(ENGINEERING_LIMIT, result.failure);
}
