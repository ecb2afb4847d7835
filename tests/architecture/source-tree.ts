import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import ts from "typescript";

export type Import = {
  /** A file by its path from the root, or a package by its name. */
  readonly to: string;
  readonly isOurs: boolean;
  /** Gone once the types are checked. */
  readonly isType: boolean;
};
export type Source = { readonly path: string; readonly text: string; readonly ast: ts.SourceFile; readonly imports: readonly Import[] };

const OURS = ["app", "lib", "prisma", "tests"];
const LEFT_OUT = new Set(["node_modules", "generated", ".next", ".data"]);

export function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (LEFT_OUT.has(entry.name)) return [];
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesBelow(path) : [path];
  });
}

export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  node.forEachChild((child) => walk(child, visit));
}

function specifierOf(node: ts.Node): { name: string; isType: boolean } | null {
  if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) {
    return { name: node.moduleSpecifier.text, isType: ts.isImportDeclaration(node) ? isTypeImport(node) : node.isTypeOnly };
  }
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    const [target] = node.arguments;
    return target && ts.isStringLiteral(target) ? { name: target.text, isType: false } : null;
  }
  if (!ts.isImportTypeNode(node) || !ts.isLiteralTypeNode(node.argument) || !ts.isStringLiteral(node.argument.literal)) return null;
  return { name: node.argument.literal.text, isType: true };
}

function isTypeImport({ importClause: clause }: ts.ImportDeclaration): boolean {
  if (!clause) return false;
  if (clause.isTypeOnly) return true;
  const named = clause.namedBindings;
  return !clause.name && named !== undefined && ts.isNamedImports(named) && named.elements.length > 0 && named.elements.every((each) => each.isTypeOnly);
}

function resolve(from: string, name: string): Pick<Import, "to" | "isOurs"> {
  if (name.startsWith("#")) return { to: name.slice(1), isOurs: true };
  if (name.startsWith(".")) return { to: normalize(join(dirname(from), name)), isOurs: true };
  return { to: name, isOurs: false };
}

export function aSource(path: string, text: string): Source {
  const ast = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, path.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS);
  const imports: Import[] = [];
  walk(ast, (node) => {
    const found = specifierOf(node);
    if (found) imports.push({ ...resolve(path, found.name), isType: found.isType });
  });
  return { path, text, ast, imports };
}

let read: readonly Source[] | undefined;
/** Every file of ours that holds code. */
export const theTree = (): readonly Source[] =>
  (read ??= [...OURS.flatMap(filesBelow), "proxy.ts"].filter((path) => /\.(ts|tsx|mjs)$/.test(path)).map((path) => aSource(path, readFileSync(path, "utf8"))));

/** What a rule finds once these files are planted in the tree, beyond what it finds without them. */
export function planted(rule: (sources: readonly Source[]) => readonly string[], files: Readonly<Record<string, string>>): string[] {
  const before = new Set(rule(theTree()));
  const added = Object.entries(files).map(([path, text]) => aSource(path, text));
  return rule([...theTree().filter(({ path }) => files[path] === undefined), ...added]).filter((breach) => !before.has(breach));
}
