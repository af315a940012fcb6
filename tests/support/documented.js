// An ESLint rule for the entry files: what they show to users has a doc comment, and a function has an example in it.
import ts from "typescript";

/** @type {import("eslint").Rule.RuleModule} */
export default {
  meta: {
    type: "problem",
    messages: {
      comment: "{{name}} is shown to users and has no doc comment.",
      example: "{{name}} is a function shown to users and has no @example.",
    },
  },
  create(context) {
    /** @type {{ program: ts.Program, esTreeNodeToTSNodeMap: { get(node: unknown): ts.Node } }} */
    const { program, esTreeNodeToTSNodeMap } = context.sourceCode.parserServices;
    const checker = program.getTypeChecker();
    return {
      Program(node) {
        const module = checker.getSymbolAtLocation(esTreeNodeToTSNodeMap.get(node));
        for (const shown of module === undefined ? [] : checker.getExportsOfModule(module)) {
          const symbol = shown.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(shown) : shown;
          const tags = symbol.getJsDocTags(checker).map(({ name }) => name);
          const data = { name: symbol.name };
          if (symbol.getDocumentationComment(checker).length === 0) context.report({ node, messageId: "comment", data });
          else if (symbol.flags & ts.SymbolFlags.Function && !tags.includes("example")) context.report({ node, messageId: "example", data });
        }
      },
    };
  },
};
