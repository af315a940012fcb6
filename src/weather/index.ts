/**
 * Weather: dew point and drying, the bands of cold and heat in which masonry is worked, and warm mortar in the cold.
 *
 * @packageDocumentation
 */
export { type CoatingWeather, coatingWeather } from "./coating-weather.js";
export { dewPoint } from "./dew-point.js";
export { type Evaporation, evaporation } from "./evaporation.js";
export { evaporationMenzel } from "./evaporation-menzel.js";
export { evaporationUnoSi } from "./evaporation-uno-si.js";
export { evaporationUnoUs } from "./evaporation-uno-us.js";
export { freshMortarTemperature } from "./fresh-mortar-temperature.js";
export { frostPoint } from "./frost-point.js";
export { type MasonryHour, type MasonryWeather, masonryWeather } from "./masonry-weather.js";
export { type MixTemperature, mixTemperature } from "./mix-temperature.js";
export { saturationPressure } from "./saturation-pressure.js";
export { standardPressure } from "./standard-pressure.js";
export { type SurfaceMargin, surfaceMargin } from "./surface-margin.js";
export { surfaceOverDewPoint } from "./surface-over-dew-point.js";
export type { Asked } from "./tms-bands.js";
export { vapourByWetBulb } from "./vapour-by-wet-bulb.js";
export { waterForMortarTemperature } from "./water-for-mortar-temperature.js";
export { type WeatherDay, type WeatherDays, weatherDays } from "./weather-days.js";
export { type WetBulbHumidity, wetBulbHumidity } from "./wet-bulb-humidity.js";
