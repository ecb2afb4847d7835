import { defineConfig, globalIgnores } from "eslint/config";
import { configs, parser, plugin } from "typescript-eslint";

const unused = { args: "after-used", varsIgnorePattern: "^_", argsIgnorePattern: "^_", caughtErrors: "all" };

// The types are tsc's business; these rules need none, so they are quick.
export default defineConfig(
  globalIgnores([".next/", ".data/", "prisma/generated/", "playwright-report/", "test-results/", "next-env.d.ts", "public/"]),
  {
    files: ["**/*.{ts,tsx,mts,mjs}"],
    extends: [configs.base],
    languageOptions: { parser },
    plugins: { "@typescript-eslint": plugin },
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      "eqeqeq": "error",
      "no-console": "error",
      "no-debugger": "error",
      "no-var": "error",
      "prefer-const": "error",
      "no-restricted-syntax": ["error", { selector: "ExportDefaultDeclaration", message: "Export by name." }],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/no-non-null-assertion": "error",
      "@typescript-eslint/no-unused-vars": ["error", unused],
      "@typescript-eslint/ban-ts-comment": ["error", { "ts-expect-error": "allow-with-description" }],
    },
  },
  {
    // Next, Playwright and the configuration readers ask for a default export.
    files: ["app/**/{page,layout,error,global-error,not-found,loading,template,default,manifest,sitemap,robots,icon,opengraph-image}.{ts,tsx}", "*.config.{ts,mjs}", "tests/support/browser-setup.ts"],
    rules: { "no-restricted-syntax": "off" },
  },
  { files: ["lib/launch/**", "tests/bench/**", "tests/support/**"], rules: { "no-console": "off" } },
);
