import type { Cell, CellUse } from "./page.js";
import { declaration, escaped } from "./xml.js";

/** How the cells of one use look: places in the lists of fonts, fills and borders below, and how text lies. */
interface Look {
  readonly font: number;
  readonly fill: number;
  readonly border: number;
  readonly lies: string;
}

const middle = 'vertical="center"';
const wrapped = 'horizontal="left" indent="1" vertical="center" wrapText="1"';

const looks: Readonly<Record<CellUse, Look>> = {
  title: { font: 1, fill: 0, border: 0, lies: 'horizontal="left" indent="1" vertical="center"' },
  note: { font: 2, fill: 0, border: 0, lies: 'horizontal="left" indent="1" vertical="center"' },
  head: { font: 3, fill: 2, border: 1, lies: wrapped },
  numberHead: { font: 3, fill: 2, border: 1, lies: 'horizontal="right" vertical="center" wrapText="1"' },
  group: { font: 4, fill: 3, border: 1, lies: 'horizontal="left" indent="1" vertical="center"' },
  text: { font: 0, fill: 0, border: 1, lies: wrapped },
  number: { font: 0, fill: 0, border: 1, lies: middle },
  input: { font: 5, fill: 4, border: 2, lies: middle },
  answer: { font: 4, fill: 0, border: 1, lies: middle },
  faint: { font: 2, fill: 0, border: 1, lies: wrapped },
  faintNumber: { font: 2, fill: 0, border: 1, lies: middle },
  strong: { font: 4, fill: 0, border: 1, lies: wrapped },
};

const font = (size: number, colour: string, marks = ""): string => `<font>${marks}<sz val="${String(size)}"/><color rgb="FF${colour}"/><name val="Calibri"/><family val="2"/></font>`;
const fonts = [font(11, "000000"), font(16, "1F3A4D", "<b/>"), font(9, "5A6672"), font(10, "FFFFFF", "<b/>"), font(11, "000000", "<b/>"), font(11, "1F3FA8")];

const solid = (colour: string): string => `<fill><patternFill patternType="solid"><fgColor rgb="FF${colour}"/><bgColor indexed="64"/></patternFill></fill>`;
const fills = ['<fill><patternFill patternType="none"/></fill>', '<fill><patternFill patternType="gray125"/></fill>', solid("35556B"), solid("E4ECF1"), solid("FFF6D6")];

const side = (name: string, style: string, colour: string): string => `<${name} style="${style}"><color rgb="FF${colour}"/></${name}>`;
const borders = [
  "<border><left/><right/><top/><bottom/><diagonal/></border>",
  `<border><left/><right/><top/>${side("bottom", "thin", "D5DBE0")}<diagonal/></border>`,
  `<border>${["left", "right", "top", "bottom"].map((name) => side(name, "thin", "B89B3C")).join("")}<diagonal/></border>`,
];

const list = (name: string, parts: readonly string[]): string => `<${name} count="${String(parts.length)}">${parts.join("")}</${name}>`;

/** Texts that begin so are run by a spreadsheet once they are typed again or pasted. */
const runs = /^[\s=+\-@＝＋－＠]/;

/** Whether a text begins like a formula, so that it must be kept from being one. */
export function beginsLikeFormula(text: string): boolean {
  return runs.test(text);
}

/** Gives each cell the number of its style, and writes the styles in use. */
export class Styles {
  readonly #formats: string[] = [];
  readonly #used = new Map<string, string>();
  readonly #numbers = new Map<string, number>();

  constructor() {
    // A cell without a style has the first.
    this.#numberOf("plain", '<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>');
  }

  #numberOf(key: string, xf: string): number {
    const known = this.#numbers.get(key);
    if (known !== undefined) return known;
    this.#numbers.set(key, this.#numbers.size);
    this.#used.set(key, xf);
    return this.#numbers.size - 1;
  }

  /** The number of a cell's style. */
  styleOf({ use, format, value, formula }: Cell): number {
    const { font, fill, border, lies } = looks[use];
    const quoted = formula === undefined && typeof value === "string" && beginsLikeFormula(value);
    const id = format === undefined ? 0 : this.#formatOf(format);
    const attributes = `numFmtId="${String(id)}" fontId="${String(font)}" fillId="${String(fill)}" borderId="${String(border)}" xfId="0"${quoted ? ' quotePrefix="1"' : ""}`;
    return this.#numberOf(attributes + lies, `<xf ${attributes} applyNumberFormat="1" applyFont="1" applyFill="1" applyBorder="1" applyAlignment="1"><alignment ${lies}/></xf>`);
  }

  #formatOf(format: string): number {
    if (!this.#formats.includes(format)) this.#formats.push(format);
    return 164 + this.#formats.indexOf(format);
  }

  /** The part of the workbook that holds the styles. */
  xml(): string {
    const formats = this.#formats.map((format, index) => `<numFmt numFmtId="${String(164 + index)}" formatCode="${escaped(format)}"/>`);
    return [
      `${declaration}<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">`,
      formats.length === 0 ? "" : list("numFmts", formats),
      list("fonts", fonts) + list("fills", fills) + list("borders", borders),
      '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
      list("cellXfs", [...this.#used.values()]),
      '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>',
    ].join("");
  }
}
