/**
 * Pictures of results as SVG, for print in black and white: drawings to scale and charts, each with a title and a
 * description in words and figures. They hold no styles, no scripts and nothing from elsewhere.
 *
 * @packageDocumentation
 */
export { assemblySection } from "./assembly-section.js";
export type { CoursedPanel, CoursedWall, OpeningBox } from "./coursed-wall.js";
export { boardElevation, type ElevationOptions } from "./elevation.js";
export { filmChart } from "./film-chart.js";
export type { FilmCoat, FilmRecord, FilmTeeth } from "./film-coats.js";
export type { PictureOptions } from "./picture.js";
export type { SectionLayer, SectionMaterial, WallSection } from "./section-layers.js";
export { storyRodDrawing } from "./story-rod-drawing.js";
export { temperatureChart } from "./temperature-chart.js";
export type { TemperatureRecord } from "./temperature-record.js";
export { wallElevation } from "./wall-elevation.js";
