/**
 * Screws that hold boards on steel studs: how many, how long, what they carry, and how close the wind wants them.
 *
 * @packageDocumentation
 */
export { allowableStrength } from "./allowable-strength.js";
export { allowableWindPressure } from "./allowable-wind-pressure.js";
export { boardEdgesOnStuds } from "./board-edges-on-studs.js";
export { boardModules } from "./board-modules.js";
export { boardScrewsEdgeField } from "./board-screws-edge-field.js";
export { boardScrews } from "./board-screws.js";
export { claddingPressure } from "./cladding-pressure.js";
export { cornerZoneWidth } from "./corner-zone-width.js";
export { deliveredThickness } from "./delivered-thickness.js";
export { elevationFactorCustomary } from "./elevation-factor-customary.js";
export { elevationFactorSi } from "./elevation-factor-si.js";
export { exposureB } from "./exposure-b.js";
export { exposureC } from "./exposure-c.js";
export { exposureD } from "./exposure-d.js";
export { groundElevationFactor } from "./ground-elevation-factor.js";
export { pullOutSince2022 } from "./pull-out-since-2022.js";
export { pullOutTo2016 } from "./pull-out-to-2016.js";
export { pullOut } from "./pull-out.js";
export { pullOverSince2022 } from "./pull-over-since-2022.js";
export { pullOverTo2016 } from "./pull-over-to-2016.js";
export { pullOver } from "./pull-over.js";
export { rakingScrews } from "./raking-screws.js";
export { screwDiameter } from "./screw-diameter.js";
export { screwLength } from "./screw-length.js";
export { screwOrder } from "./screw-order.js";
export { screwShearInSteel } from "./screw-shear-in-steel.js";
export { screwShear } from "./screw-shear.js";
export { spacingForPressure } from "./spacing-for-pressure.js";
export { spacingFromPressure } from "./spacing-from-pressure.js";
export { steelThickness } from "./steel-thickness.js";
export { velocityPressure705 } from "./velocity-pressure-7-05.js";
export { velocityPressure710 } from "./velocity-pressure-7-10.js";
export { velocityPressure716 } from "./velocity-pressure-7-16.js";
export { wallPressureCoefficient } from "./wall-pressure-coefficient.js";
export { wallPressure } from "./wall-pressure.js";
export { windVelocityPressure } from "./wind-velocity-pressure.js";
