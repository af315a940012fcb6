import { nearest, type Problem, problem, shown } from "../../core/problems.js";
import { refusal } from "../../core/refuse-all.js";
import { findUnit, type UnitCode } from "../../core/units.js";
import type { Words } from "../../core/wording.js";
import type { Column, Columns } from "./columns.js";
import type { RawCell } from "./raw-row.js";
import { say } from "./refusals.js";

/** A column of the sheet at hand: where it stands, what is read of it, its heading, and the unit its heading tells. */
export interface FoundColumn {
  readonly at: number;
  readonly key: string;
  readonly column: Column;
  readonly heading: string;
  readonly unit?: UnitCode;
}

/** Where the user has a column under a heading of his own. */
export type Headings<C extends Columns> = Readonly<Partial<Record<keyof C & string, string>>>;

const plain = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ").trim();

/** The name and the unit of a heading: `Width (ft)`, `width [ft]`, `width, ft` and `width ft`. */
function parted(heading: string, { is }: Column): { readonly name: string; readonly unit?: UnitCode } {
  if (typeof is !== "string" || is === "text" || is === "yes or no") return { name: plain(heading) };
  const [, before = "", inside = ""] = /^(.*?)[([]([^()[\]]*)[)\]]\s*$/.exec(heading) ?? /^(.*),([^,]*)$/.exec(heading) ?? /^(.*?)\s(\S+)$/.exec(heading) ?? [];
  const unit = inside.trim() === "" ? undefined : findUnit(is, inside.trim());
  return unit === undefined ? { name: plain(heading) } : { name: plain(before), unit };
}

/** No name of a column is longer. */
const longest = 200;

/** Whether a heading is that of a column, and with which unit. */
function fits(heading: string, column: Column, own: string | undefined): { readonly unit?: UnitCode } | undefined {
  const { name, unit } = parted(heading, column);
  const found = unit === undefined ? {} : { unit };
  if (own !== undefined) return heading === own ? found : undefined;
  const single = column.several === true && name.length <= longest ? name.replace(/ ?\d+$/, "") : name;
  if (column.names.includes(single)) return found;
  return column.names.includes(plain(heading)) ? {} : undefined;
}

/** Finds the columns in a header; what is missing, twice there, or misspelt is a problem. */
export function findColumns(columns: Columns, header: readonly (RawCell | undefined)[], headings: Headings<Columns>): readonly FoundColumn[] | readonly Problem[] {
  const texts = header.map((cell) => cell?.text ?? "");
  const rows = Object.entries(columns);
  const found = texts.flatMap((heading, at) =>
    rows.flatMap(([key, column]): FoundColumn[] => {
      const fit = fits(heading, column, headings[key]);
      return fit === undefined ? [] : [{ at, key, column, heading, ...fit }];
    }),
  );
  const left = texts.filter((_, at) => !found.some((one) => one.at === at));
  const problems = rows.flatMap(([key, column]): Problem[] => {
    const own = found.filter((one) => one.key === key);
    const told = headings[key];
    const trouble = (code: "missing" | "refused", given: string | Words, wanted: Words): Problem[] => [problem({ ...refusal(["rows", 1, key], given, wanted, code), says: column.says })];
    if (own.length > 1 && column.several !== true) return trouble("refused", say("headings", { headings: own.map(({ heading }) => shown(heading)) }), say("sameColumn"));
    if (own.length > 0) return [];
    const near = left.find((heading) => nearest(plain(heading), column.names) !== undefined);
    if (told !== undefined) return trouble("missing", "", say("noSuchColumn", { column: shown(told), columns: texts.map(shown) }));
    if (near !== undefined) return trouble("refused", shown(near), say("didYouMean", { names: column.names.map(shown) }));
    return column.optional === true ? [] : trouble("missing", "", say("nameAColumn", { names: column.names.map(shown) }));
  });
  return problems.length > 0 ? problems : found;
}
