import ts from "typescript";
import { walk, type Source } from "./source-tree.ts";

const PURE = ["lib/kernel/", "lib/trade/", "lib/access/", "lib/contracts/"];
const PURE_PACKAGES: Readonly<Record<string, readonly string[]>> = { "lib/kernel/": ["temporal-polyfill"], "lib/contracts/": ["zod"] };
const IMPURE_NAMES = new Set(["process", "fetch", "setTimeout", "setInterval", "queueMicrotask", "crypto", "performance", "window", "document", "globalThis", "console"]);
const IMPURE_CALLS = new Set(["Date.now", "Math.random", "Temporal.Now"]);

/** What depends on anything but its arguments. */
function impurity(node: ts.Node): string | null {
  if (node.kind === ts.SyntaxKind.AsyncKeyword || ts.isAwaitExpression(node)) return "async";
  if (ts.isPropertyAccessExpression(node) && IMPURE_CALLS.has(node.getText())) return node.getText();
  if (ts.isNewExpression(node) && node.expression.getText() === "Date" && (node.arguments?.length ?? 0) === 0) return "new Date()";
  if (ts.isIdentifier(node) && IMPURE_NAMES.has(node.text) && !isOnlyAName(node)) return node.text;
  return null;
}

/** A property or key called so is not the thing itself. */
function isOnlyAName({ parent, text }: ts.Identifier): boolean {
  if (ts.isPropertyAccessExpression(parent)) return parent.name.text === text && parent.expression.getText() !== text;
  return ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isVariableDeclaration(parent) || ts.isParameter(parent);
}

export function purityBreaches(sources: readonly Source[]): string[] {
  return sources.flatMap(({ path, ast, imports }) => {
    const room = PURE.find((folder) => path.startsWith(folder));
    if (room === undefined) return [];
    const packages = PURE_PACKAGES[room] ?? [];
    const found = imports.filter(({ to, isOurs }) => !isOurs && !packages.includes(to)).map(({ to }) => `${path} imports ${to}`);
    walk(ast, (node) => {
      const what = impurity(node);
      if (what !== null) found.push(`${path} uses ${what}`);
    });
    return found;
  });
}

const SEALS = /^(sealCompany|sealProject)$/;

/** A scope is made where the caller was checked, and nowhere else; a cast would make one out of nothing. */
export function scopeBreaches(sources: readonly Source[]): string[] {
  return sources.flatMap(({ path, ast }) => {
    const found: string[] = [];
    walk(ast, (node) => {
      if (ts.isIdentifier(node) && SEALS.test(node.text) && !path.startsWith("lib/server/gate/")) found.push(`${path} names ${node.text}`);
      const type = ts.isAsExpression(node) || ts.isTypeAssertionExpression(node) ? node.type.getText() : "";
      if (/\b(CompanyScope|ProjectScope)\b/.test(type) && path !== "lib/server/gate/scope.ts") found.push(`${path} casts to ${type}`);
    });
    return found;
  });
}
