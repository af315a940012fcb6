import type { DimensionName } from "../../core/dimensions.js";

/** How a limit reads before its value. */
export const limits = { above: "mayor que", atLeast: "al menos", below: "menor que", atMost: "a lo más" };

/** What a value of a dimension is called. */
export const dimensions: Readonly<Record<DimensionName, string>> = {
  ratio: "una proporción",
  count: "una cantidad de piezas",
  angle: "un ángulo",
  length: "una longitud",
  area: "un área",
  volume: "un volumen",
  mass: "una masa",
  time: "un tiempo",
  temperature: "una temperatura",
  temperatureDifference: "una diferencia de temperatura",
  force: "una fuerza",
  pressure: "una presión",
  lineLoad: "una carga por longitud",
  speed: "una velocidad",
  areaPerTime: "un área por tiempo",
  density: "una densidad",
  arealMass: "una masa por área",
  linearMass: "una masa por longitud",
  spreadingRate: "un rendimiento por volumen",
  countPerLength: "piezas por longitud",
  countPerArea: "piezas por área",
  lengthPerArea: "una longitud por área",
  volumePerMass: "un volumen por masa",
  evaporation: "una evaporación",
  permeance: "una permeancia",
  expansion: "una dilatación",
  maturity: "una madurez",
  perTime: "una tasa por tiempo",
};
