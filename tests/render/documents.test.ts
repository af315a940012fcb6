// The whole of a solution in each target: the same content, escaped, with nothing from elsewhere, and worked again by a
// pocket calculator (mathjs) from what HTML shows.
import katex from "katex";
import { evaluate } from "mathjs";
import { parse, type DefaultTreeAdapterTypes as Tree } from "parse5";
import { describe, expect, it } from "vitest";
import { coatingOrder } from "../../src/film/index.js";
import { concaveLoss, coursedFace } from "../../src/joints/index.js";
import { squareNotchBed } from "../../src/mortar/index.js";
import { formulaText, type Solution } from "../../src/core/index.js";
import { html, latex, markdown, mathml, styleSheet, text } from "../../src/render/index.js";
import { latexText } from "../../src/render/latex-text.js";
import { mathjsText } from "../support/formulas.js";
import { readParts, readXml, sides, within } from "../support/read-mathml.js";

const face = coursedFace.solve({ area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" });
const solutions: readonly (readonly [string, Solution])[] = [
  ["coursed face", face],
  ["coating", coatingOrder.solve({ area: "3850 ft2", wetFilm: "35 mil", coats: 1, lossShare: "30 %", packVolume: "5 gal" })],
  ["concave joint", concaveLoss.solve({ width: "3/8 in", depth: "3/4 in", toolRadius: "1/4 in" })],
  ["notched bed", squareNotchBed.solve({ depth: "1/2 in", width: "1/2 in", tooth: "1/4 in", angle: "45 deg" })],
];
const renderers = Object.entries({ text, markdown, html, latex, mathml });

type Node = Tree.Node;

/** Every node of a page; what is not as HTML wants it is refused. */
function nodesOf(page: string): readonly Node[] {
  const errors: string[] = [];
  const document = parse(page, { onParseError: ({ code }) => void errors.push(code) });
  expect(errors).toEqual([]);
  const all = (node: Node): readonly Node[] => [node, ...("childNodes" in node ? node.childNodes.flatMap(all) : [])];
  return all(document);
}

const elements = (page: string): readonly Tree.Element[] => nodesOf(page).filter((node): node is Tree.Element => "tagName" in node);
const words = (node: Node): string => ("value" in node ? node.value : "childNodes" in node ? node.childNodes.map(words).join("") : "");

describe.each(solutions)("the HTML of a %s", (_, solution) => {
  it.each(["us", "si"] as const)("shows numbers that give the printed result when they are typed (%s)", (units) => {
    const steps = [...html(solution, { units, page: true }).matchAll(/<math display="block"[^>]*>(.*?)<\/math>/g)].map(([, inside = ""]) => readXml(`<math>${inside}</math>`));
    expect(steps).toHaveLength(solution.steps.length);
    steps.forEach((math, index) => {
      const rows = within(within(math)[0] as never).map((row) => sides(row));
      // The line with numbers is the one before the first result; a formula that is a bare name has none.
      const results = rows.findIndex((row, at) => at > 0 && row[0]?.parts.length === 0 && row.length === 2 && row[1]?.parts[0]?.localName === "mn" && row[1].parts.filter(({ localName }) => localName !== "mtext").length === 1 && rows[at - 1] !== undefined);
      const numbers = rows[results - 1]?.[1];
      const result = rows[results]?.[1];
      if (numbers === undefined || result === undefined) throw new Error("a line is missing");
      if (solution.steps[index]?.formula.kind === "name") return;
      const read = readParts(numbers.parts, new Map());
      let at = 0;
      // Each number is typed as it stands; per cent and degrees as the numbers they stand for.
      const typed = mathjsText(formulaText(read.formula)).replace(/(?<![\w.^])\d+(\.\d+)?(?![\w(])/g, (digits) => `(${digits} * ${read.units[at] === "%" ? "0.01" : read.units[at] === "deg" ? String(Math.PI / 180) : "1"}${((at += 1), "")})`);
      const printed = result.parts[0]?.textContent ?? "";
      const places = printed.split(".")[1]?.length ?? 0;
      expect(Math.abs(Number(evaluate(typed)) - Number(printed)), typed).toBeLessThanOrEqual(1.01 * 10 ** -places);
    });
  });
});

describe("HTML", () => {
  const page = html(face, { page: true, units: "both", of: coursedFace });

  it("asks for nothing from elsewhere, and needs neither script nor style attributes", () => {
    const all = elements(page);
    expect(all.filter(({ tagName }) => ["script", "link", "img", "iframe", "object", "embed", "a", "form", "base"].includes(tagName))).toEqual([]);
    expect(all.flatMap(({ attrs }) => attrs).filter(({ name, value }) => name === "style" || name.startsWith("on") || name === "src" || name === "href" || /^(https?:)?\/\//.test(value))).toEqual([]);
    expect(styleSheet).not.toMatch(/url\(|@import|https?:/);
  });

  it("says its language and its title, and has a head for each column and row", () => {
    const all = elements(page);
    expect(all.find(({ tagName }) => tagName === "html")?.attrs).toEqual([{ name: "lang", value: "en" }]);
    expect(words(all.find(({ tagName }) => tagName === "title") as Node)).toBe(face.title);
    for (const table of all.filter(({ tagName }) => tagName === "table")) {
      const [head, ...body] = rowsOf(table);
      expect(head?.every(({ tagName, attrs }) => tagName === "th" && attrs[0]?.value === "col")).toBe(true);
      for (const row of body) {
        expect(row).toHaveLength(head?.length ?? 0);
        expect(row[0]?.tagName).toBe("th");
      }
    }
    expect(all.filter(({ tagName, attrs }) => tagName === "math" && !attrs.some(({ name, value }) => name === "alttext" && value !== ""))).toEqual([]);
  });

  it("leaves its style out where that is asked for, and puts it into the head of a page", () => {
    expect(html(face, { style: false })).not.toContain("<style");
    expect(html(face)).toContain(styleSheet);
    expect(page.indexOf("<style>")).toBeLessThan(page.indexOf("</head>"));
  });

  function rowsOf(table: Node): readonly (readonly Tree.Element[])[] {
    const inside = (node: Node): readonly Tree.Element[] => ("childNodes" in node ? node.childNodes.flatMap((child) => ("tagName" in child ? (child.tagName === "tr" ? [child] : inside(child)) : [])) : []);
    return inside(table).map(({ childNodes }) => childNodes.filter((child): child is Tree.Element => "tagName" in child));
  }
});

describe("what users write", () => {
  const hostile = `</math></style><script>alert("1")</script> <img src=x onerror=y> & 'q' \\input{/etc/passwd} $x$ % # _a_ ^b^ ~ {c} -- | \`code\` **bold** [l](javascript:x) é ≈ 3² \u0000\ud800`;
  const told: Solution = { ...face, title: hostile, assumptions: [hostile], cautions: [hostile], given: face.given.map((line) => ({ ...line, says: hostile })), steps: face.steps.map((step) => ({ ...step, says: hostile, differs: hostile })) };

  it("stays text in HTML", () => {
    const all = elements(html(told, { page: true, style: false }));
    expect(all.filter(({ tagName }) => tagName === "script" || tagName === "img")).toEqual([]);
    expect(words(all.find(({ tagName }) => tagName === "h1") as Node)).toContain(`<script>alert("1")</script> <img src=x onerror=y> & 'q'`);
  });

  it("stays text in MathML, which is well-formed", () => {
    const root = readXml(mathml(told).trim());
    expect(root.getElementsByTagName("script")).toHaveLength(0);
    expect(root.getAttribute("alttext")).toContain("<script>");
    expect(root.textContent).toContain("\\input{/etc/passwd} $x$ % #");
  });

  it("stays text in LaTeX: what KaTeX prints of it is what was written", () => {
    const written = String.raw`a \input{x} $y$ 50 % & # _b_ ^c^ ~ {d} -- <e> |f|`;
    const printed = katex.renderToString(`\\text{${latexText(written)}}`, { output: "mathml", throwOnError: true, strict: "error" }).replace(/<annotation.*?<\/annotation>/, "").replace(/<[^>]*>/g, "");
    expect(printed.replaceAll("\u00a0", " ").replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&").replaceAll("\u200b", "")).toBe(written);
    expect(latex(told)).not.toMatch(/\\input|(?<!\\)%|(?<!\\)#/);
  });

  it("cannot end a block of Markdown", () => {
    const lines = markdown({ ...told, steps: told.steps.map((step) => ({ ...step, name: "```\n# x" })) }).split("\n");
    expect(lines.filter((line) => line.startsWith("#")).every((line) => !line.includes("<script"))).toBe(true);
    expect(lines).not.toContain("# x");
  });
});

describe("every target", () => {
  it.each(renderers)("%s says what is asked and given, the sources, what was assumed, cautions and limits of use", (_, render) => {
    const all = render(face, { of: coursedFace }).replaceAll("\\", "");
    for (const part of ["Asked", "Given", "Worked", "Answers", "Assumed", "Limits of use", "Beware", "Stands on", "width of the upright joints", "at least 0", "A tooled joint holds less", "derived: geometry", "2.38037"]) expect(all).toContain(part);
    // Exact: 3 units a square foot; rounded: the share.
    expect(all).toMatch(/≈|approx/);
  });

  it.each(renderers)("%s shows both systems side by side", (_, render) => {
    const all = render(face, { units: "both" });
    // 2.38037 ft3 is 67.4046 L: a foot is 0.3048 m, so a cubic foot 28.316846592 L.
    for (const part of ["2.38037", "67.4046", "US units", "SI units"]) expect(all).toContain(part);
  });

  it.each(renderers)("%s takes the digits the reader wants", (_, render) => {
    const all = render(face, { digits: 3 });
    expect(all).toContain("2.38");
    expect(all).not.toContain("2.38037 ");
  });

  it.each(renderers)("%s refuses what is no solution, and says what is wanted", (_, render) => {
    for (const wrong of [undefined, null, 3, "x", [], {}, face.answers, coursedFace, coursedFace.try({})]) expect(() => render(wrong as never)).toThrow(TypeError);
    expect(() => render(coursedFace as never)).toThrow(/call its \.solve/);
    expect(() => render(coursedFace.try({ area: "1 ft2" }) as never)).toThrow(/\.try|\.solution|nothing/);
  });

  it.each(renderers)("%s leaves the answers out of a problem and a sheet", (_, render) => {
    for (const show of ["problem", "sheet"] as const) {
      expect(render(face, { show })).not.toContain("2.38");
      expect(render(face, { show })).toContain("312");
    }
  });
});
