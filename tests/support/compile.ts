// Runs the TypeScript compiler on texts that stand beside the tests, without writing them.
import path from "node:path";
import ts from "typescript";

const folder = path.resolve(import.meta.dirname, "../core");
const root = path.resolve(import.meta.dirname, "../..");
const config = ts.parseJsonConfigFileContent(ts.readConfigFile(path.join(root, "tsconfig.json"), (file) => ts.sys.readFile(file)).config, ts.sys, root);
const options: ts.CompilerOptions = { ...config.options, noUnusedLocals: false, declaration: false, types: [] };

const kept = new Map<string, ts.SourceFile | undefined>();

export interface Compiled {
  /** What the compiler says, one text a place, with the reasons below it. */
  readonly messages: readonly string[];
  /** How many types it had to make. */
  readonly instantiations: number;
}

/** Type-checks a text as if it were a file of tests/core. */
export function compile(text: string): Compiled {
  const file = path.join(folder, "compiled-text.ts");
  const host = ts.createCompilerHost(options);
  const read = host.getSourceFile.bind(host);
  host.getSourceFile = (name, ...others) => {
    if (path.resolve(name) === file) return ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true);
    if (!kept.has(name)) kept.set(name, read(name, ...others));
    return kept.get(name);
  };
  host.fileExists = (name) => path.resolve(name) === file || ts.sys.fileExists(name);
  host.readFile = (name) => (path.resolve(name) === file ? text : ts.sys.readFile(name));
  const program = ts.createProgram([file], options, host);
  const source = program.getSourceFile(file);
  const messages = [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)].map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, "\n"));
  return { messages, instantiations: program.getInstantiationCount() };
}
