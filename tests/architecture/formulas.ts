import { resolve } from "node:path";
import ts from "typescript";
import { filesBelow } from "./source-tree.ts";

export const FORMULA_ROOM = "lib/trade/engineering";

/**
 * A formula is a function exported from the engineering room whose answer holds a number, branded or bare: looked for in what a Result answers
 * when it is ok, in arrays, objects and unions, and in what a function handed back answers. What only says yes, no or why not is none.
 */
export type Formula = {
  readonly file: string;
  readonly name: string;
  readonly comment: string;
  /** Parameters that are numbers or lists of numbers. */
  readonly numbers: readonly string[];
  /** Units of the branded numbers in its answer, at any depth. */
  readonly answersIn: readonly string[];
  readonly mayRefuse: boolean;
};

/** The room with files planted in it, as the compiler sees it; plain text and no libraries beyond the language's own. */
function compile(planted: Readonly<Record<string, string>>): ts.Program {
  const { options } = ts.parseJsonConfigFileContent(ts.readConfigFile("tsconfig.json", (path) => ts.sys.readFile(path)).config, ts.sys, ".");
  const byPath = new Map(Object.entries(planted).map(([path, text]) => [resolve(path), text]));
  const host = ts.createCompilerHost(options);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => byPath.has(resolve(path)) || fileExists(path);
  host.readFile = (path) => byPath.get(resolve(path)) ?? readFile(path);
  host.getSourceFile = (path, ...rest) => {
    const text = byPath.get(resolve(path));
    return text === undefined ? getSourceFile(path, ...rest) : ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  };
  return ts.createProgram([...filesBelow(FORMULA_ROOM), ...Object.keys(planted)], { ...options, noEmit: true, incremental: false, types: [], lib: ["lib.esnext.d.ts"] }, host);
}

/** What is printed beside an answer, and why there is none: no answers themselves. */
const BESIDE = new Set(["Working", "Term", "Refusal"]);
const ARRAYS = /^(Readonly)?(Float64|Int32|Uint8)Array/;

/** Every unit a type holds at any depth; "-" for a bare number. */
function unitsIn(type: ts.Type, checker: ts.TypeChecker, seen = new Set<ts.Type>()): readonly string[] {
  if (seen.has(type)) return [];
  seen.add(type);
  const brand = type.getProperties().find(({ escapedName }) => String(escapedName).startsWith("__@unit"));
  if (brand !== undefined) {
    const unit = checker.getTypeOfSymbol(brand);
    return unit.isStringLiteral() ? [unit.value] : ["-"];
  }
  const below = (types: readonly ts.Type[]) => types.flatMap((each) => unitsIn(each, checker, seen));
  if (type.flags & ts.TypeFlags.NumberLike) return ["-"];
  if (BESIDE.has(type.aliasSymbol?.name ?? "")) return [];
  if (type.isUnionOrIntersection()) return below(type.types);
  if (!(type.flags & ts.TypeFlags.Object)) return [];
  if (checker.isArrayType(type) || checker.isTupleType(type)) return below(checker.getTypeArguments(type as ts.TypeReference));
  if (ARRAYS.test(checker.typeToString(type))) return ["-"];
  const calls = type.getCallSignatures();
  if (calls.length > 0) return below(calls.map((call) => call.getReturnType()));
  return below(type.getProperties().map((property) => checker.getTypeOfSymbol(property)));
}

const commentOf = (declaration: ts.Node): string => {
  const holder = ts.isVariableDeclaration(declaration) ? declaration.parent.parent : declaration;
  const text = holder.getSourceFile().text;
  const last = ts.getLeadingCommentRanges(text, holder.getFullStart())?.at(-1);
  const comment = last === undefined ? "" : text.slice(last.pos, last.end);
  return comment.startsWith("/**") ? comment : "";
};

const isNumbers = (type: ts.Type, checker: ts.TypeChecker): boolean => {
  const whole = checker.isArrayType(type) ? (checker.getTypeArguments(type as ts.TypeReference)[0] ?? type) : type;
  return (whole.flags & ts.TypeFlags.NumberLike) !== 0 || whole.getProperties().some(({ escapedName }) => String(escapedName).startsWith("__@unit"));
};

export function formulasOf(planted: Readonly<Record<string, string>> = {}): readonly Formula[] {
  const program = compile(planted);
  const checker = program.getTypeChecker();
  return [...filesBelow(FORMULA_ROOM), ...Object.keys(planted)].flatMap((file) => {
    const source = program.getSourceFile(file);
    const module = source === undefined ? undefined : checker.getSymbolAtLocation(source);
    return (module === undefined ? [] : checker.getExportsOfModule(module)).flatMap((symbol): Formula[] => {
      const declaration = symbol.valueDeclaration;
      const [call] = declaration === undefined ? [] : checker.getTypeOfSymbol(symbol).getCallSignatures();
      if (declaration === undefined || call === undefined) return [];
      const units = new Set(unitsIn(call.getReturnType(), checker));
      if (units.size === 0) return [];
      const numbers = call.parameters.filter((parameter) => isNumbers(checker.getTypeOfSymbol(parameter), checker)).map(({ name }) => name);
      const mayRefuse = call.getReturnType().aliasSymbol?.name === "Result";
      return [{ file: file.slice(FORMULA_ROOM.length + 1), name: symbol.name, comment: commentOf(declaration), numbers, answersIn: [...units].filter((unit) => unit !== "-"), mayRefuse }];
    });
  });
}

const PARTS = ["Formula", "Parameters", "Result", "Limits", "Example", "Source"] as const;
type Part = (typeof PARTS)[number];

/** The comment by its parts, or what is wrong with their order. */
function partsOf(comment: string): Readonly<Record<Part, string>> | string {
  const lines = comment.replace(/^\s*(\/\*\*|\*\/|\*)/gm, "").replace(/\*\/\s*$/, "");
  const places = PARTS.map((part) => lines.search(new RegExp(`^ ${part}: `, "m")));
  const missing = PARTS.filter((_, index) => (places[index] ?? -1) < 0);
  if (missing.length > 0) return `says no ${missing.join(", ").toLowerCase()}`;
  if ([...places].sort((a, b) => a - b).some((place, index) => place !== places[index])) return `has its parts in another order than ${PARTS.join(", ").toLowerCase()}`;
  const told = PARTS.map((part, index) => [part, lines.slice((places[index] ?? 0) + part.length + 3, places[index + 1]).replace(/\s+/g, " ").trim()]);
  return Object.fromEntries(told) as Record<Part, string>;
}

const unitsTold = (text: string): readonly string[] => [...text.matchAll(/\[([^\]]+)\]/g)].flatMap(([, inside = ""]) => inside.split(/,| or /).map((unit) => unit.trim()));
/** The year or number of an edition, a law of mechanics, or in words that there is none to name. */
const SOURCE = /\b(19|20)\d\d\b|\d(R)?-\d\d\b|\(\d\d\/\d\d\)|Report \d+|elastic theory|beam theory|equations of|statics|common practice, no source/;

/** What a formula's comment fails to say; empty where it says all. */
export function unsaid({ comment, numbers, answersIn, mayRefuse }: Formula, units: ReadonlySet<string>): readonly string[] {
  if (comment === "") return ["has no comment"];
  const parts = partsOf(comment);
  if (typeof parts === "string") return [parts];
  const says = (part: Part, name: string) => new RegExp(`(^|[^\\w])${name}($|[^\\w])`).test(parts[part]);
  const told = unitsTold(parts.Result);
  const unknown = [...unitsTold(parts.Parameters), ...told].filter((unit) => !units.has(unit));
  return [
    ...numbers.filter((name) => !says("Parameters", name)).map((name) => `does not name its parameter ${name}`),
    ...(unitsTold(parts.Parameters).length === 0 ? ["gives its parameters no unit"] : []),
    ...(told.length === 0 ? ["gives its result no unit"] : answersIn.filter((unit) => !told.includes(unit)).map((unit) => `answers in ${unit} and does not say so`)),
    ...unknown.map((unit) => `names the unit ${unit}, which nobody here knows`),
    ...(mayRefuse && !/refused|those of `/.test(parts.Limits) ? ["may refuse and does not say when"] : []),
    ...(SOURCE.test(parts.Source) ? [] : ["names no edition of its source, and does not say that it has none"]),
  ];
}
