import { describe, expect, it } from "vitest";
import { mm } from "#lib/kernel/units.ts";
import { formHeight } from "#lib/trade/shutter/form-height.ts";

const given = { storeyHeight: mm(3475), depthOver: mm(420), kickerHeight: mm(75), override: null };

describe("form height", () => {
  it("is storey height less slab or beam less kicker: 3475 − 420 − 75 = 2980", () => {
    expect(formHeight(given)).toMatchObject({ ok: true, value: { height: 2980, overridden: false } });
  });
  it("takes a height given for the column itself", () => expect(formHeight({ ...given, override: mm(2750) })).toMatchObject({ ok: true, value: { height: 2750, overridden: true } }));
  it.each([[mm(3400)], [mm(3500)]])("refuses what leaves nothing, with the numbers (depth over it %d mm)", (depthOver) => {
    const answer = formHeight({ ...given, depthOver });
    expect(answer.ok).toBe(false);
    if (!answer.ok) {
      expect(answer.failure.given).toBe(3475 - depthOver - 75);
      expect(answer.failure.message).toContain(`3475 − ${depthOver} − 75`);
    }
  });
  it("refuses a given height of 0 or no number", () => {
    expect(formHeight({ ...given, override: mm(0) }).ok).toBe(false);
    expect(formHeight({ ...given, storeyHeight: mm(Number.NaN) }).ok).toBe(false);
  });
});
