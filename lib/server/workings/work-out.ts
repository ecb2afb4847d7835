import "server-only";
import type { z } from "zod";
import { ENGINEERING_LIMIT } from "#lib/contracts/workings/answer-parts.ts";
import { backingInput, tellBacking } from "#lib/contracts/workings/backing.ts";
import { clampLayoutInput, tellClampLayout } from "#lib/contracts/workings/clamp-layout.ts";
import { plumbInput, tellPlumb } from "#lib/contracts/workings/plumb.ts";
import { pressureInput, tellPressure } from "#lib/contracts/workings/pressure.ts";
import { sheathingInput, tellSheathing } from "#lib/contracts/workings/sheathing.ts";
import { stripTimeInput, tellStripTime } from "#lib/contracts/workings/strip-time.ts";
import { brokenRule, ok, type Result } from "#lib/kernel/result.ts";
import type { Refusal } from "#lib/trade/engineering/working.ts";
import { backingWorking } from "#lib/trade/engineering/workings/backing.ts";
import { clampLayoutWorking } from "#lib/trade/engineering/workings/clamp-layout.ts";
import { plumbWorking } from "#lib/trade/engineering/workings/plumb.ts";
import { pressureWorking } from "#lib/trade/engineering/workings/pressure.ts";
import { sheathingWorking } from "#lib/trade/engineering/workings/sheathing.ts";
import { stripTimeWorking } from "#lib/trade/engineering/workings/strip-time.ts";
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
export const workOutClampLayout = calculator("workOutClampLayout", clampLayoutInput, clampLayoutWorking, tellClampLayout);
export const workOutStripTime = calculator("workOutStripTime", stripTimeInput, stripTimeWorking, tellStripTime);
export const workOutPlumb = calculator("workOutPlumb", plumbInput, plumbWorking, tellPlumb);
