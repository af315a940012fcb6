import { type NoValueReason, withoutComma, type Wording } from "../core/wording.js";
import { spanishNames } from "./spanish/names.js";
import { spanishRefusals } from "./spanish/refusals.js";
import { dimensions, limits } from "./spanish/words.js";
import { wordingOf, type WordingParts } from "./wording-of.js";

const list = (names: readonly string[]): string => names.join(", ");
const reasons: Readonly<Record<NoValueReason, string>> = {
  division: "divide entre 0",
  root: "saca la raíz de un número negativo",
  logarithm: "saca el logaritmo de un número que no es mayor que 0",
  arcsine: "saca el arcoseno de un número fuera de -1 a 1",
  size: "el número resulta demasiado grande",
};
const but = (given: string, wanted: string): string => `es ${given}, pero debe ser ${wanted}`;

/** What the Spanish wording is made of: for an app that words some of it otherwise, with `wordingOf`. */
export const spanishParts: WordingParts = {
  input: "entrada",
  and: "y",
  kinds: { "a list": "una lista", "an object": "un objeto", "a function": "una función", "a symbol": "un símbolo", "a bigint": "un bigint" },
  names: spanishNames,
  refusals: spanishRefusals,
  dimension: (name) => dimensions[name],
  problems: {
    missing: (_, wanted) => (wanted === "" ? "falta" : `falta; ${wanted}`),
    unknown: (_, wanted) => `no se conoce aquí; ${wanted}`,
    either: (given, wanted) => `${given === "" ? "no se dio ninguno" : `${given} se excluyen`}; ${wanted}`,
    wrongKind: (given, wanted) => `${given} no se puede leer; ${wanted}`,
    empty: (_, wanted) => `está vacío; ${wanted}`,
    tooLong: (given, wanted) => `${given} es demasiado largo; ${wanted}`,
    notANumber: (given, wanted) => `${given} no tiene un número que se pueda leer; ${wanted}`,
    notFinite: (given, wanted) => `${given} no es un número finito; ${wanted}`,
    comma: (given, wanted) => `${given} lleva una coma en el número; escriba ${withoutComma(given, "o")}; ${wanted}`,
    tooLarge: (given, wanted) => `${given} tiene un exponente demasiado grande o demasiadas cifras; ${wanted}`,
    noUnit: (given, wanted) => `${given} no lleva unidad; ${wanted}`,
    unknownUnit: (given, wanted) => `${given} lleva una unidad que no se conoce; ${wanted}`,
    wrongDimension: (given, wanted, found) => `${given} es ${found}; ${wanted}`,
    tooLow: but,
    tooHigh: but,
    notWhole: but,
    notAChoice: (given, wanted) => `${given} no está entre las opciones; ${wanted}`,
    noAnswer: (given, wanted) => `no tiene resultado${given === "" ? "" : ` (${given})`}, porque ${wanted}`,
    refused: (given, wanted) => (given === "" ? wanted : `${given}: ${wanted}`),
  },
  wanted: {
    number: () => "escriba un número",
    share: () => `escriba un número o un porcentaje, como 0.1 o "10 %"`,
    units: ({ of }) => `escriba un número y una de estas unidades: ${list(of)}`,
    limit: ({ limit, value, percent }) => `${limits[limit]} ${value}${percent === undefined ? "" : `; ¿quiso decir "${percent}"?`}`,
    whole: () => "un número entero",
    choice: ({ of }) => `escriba una de estas opciones: ${list(of)}`,
    object: ({ of }) => `dé un objeto con ${list(of)}`,
    key: ({ of }) => `hay ${list(of)}`,
    near: ({ key }) => `¿quiso decir ${key}?`,
    exactlyOne: ({ of }) => `dé exactamente uno de ${of.join(" y ")}`,
    value: ({ reason }) => reasons[reason],
    unforeseen: ({ reason }) => `no se pudo calcular (${reason})`,
  },
};

/**
 * How problems read in Spanish, with the names of inputs and the refusals of every topic. What a function of your own says
 * stays as you write it.
 *
 * @example
 * ```ts
 * const tried = dryFilm.try({ wetFilm: "18", volumeSolids: "55 %", coats: 2 });
 * tried.ok ? [] : tried.problems.map((one) => problemText(one, spanish)); // ['wetFilm (película húmeda de una mano): "18" no lleva unidad; escriba un número y una de estas unidades: mil, um, in, ft, yd, mm']
 * ```
 */
export const spanish: Wording = /* @__PURE__ */ wordingOf(spanishParts);
