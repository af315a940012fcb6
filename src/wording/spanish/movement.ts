import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

const kinds = { rectangle: "el rectángulo", gable: "el hastial", trapezoid: "el trapecio", segment: "el segmento", polygon: "el contorno" };

/** Why the functions for movement joints refuse, in Spanish. */
export const movement: RefusalTexts["movement"] = {
  ruleAsksNot: ({ rule }) => sentence`${rule} no lo pide; no lo escriba`,
  ruleGoesByHeight: ({ rule }) => sentence`${rule} va por la altura de la pared`,
  beyondWallLength: ({ length }) => sentence`a lo más la longitud de la pared, ${length}`,
  shapeNotLaidOut: () => "un remate curvo o una esquina entrante no se traza; dé la pared en partes, cada una un rectángulo, un hastial, un trapecio o un contorno sin esquinas entrantes",
  openingBeyondWall: () => "se sale de la pared",
  shapeNotSoWide: ({ kind }) => sentence`${kinds[kind]} no es tan ancho`,
  levelJointWithin: () => "una junta horizontal está entre el pie y el remate de la pared; la que está en ellos no es de esta lista",
  tooManyJoints: ({ most }) => sentence`harían falta más de ${most} juntas; trace la pared en partes`,
  editionAsksMovement: ({ edition, times }) => sentence`${edition} pide ${times} veces el movimiento; délo, por ejemplo con movement.thermal-movement`,
  editionAsksNoMovement: ({ edition }) => sentence`${edition} no lo pide; vea movement.joint-for-movement`,
  greatestSpacing: ({ spacing, edition }) => sentence`a lo más ${spacing}, la separación máxima de ${edition}`,
};
