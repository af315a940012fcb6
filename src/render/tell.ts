import { basisText } from "../core/basis.js";
import type { Basis } from "../core/basis.js";
import { type Formula, namesIn } from "../core/formula.js";
import type { Line, Solution, Step } from "../core/solution.js";
import { unitSymbol } from "../core/units.js";
import { unitFor } from "../core/write-quantity.js";
import { figuresText, type Working, workings } from "../core/working.js";
import { answerTables, type Reader, valueCell } from "./answers.js";
import { checkSolution } from "./check-solution.js";
import { limitsOfUse } from "./limits-of-use.js";
import type { RenderOptions } from "./reading.js";
import type { Block, Cell, List, Section, Steps, Table, WorkedStep } from "./section.js";

/** What a renderer works with: the options, and for each system of units that is shown a reader and its title. */
interface Telling {
  readonly options: RenderOptions;
  readonly readers: readonly Reader[];
  readonly heads: readonly string[];
}

/**
 * Walks a solution once: what every renderer writes, in the order in which it stands.
 *
 * @throws TypeError if it is given something that is no solution
 */
export function tell(solution: unknown, options: RenderOptions): Section {
  checkSolution(solution);
  const { units, digits = 6 } = options;
  const readers: readonly Reader[] = units === "both" ? [{ units: "us", digits }, { units: "si", digits }] : [{ units, digits }];
  return section(solution, { options, readers, heads: units === "both" ? ["US units", "SI units"] : ["value"] });
}

function section(solution: Solution, telling: Telling): Section {
  const { show = "all", parts, of, notes = [] } = telling.options;
  const all = show === "all";
  // Numbers of sources stand only where the list of them does.
  const sources = all ? solution.bases : [];
  const blocks: readonly Block[] = [
    askedTable(solution, telling),
    lineTable("Given", solution.given, sources, telling),
    lineTable("Constants", solution.constants, sources, telling),
    ...(show === "problem" ? [] : [stepsOf(solution, sources, telling)]),
    ...(all ? (solution.steps.length > 0 ? [answersOfSteps(solution, telling)] : answerTables(solution, telling.readers, telling.heads)) : []),
    list("Assumed", solution.assumptions),
    ...(all && of !== undefined ? [list("Limits of use", limitsOfUse(of))] : []),
    list("Beware", solution.cautions),
    ...(all ? [{ ...list("Stands on", sources.map(basisText)), numbered: true }] : []),
    ...notes.map(({ title, lines }) => list(title, lines)),
  ];
  const inner = { ...telling, options: withoutOwn(telling.options) };
  return {
    title: solution.title,
    blocks: blocks.filter((block) => (block.kind === "table" ? block.rows : block.kind === "list" ? block.lines : block.steps).length > 0),
    parts: parts === false || show === "problem" ? [] : solution.parts.map((part) => section(part, inner)),
  };
}

/** The options of a part: what is asked, noted and limited is told of the whole. */
function withoutOwn({ units, digits, formulas, parts, show }: RenderOptions): RenderOptions {
  return { ...(units === undefined ? {} : { units }), ...(digits === undefined ? {} : { digits }), ...(formulas === undefined ? {} : { formulas }), ...(parts === undefined ? {} : { parts }), ...(show === undefined ? {} : { show }) };
}

/**
 * The steps that are asked for, unless told otherwise: those that no other step works on. A step that another only adds
 * or subtracts is still an answer of its own, as the parts of a sum are.
 */
export function askedSteps({ steps }: Solution, asked?: readonly string[]): readonly Step[] {
  const workedOn = new Set(steps.flatMap(({ formula }) => namesWorkedOn(formula)));
  return steps.filter(({ name }) => (asked === undefined ? !workedOn.has(name) : asked.includes(name)));
}

/** The names in a formula but for those that it only adds or subtracts. */
function namesWorkedOn(formula: Formula): readonly string[] {
  if (formula.kind === "name") return [];
  return formula.kind === "sum" ? [...namesWorkedOn(formula.left), ...namesWorkedOn(formula.right)] : namesIn(formula);
}

function askedTable(solution: Solution, { options, readers, heads }: Telling): Table {
  const rows = askedSteps(solution, options.asked).map(({ says, symbol, shown, value }) => [
    [says],
    [{ symbol }],
    ...readers.map(({ units }): Cell => [{ number: "", unit: unitSymbol(unitFor(shown, units, value.unit)), exact: true }]),
  ]);
  return { kind: "table", title: "Asked", head: ["what", "symbol", ...(heads.length > 1 ? heads : ["unit"])], rows, needsHead: heads.length > 1 };
}

function lineTable(title: string, lines: readonly Line[], sources: readonly Basis[], { readers, heads }: Telling): Table {
  const rows = lines.map(({ says, symbol, value, shown, assumed, basis }): readonly Cell[] => {
    const source = title === "Constants" || assumed ? sourceText(basis, sources) : "";
    return [[says], [{ symbol }], ...readers.map((reader) => valueCell(value, shown, reader)), [[assumed ? "assumed" : "", source].filter((one) => one !== "").join(" ")]];
  });
  const noted = rows.some((row) => row.at(-1)?.[0] !== "");
  return { kind: "table", title, head: ["what", "symbol", ...heads, ...(noted ? ["note"] : [])], rows: noted ? rows : rows.map((row) => row.slice(0, -1)), needsHead: heads.length > 1 };
}

/** The number of a source, as it stands in the list of them. */
function sourceText(basis: Basis | undefined, sources: readonly Basis[]): string {
  const at = basis === undefined ? -1 : sources.indexOf(basis);
  return at < 0 ? "" : `[${String(at + 1)}]`;
}

function stepsOf(solution: Solution, sources: readonly Basis[], { options, readers, heads }: Telling): Steps {
  const symbols = new Map([...solution.given, ...solution.constants, ...solution.steps].map(({ name, symbol }) => [name, symbol]));
  const [first = [], second = first] = readers.map(({ units, digits }) => workings(solution, { ...(units === undefined ? {} : { units }), digits }));
  const steps = first.map((working, index): WorkedStep => {
    const { says, name, formula, governedBy, differs, basis } = working.step;
    const other = second[index] ?? working;
    const source = sources.indexOf(basis) + 1;
    return {
      says, name, formula,
      ways: look(working) === look(other) ? [{ title: "", working }] : [{ title: heads[0] ?? "", working }, { title: heads[1] ?? "", working: other }],
      ...(governedBy === undefined ? {} : { governedBy }),
      ...(differs === undefined ? {} : { differs }),
      ...(source === 0 ? {} : { source }),
    };
  });
  const symbolOf = (name: string): string | { readonly symbol: string } => ({ symbol: symbols.get(name) ?? name });
  return { kind: "steps", title: "Worked", steps, blank: options.show === "sheet", named: options.formulas === "symbols" ? symbolOf : (name) => name };
}

/** Everything a working shows, to see whether two look alike. */
function look(working: Working): string {
  return JSON.stringify([figuresText(working), working.conversions, working.result, working.shown]);
}

function answersOfSteps({ steps }: Solution, { readers, heads }: Telling): Table {
  const rows = steps.map(({ says, symbol, value, shown, governedBy }): readonly Cell[] => [
    [says],
    [{ symbol }],
    ...readers.map((reader): Cell => {
      const cell = valueCell(value, shown, reader);
      return [...(cell[0] === "≈ " ? [] : ["= "]), ...cell, ...(governedBy === undefined ? [] : [` (governed by ${governedBy})`])];
    }),
  ]);
  return { kind: "table", title: "Answers", head: ["what", "symbol", ...heads], rows, needsHead: heads.length > 1 };
}

function list(title: string, lines: readonly string[]): List {
  return { kind: "list", title, lines, numbered: false };
}
