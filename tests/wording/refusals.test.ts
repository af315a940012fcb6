// The refusals that only one topic knows: each is told in Spanish with the same figures, and no English is left in it.
import { describe, expect, it } from "vitest";
import { say as boards } from "../../src/boards/refusals.js";
import { common } from "../../src/core/common-refusals.js";
import { type Problem, problemText } from "../../src/core/index.js";
import type { Refusals } from "../../src/core/refusals.js";
import { say as exercise } from "../../src/exercise/refusals.js";
import { say as fasteners } from "../../src/fasteners/refusals.js";
import { filmReadingCheck, filmReadingPlan, spreadingRate, wetFilmBracket } from "../../src/film/index.js";
import { say as film } from "../../src/film/refusals.js";
import { boardLayout } from "../../src/boards/index.js";
import { mixedFace, toolingLoss } from "../../src/joints/index.js";
import { coursing } from "../../src/layout/index.js";
import { say as joints } from "../../src/joints/refusals.js";
import { say as layout } from "../../src/layout/refusals.js";
import { say as limits } from "../../src/limits/refusals.js";
import { say as many } from "../../src/many/refusals.js";
import { say as membrane } from "../../src/membrane/refusals.js";
import { say as mortar } from "../../src/mortar/refusals.js";
import { say as movement } from "../../src/movement/refusals.js";
import { say as pictures } from "../../src/pictures/refusals.js";
import { say as planning } from "../../src/planning/refusals.js";
import { say as schema } from "../../src/schema/refusals.js";
import { say as shapes } from "../../src/shapes/refusals.js";
import { say as sheet } from "../../src/sheet/reading/refusals.js";
import { say as takeoff } from "../../src/takeoff/refusals.js";
import { say as timing } from "../../src/timing/refusals.js";
import { say as weather } from "../../src/weather/refusals.js";
import { type RefusalTexts, spanish, spanishParts } from "../../src/wording/index.js";
import { takeOff } from "../../src/takeoff/index.js";
import { entranceInFeet } from "../takeoff/entrance-job.js";
import { samples } from "./samples/index.js";
import { englishWords, figures, prose } from "./spanish-text.js";

/** How the topics word their refusals. */
const says: Readonly<Record<keyof RefusalTexts, { readonly english: Refusals }>> = {
  boards, common, exercise, fasteners, film, joints, layout, limits, many, membrane, mortar, movement, pictures, planning, schema, shapes, sheet, takeoff, timing, weather,
};

type Word = (values?: unknown) => string;
const all = Object.entries(says).flatMap(([topic, { english }]) =>
  Object.entries(english).map(([name, said]) => {
    const values = (samples[topic as keyof RefusalTexts] as Readonly<Record<string, unknown>>)[name];
    const inSpanish = (spanishParts.refusals[topic as keyof RefusalTexts] as Readonly<Record<string, Word>>)[name];
    return { name: `${topic}.${name}`, english: (said as Word)(values), spanish: inSpanish?.(values) ?? "" };
  }));

describe("every refusal", () => {
  it.each(all)("$name", ({ english, spanish }) => {
    expect(english).not.toMatch(/undefined|\[object/);
    expect(spanish).not.toMatch(/undefined|\[object/);
    expect(spanish).not.toBe("");
    expect(spanish).not.toBe(english);
    expect(prose(spanish)).not.toMatch(englishWords);
    expect(figures(spanish)).toEqual(figures(english));
  });

  it("says one in the singular, in both languages", () => {
    const one = (topic: keyof RefusalTexts, name: string, values: unknown): readonly string[] =>
      [says[topic].english, spanishParts.refusals[topic] as Readonly<Record<string, Word>>].map((words) => (words[name] as Word | undefined)?.(values) ?? "");
    const lists = ["batches", "days", "heads and sills", "heights", "intervals", "items", "layers", "lengths", "openings", "pieces", "readings", "spots", "stages", "tasks", "units"];
    const [singular, plural] = [lists.map((of) => one("common", "counted", { count: 1, of })), lists.map((of) => one("common", "counted", { count: 2, of }))];
    expect(singular.map(([english]) => english)).toEqual(
      ["1 batch", "1 day", "1 head or sill", "1 height", "1 interval", "1 item", "1 layer", "1 length", "1 opening", "1 piece", "1 reading", "1 spot", "1 stage", "1 task", "1 unit"],
    );
    expect(plural.map(([english]) => english)).toEqual(lists.map((of) => `2 ${of}`));
    expect(singular.map(([, spanish]) => spanish).filter((text) => / \w*s\b/.test(text ?? ""))).toEqual([]);
    expect(plural.map(([, spanish]) => spanish).filter((text) => !/ \S*s\b/.test(text ?? ""))).toEqual([]);
    expect(one("timing", "readingsAfter", { count: 1, time: "noon" })).toEqual(["1 reading after noon", "1 lectura después de noon"]);
    expect(one("many", "columnsOfOneLength", { count: 1, other: "area", otherCount: 3 })).toEqual(["has 1 number where area has 3", "tiene 1 número y area tiene 3"]);
  });

  it("is under one name only in its topic, and all of them are looked at", () => {
    expect(Object.keys(says).sort()).toEqual(Object.keys(spanishParts.refusals).sort());
  });
});

const problemsOf = (run: { readonly try: (input: unknown) => unknown }, input: unknown): readonly Problem[] => (run.try(input) as { readonly problems?: readonly Problem[] }).problems ?? [];
const spanishOf = (run: { readonly try: (input: unknown) => unknown }, input: unknown): readonly string[] => problemsOf(run, input).map((one) => problemText(one, spanish));
const size = { unitLength: "15 in", unitHeight: "7 in" };
const rod = { bedJoint: { least: "3/8 in", wanted: "3/8 in", most: "3/8 in" }, unitHeights: ["7-5/8 in"], datum: "unit to unit", leastCut: "5 in", tape: "1/16 in" };
const boardJob = { openings: [], board: { width: "36 in", length: "60 in" }, orientation: "flat", stagger: "0 in", studs: { spacing: "16 in", start: "0 in" }, edgesBacked: true, reuseOffcuts: false };
const wall = { kind: "rectangle", width: "12 ft", height: "8 ft" };

describe("a refusal as it is met", () => {
  it.each([
    [filmReadingCheck, { film: "dry", rule: "SSPC-PA 2 level 1", least: "10 mil", spots: [{ readings: ["11 mil"] }] }, [
      "spots (puntos que se leyeron): 1 punto: SSPC-PA 2 level 1 juzga juntos 5 puntos de un área de 100 ft2; revise cada área por separado",
      "spots[0].readings (lecturas en el punto): 1 lectura: un punto es el promedio de 3 o más",
    ]],
    [filmReadingCheck, { film: "wet", rule: "band", least: "15 mil", most: "12 mil", spots: [] }, [
      "most (película máxima especificada): es 12 mil, pero debe ser al menos la película mínima, 15 mil",
      "spots (puntos que se leyeron): no se dio ningún punto: dé al menos uno",
    ]],
    [filmReadingPlan, { area: "1250 ft2", rule: "own", spotsPerArea: 5 }, ["areaSize (tamaño de un área de lecturas, según regla propia): falta; una regla propia necesita areaSize y readingsPerSpot"]],
    [spreadingRate, { dryFilm: "10 mil", coats: 1 }, ["volumeSolids (sólidos en volumen): falta; una película seca lo necesita; escriba un porcentaje de la ficha técnica"]],
    [wetFilmBracket, { lastWetTooth: "16 mil", firstDryTooth: "14 mil" }, ["firstDryTooth (diente más bajo que está seco; se deja fuera si el más alto está mojado): es 14 mil, pero debe ser mayor que el último diente mojado, 16 mil"]],
    [mixedFace, { area: "200 ft2", sizes: [{ ...size, share: "60 %" }, { ...size, share: "35 %" }], headJoint: "3/8 in", bedJoint: "3/8 in", depth: "3/4 in" }, [
      "sizes (tamaños de pieza, cada uno con su parte de la cara): las proporciones suman 95 %: deben sumar 100 %",
    ]],
    [coursing, { ...rod, height: "10 in" }, [
      "height (altura por repartir en hiladas, de su extremo bajo al alto): 10 in: juntas de 0.375 in a 0.375 in no lo llenan: ningún número entero de hiladas cierra; con una de las hiladas cortada queda menos de 5 in para cada una; "
        + "con dos de las hiladas cortadas queda menos de 5 in para cada una; dé otra longitud o altura, un rango de juntas más amplio, o un leastCut menor",
    ]],
    [boardLayout, { ...boardJob, wall: { kind: "segment", width: "12 ft", rise: "3 ft" } }, [
      "wall.kind: segment: un remate curvo no se traza; trace la pared debajo de él, o el rectángulo que lo encierra, con la curva cortada de lo que se traza",
    ]],
    [boardLayout, { ...boardJob, wall, openings: [{ shape: { kind: "rectangle", width: "4 ft", height: "4 ft" }, left: "10 ft", bottom: "2 ft" }] }, ["openings[0]: el vano se sale de la pared"]],
    [boardLayout, { ...boardJob, wall: { kind: "polygon", points: [{ x: "0 ft", y: "0 ft" }, { x: "1 ft" }] } }, ["wall.points[1].y (qué tan alta está la esquina): falta; escriba un número y una de estas unidades: ft, in, m, mm, mil, yd"]],
    [boardLayout, { ...boardJob, wall, openings: {}, studs: 16 }, ["openings (vanos de la pared, cada uno con su lugar): un objeto no se puede leer; escriba una lista", "studs (montantes de la pared): 16 no se puede leer; dé un objeto con spacing, start"]],
    [takeOff, { ...entranceInFeet, weights: { perPack: { stone: "60 lb" } } }, [expect.stringMatching(/^weights\.perPack\.stone \(peso de un paquete [^)]*\): no se conoce aquí; (?:la lista tiene|¿quiso decir) /)]],
    [toolingLoss, { profile: "raked", width: "3/8 in", depth: "3/4 in", toolRadius: "1/4 in", profileDepth: "3/16 in" }, ["toolRadius (radio del llaguero; para una junta cóncava): no lo escriba para una junta rehundida (raked)"]],
  ])("%#", (run, input, texts) => {
    expect(spanishOf(run, input)).toEqual(texts);
  });

  it("is data: its name, and its values with their units, which JSON keeps", () => {
    const [problem] = problemsOf(wetFilmBracket, { lastWetTooth: "16 mil", firstDryTooth: "14 mil" });
    if (problem === undefined) throw new Error("nothing was refused");
    expect(problem.wants).toMatchObject({ kind: "words", name: "film.firstDryUnderLastWet" });
    const sent = JSON.parse(JSON.stringify(problem)) as Problem;
    expect(sent.wants).toMatchObject({ values: { lastWetTooth: { value: "16", unit: "mil" } } });
    expect(problemText(sent, spanish)).toBe(problemText(problem, spanish));
  });

  it("stays as it is written in a function of one's own", () => {
    const own = { code: "refused", path: ["hue"], says: "hue of the joint", given: "red", wants: { kind: "words", words: "only grey is kept" } } as const;
    expect(problemText(own, spanish)).toBe("hue (hue of the joint): red: only grey is kept");
    expect(problemText({ ...own, wants: { ...own.wants, name: "constructor.name" } }, spanish)).toBe("hue (hue of the joint): red: only grey is kept");
  });
});
