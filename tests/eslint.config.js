// Run from the top folder with `eslint -c tests/eslint.config.js`: the paths below are relative to it.
import path from "node:path";
import { defineConfig } from "eslint/config";
import jsdoc from "eslint-plugin-jsdoc";
import tsdoc from "eslint-plugin-tsdoc";
import tseslint from "typescript-eslint";
import documented from "./support/documented.js";

const zodAsMini = 'The one way to zod is `import * as z from "zod/mini"`: the others carry up to 80 kB more.';

export default defineConfig(
  // This file is outside tsconfig.json: the types of the ESLint plugins take longer to check than all the rest.
  { ignores: ["docs/dist/**", "tests/consumers/browser/**", "tests/eslint.config.js"] },
  { linterOptions: { reportUnusedDisableDirectives: "error" } },
  {
    files: ["**/*.{ts,mjs,js}"],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: { parserOptions: { project: ["./tsconfig.json", "./docs/site/page/tsconfig.json"], tsconfigRootDir: path.resolve(import.meta.dirname, "..") } },
    rules: {
      eqeqeq: "error",
      "no-console": "off",
      "prefer-const": "error",
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/consistent-type-exports": "error",
      "@typescript-eslint/no-import-type-side-effects": "error",
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreVoidOperator: true }],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "@typescript-eslint/no-misused-spread": ["error", { allow: ["string"] }],
      // A cast says which type is meant; `!` stays forbidden in src. An interface or a type, as it reads better.
      "@typescript-eslint/non-nullable-type-assertion-style": "off",
      "@typescript-eslint/consistent-type-definitions": "off",
      "@typescript-eslint/consistent-indexed-object-style": "off",
    },
  },
  {
    files: ["src/**/*.ts"],
    plugins: { jsdoc, tsdoc },
    rules: {
      "no-console": "error",
      "tsdoc/syntax": "error",
      "@typescript-eslint/explicit-module-boundary-types": "error",
      "jsdoc/require-jsdoc": [
        "error",
        { publicOnly: true, require: { ClassDeclaration: true, FunctionDeclaration: true }, contexts: ["ExportNamedDeclaration > VariableDeclaration"] },
      ],
      "jsdoc/check-param-names": ["error", { disableMissingParamChecks: true }],
      "jsdoc/require-param-description": "error",
      "jsdoc/require-returns-description": "error",
      "no-restricted-syntax": [
        "error",
        { selector: 'ImportDeclaration[source.value=/^zod(?!.mini$)/]', message: zodAsMini },
        { selector: 'ImportDeclaration[source.value="zod/mini"] > :matches(ImportSpecifier, ImportDefaultSpecifier)', message: zodAsMini },
        { selector: 'ImportDeclaration[source.value="zod/mini"] > ImportNamespaceSpecifier[local.name!="z"]', message: zodAsMini },
        { selector: ':matches(ImportExpression, ExportNamedDeclaration, ExportAllDeclaration)[source.value=/^zod/]', message: zodAsMini },
      ],
    },
  },
  { files: ["src/catalogue.ts", "src/*/index.ts"], plugins: { settingbed: { rules: { documented } } }, rules: { "settingbed/documented": "error" } },
  { files: ["tests/**"], rules: { "@typescript-eslint/no-non-null-assertion": "off" } },
  {
    // Scripts read package.json, dist and the parser's services, which come untyped.
    files: ["tests/**/*.{mjs,js}"],
    rules: {
      "@typescript-eslint/no-unsafe-argument": "off",
      "@typescript-eslint/no-unsafe-assignment": "off",
      "@typescript-eslint/no-unsafe-call": "off",
      "@typescript-eslint/no-unsafe-member-access": "off",
      "@typescript-eslint/no-unsafe-return": "off",
    },
  },
);
