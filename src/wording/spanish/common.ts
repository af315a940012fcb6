import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

const counted = {
  batches: ["tanda", "tandas"], days: ["día", "días"], "heads and sills": ["dintel o antepecho", "dinteles y antepechos"], heights: ["altura", "alturas"],
  intervals: ["intervalo", "intervalos"], items: ["artículo", "artículos"], layers: ["capa", "capas"], lengths: ["longitud", "longitudes"],
  openings: ["vano", "vanos"], pieces: ["pedazo", "pedazos"], readings: ["lectura", "lecturas"], spots: ["punto", "puntos"], stages: ["etapa", "etapas"],
  tasks: ["tarea", "tareas"], units: ["pieza", "piezas"],
};
const none = {
  clearance: "ninguna distancia libre", edge: "ningún borde", elevation: "ninguna elevación", layer: "ninguna capa", reading: "ninguna lectura", row: "ninguna fila",
  spot: "ningún punto", wall: "ninguna pared",
};
const named = { "a batch": "una tanda", "a stage": "una etapa", "an elevation": "una elevación" };

/** Refusals that several topics have, in Spanish. */
export const common: RefusalTexts["common"] = {
  counted: ({ count, of }) => sentence`${count} ${counted[of][count === 1 ? 0 : 1] ?? ""}`,
  noneGiven: ({ of }) => sentence`no se dio ${none[of]}`,
  giveOneOrMore: () => "dé al menos uno",
  fromOneTo: ({ most }) => sentence`hay de 1 a ${most}`,
  leaveOut: () => "no lo escriba",
  writeWhole: () => "escriba un número entero",
  takenName: ({ of }) => sentence`ya hay ${named[of]} con este nombre; dé a cada cual el suyo`,
  heightsOfUnits: () => "dé de 1 a 100 alturas de piezas, hilada por hilada",
};
