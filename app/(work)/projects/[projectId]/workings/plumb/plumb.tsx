import { workOutPlumb } from "#lib/server/workings/work-out.ts";
import type { PlumbTold } from "#lib/contracts/workings/plumb.ts";
import { PlumbPlan } from "#app/_ui/drawing/workings/plumb/plumb-plan.tsx";
import { DataTable } from "#app/_ui/page/data-table.tsx";
import { Figure } from "#app/_ui/page/figure.tsx";
import { quantityText, type Units } from "#app/_ui/value/format-quantity.ts";
import { significant } from "#app/_ui/value/working-words.ts";
import { lengthWords, typedWords } from "../_parts/answer/input-words.ts";
import { Verdict } from "../_parts/answer/verdict.tsx";
import type { AnswerContext, Calculator, InputLine } from "../_parts/calculator.ts";
import { PlumbFields } from "./plumb-fields.tsx";
import { toleranceLabel } from "./plumb-words.ts";
import { readPlumb, type PlumbGiven } from "./read-plumb.ts";

/** Millimetres to a tenth, or inches to a sixteenth. */
const small = (valueMm: number, units: Units): string => quantityText(valueMm, "mm", units, 1);

function inputLines(input: PlumbGiven, units: Units): readonly InputLine[] {
  const { tolerance, bottom, top } = input;
  const diagonals = (level: PlumbGiven["bottom"]) => (level.diagonals ? `${lengthWords(level.diagonals.cd_to_ab_mm, units)} and ${lengthWords(level.diagonals.bc_to_da_mm, units)}` : "not read");
  return [
    ["Column", `${lengthWords(input.width_mm, units)} × ${lengthWords(input.depth_mm, units)}`],
    ["Form height", lengthWords(input.form_height_mm, units)],
    ["Read at", `${lengthWords(bottom.height_mm, units)} and ${lengthWords(top.height_mm, units)} above the foot`],
    ...bottom.faces.map(({ face, along_mm, offset_mm }, index): InputLine => [`Face ${face}, ${typedWords(along_mm, "mm", units)} along`, `bottom ${typedWords(offset_mm, "mm", units)}, top ${typedWords(top.faces[index]?.offset_mm ?? Number.NaN, "mm", units)}`]),
    ["Diagonals, bottom", diagonals(bottom)], ["Diagonals, top", diagonals(top)],
    ["Allowed lean", tolerance.kind === "own" ? `own limit, ${lengthWords(tolerance.limit_mm, units)}` : toleranceLabel(tolerance.rule)],
  ];
}

export const PLUMB: Calculator<PlumbGiven, PlumbTold> = {
  name: "plumb",
  of: "plumb reading",
  start: ({ values }) => values.plumb,
  startNote: ({ column }) => `${column === null ? "Sizes are those of one column of this project." : "Sizes are the column’s."} The readings are invented: enter your own.`,
  examples: () => [],
  read: readPlumb,
  workOut: workOutPlumb,
  fields: (given, { units }) => <PlumbFields given={given} units={units} />,
  inputLines,
  answer: (told, input, context) => <Answer told={told} input={input} {...context} />,
  mind: (told) => [
    ...(told?.allowed_provenance === "memory" ? ["The tolerance is told from memory of the standard: read the project’s own edition before relying on it."] : []),
    "Read it again after the pour: a form moves while the concrete goes in.",
    "Slacken the opposite prop before a form is knocked over, and never take out a prop that holds it up.",
    "No rule on twist was found: it is shown, not judged.",
  ],
};

type AnswerProps = AnswerContext & { readonly told: PlumbTold; readonly input: PlumbGiven };

function Answer({ told, input, units }: AnswerProps) {
  const knocks = told.knocks.map(({ towards, by_mm, prop_on }) => ({ towards, propOn: prop_on, text: `towards ${towards} by ${small(by_mm, units)}` }));
  const turn = (value: number | null) => (value === null ? "not told" : units === "us" ? `${significant((value * 12) / 1000)} in/ft` : `${significant(value)} mm/m`);
  return (
    <>
      <Verdict
        title={told.passes ? `Within what is allowed: it leans ${small(told.lean_mm, units)} of ${small(told.allowed_mm, units)}.` : `Out of plumb: it leans ${small(told.lean_mm, units)}, allowed are ${small(told.allowed_mm, units)}.`}
        passes={told.passes}
        figures={[
          ...told.knocks.map(({ towards, by_mm, prop_on }) => ({ label: `Knock the head towards ${towards}`, figure: small(by_mm, units), note: `push from ${prop_on}: prop on side ${prop_on}` })),
          { label: "Lean over the height", figure: small(told.lean_mm, units), note: `allowed ${small(told.allowed_mm, units)}: ${told.allowed_source}` },
          { label: "Twist", figure: turn(told.twist_mm_per_m), note: told.twist_mm_per_m === null ? "two readings on one face tell it" : "head against foot, anticlockwise +" },
        ]}
      />
      <Figure caption="Foot and head on plan, A at the top; offsets drawn larger by the factor stated">
        <PlumbPlan
          widthMm={input.width_mm} depthMm={input.depth_mm} foot={told.bottom} lean={{ x: told.lean_x_mm, y: told.lean_y_mm }} twist_mm_per_m={told.twist_mm_per_m}
          allowedMm={told.allowed_mm} units={units} knocks={knocks} passes={told.passes}
        />
      </Figure>
      <CornerMoves corners={told.corners} units={units} />
      <SquareLines told={told} units={units} turn={turn} />
    </>
  );
}

/** "4.0 mm towards B, 2.0 mm towards A". */
function moveWords(x: number, y: number, units: Units): string {
  const parts = [[x, x > 0 ? "B" : "D"], [y, y > 0 ? "A" : "C"]] as const;
  const moves = parts.filter(([by]) => Math.abs(by) >= 0.05).map(([by, face]) => `${small(Math.abs(by), units)} towards ${face}`);
  return moves.length === 0 ? "stays" : moves.join(", ");
}

function CornerMoves({ corners, units }: { readonly corners: PlumbTold["corners"]; readonly units: Units }) {
  return (
    <DataTable
      caption="How each corner of the head has to move"
      columns={[
        { key: "corner", head: "Corner", isRowHead: true, cell: ({ corner }: PlumbTold["corners"][number]) => corner },
        { key: "move", head: "Move", cell: ({ x_mm, y_mm }) => moveWords(x_mm, y_mm, units) },
      ]}
      rows={corners}
      rowKey={({ corner }) => corner}
    />
  );
}

function SquareLines({ told, units, turn }: { readonly told: PlumbTold; readonly units: Units; readonly turn: (value: number | null) => string }) {
  const level = (name: string, { out_of_square_mm_per_m, residual_mm }: PlumbTold["bottom"]) =>
    `${name}: out of square ${turn(out_of_square_mm_per_m)}, ${small(residual_mm, units)} left over by the fit`;
  return <p className="text-sm text-ink-soft">{level("Bottom", told.bottom)}. {level("Top", told.top)}. Readings that fit each other badly leave more over: read them again.</p>;
}
