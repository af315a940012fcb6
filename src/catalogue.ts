/**
 * Every calculation and composed function in one list: for tests, documentation and those who look for a name. An app
 * that imports one calculation does not carry it. The list is written by `npm run exports`.
 *
 * @packageDocumentation
 */
import type { AnyCallable } from "./core/callable.js";
import {
  boardCount, boardJointEstimate, boardJointTape, boardLayers, boardLayout, cutStock, linearOrder, studMark,
} from "./boards/index.js";
import {
  allowableStrength, allowableWindPressure, boardEdgesOnStuds, boardModules, boardScrews, boardScrewsEdgeField,
  claddingPressure, cornerZoneWidth, deliveredThickness, elevationFactorCustomary, elevationFactorSi, exposureB,
  exposureC, exposureD, groundElevationFactor, pullOut, pullOutSince2022, pullOutTo2016, pullOver, pullOverSince2022,
  pullOverTo2016, rakingScrews, screwDiameter, screwLength, screwOrder, screwShear, screwShearInSteel,
  spacingForPressure, spacingFromPressure, steelThickness, velocityPressure705, velocityPressure710,
  velocityPressure716, wallPressure, wallPressureCoefficient, windVelocityPressure,
} from "./fasteners/index.js";
import {
  cleanerOrder, coatingOrder, coatingPacks, coatingVolume, cureTests, dryFilm, filmAllowance, filmFromUsage, filmMean,
  filmReadingCheck, filmReadingPlan, filmSpreadingRate, packCover, readingAreas, readingAreasPa2, shortShare,
  spreadingRate, wetFilm, wetFilmBracket,
} from "./film/index.js";
import {
  backerRodSize, concaveLoss, coursedFace, faceShare, jointByLength, jointDrift, mixedFace, mortarJointLength,
  pointingDepth, pointingFills, pointingMortar, pointingOrder, pointingRound, rakedLoss, repointingDepth,
  repointingLayers, roundLength, sealantOrder, spacerCount, tooledJoint, toolingLoss, vLoss, weatheredLoss,
} from "./joints/index.js";
import {
  baseMove, bondPattern, bondShift, cornerLead, cornerUnits, coursing, cutInRun, cutUnits, errorPerJoint, halfUnit,
  headsAndSills, jointBedToBed, jointForCut, jointInOpening, jointUnitToUnit, leadGap, ledgerHeight, ledgerLine,
  ledgerScrews, lotsByElevation, lotsForArea, runOfUnits, stoneBelow, tapeMark, unitsForFace,
} from "./layout/index.js";
import {
  adhesionStress, adhesionTest, allowedDeflection, assemblyWeight, baseClearances, contactCoverage, contactShare,
  deckStock, flatness, framingDeflection, layerWeight, loadOfWeight, sampleShare, thicknessAtWeight, veneerLimits,
  weightOnStud, wetWeight,
} from "./limits/index.js";
import {
  barrierArea, barrierOrder, detailBand, netBarrier, returnStrip, sheetLaps,
} from "./membrane/index.js";
import {
  absoluteVolume, bagYield, batchSize, batchVolume, bedContact, bedMortar, bedMortarRange, bulkingByVoids, hollowFill,
  levellingCoat, mayAddWater, mayMoveUnit, mixByParts, mixingWater, mixYield, notchedBed, partVolume, sandPart,
  siteMix, spreadAhead, squareNotchBed, uNotchBed, vNotchBed, waterFromRatio, waterLeft,
} from "./mortar/index.js";
import {
  jointByMultiple, jointForMovement, masonrySpacing, moistureMovement, movementJointCheck, movementLayout,
  movementSpacing, panelSpacing, spacingForWidth, thermalMovement, thermalMovementByMaterial, unrestrainedStrain,
  widthForRange,
} from "./movement/index.js";
import {
  areaLabour, batchesAt, batchesInDay, batchRecord, bedFromUsage, countLabour, crewDays, crewDuration, dayPlan,
  labourTime, lengthLabour, placeArea, shiftShare, stretchLabour, toolTime, usedAgainstPlan, volumeLabour,
  wasteFromUsage, waterFromUsage, waterRatio, waterSpread,
} from "./planning/index.js";
import {
  archedOpening, circle, circularSegment, gable, openingMeasures, polygonEdge, rectangle, trapezoid, wallMeasures,
} from "./shapes/index.js";
import {
  backingFace, columnFaces, compareTakeOffs, cornerPacks, courseHeight, deliveredWeight, edgeBacking, faceGrowth,
  faceLoss, fastenersByArea, hoistTrips, lathSheets, linePrice, overrunLength, paidHours, returnCornerCover,
  shareOfPrice, soffitFace, spareUnits, stoneFace, takeOff, unitsByElevation, unitsPlaced, wallCornerCover,
} from "./takeoff/index.js";
import {
  ageFactorByArrhenius, ageFactorByDoubling, ageForStrength, concreteStrengthShare, coverTonight, efflorescence,
  equivalentAge, exposureLeft, exposureShare, hyperbolicStrength, intervalAge, intervalMaturity, lastUnitToday,
  lifeAtTemperature, liftByLedger, liftHeight, maturity, meanOfTwo, mixClock, mixTimes, readingTimes, recoatWindow,
  shelfLife, strengthAtAge, strengthShare, timeByAgeFactor, timeToAge, workWindows,
} from "./timing/index.js";
import {
  coatingWeather, dewPoint, evaporation, evaporationMenzel, evaporationUnoSi, evaporationUnoUs, freshMortarTemperature,
  frostPoint, masonryWeather, mixTemperature, saturationPressure, standardPressure, surfaceMargin, surfaceOverDewPoint,
  vapourByWetBulb, waterForMortarTemperature, weatherDays, wetBulbHumidity,
} from "./weather/index.js";

/** Everything that can be called, by topic. */
export const catalogue: readonly AnyCallable[] = /* @__PURE__ */ Object.freeze<AnyCallable[]>([
  // boards
  boardCount, boardJointEstimate, boardJointTape, boardLayers, boardLayout, cutStock, linearOrder, studMark,
  // fasteners
  allowableStrength, allowableWindPressure, boardEdgesOnStuds, boardModules, boardScrews, boardScrewsEdgeField,
  claddingPressure, cornerZoneWidth, deliveredThickness, elevationFactorCustomary, elevationFactorSi, exposureB,
  exposureC, exposureD, groundElevationFactor, pullOut, pullOutSince2022, pullOutTo2016, pullOver, pullOverSince2022,
  pullOverTo2016, rakingScrews, screwDiameter, screwLength, screwOrder, screwShear, screwShearInSteel,
  spacingForPressure, spacingFromPressure, steelThickness, velocityPressure705, velocityPressure710,
  velocityPressure716, wallPressure, wallPressureCoefficient, windVelocityPressure,
  // film
  cleanerOrder, coatingOrder, coatingPacks, coatingVolume, cureTests, dryFilm, filmAllowance, filmFromUsage, filmMean,
  filmReadingCheck, filmReadingPlan, filmSpreadingRate, packCover, readingAreas, readingAreasPa2, shortShare,
  spreadingRate, wetFilm, wetFilmBracket,
  // joints
  backerRodSize, concaveLoss, coursedFace, faceShare, jointByLength, jointDrift, mixedFace, mortarJointLength,
  pointingDepth, pointingFills, pointingMortar, pointingOrder, pointingRound, rakedLoss, repointingDepth,
  repointingLayers, roundLength, sealantOrder, spacerCount, tooledJoint, toolingLoss, vLoss, weatheredLoss,
  // layout
  baseMove, bondPattern, bondShift, cornerLead, cornerUnits, coursing, cutInRun, cutUnits, errorPerJoint, halfUnit,
  headsAndSills, jointBedToBed, jointForCut, jointInOpening, jointUnitToUnit, leadGap, ledgerHeight, ledgerLine,
  ledgerScrews, lotsByElevation, lotsForArea, runOfUnits, stoneBelow, tapeMark, unitsForFace,
  // limits
  adhesionStress, adhesionTest, allowedDeflection, assemblyWeight, baseClearances, contactCoverage, contactShare,
  deckStock, flatness, framingDeflection, layerWeight, loadOfWeight, sampleShare, thicknessAtWeight, veneerLimits,
  weightOnStud, wetWeight,
  // membrane
  barrierArea, barrierOrder, detailBand, netBarrier, returnStrip, sheetLaps,
  // mortar
  absoluteVolume, bagYield, batchSize, batchVolume, bedContact, bedMortar, bedMortarRange, bulkingByVoids, hollowFill,
  levellingCoat, mayAddWater, mayMoveUnit, mixByParts, mixingWater, mixYield, notchedBed, partVolume, sandPart,
  siteMix, spreadAhead, squareNotchBed, uNotchBed, vNotchBed, waterFromRatio, waterLeft,
  // movement
  jointByMultiple, jointForMovement, masonrySpacing, moistureMovement, movementJointCheck, movementLayout,
  movementSpacing, panelSpacing, spacingForWidth, thermalMovement, thermalMovementByMaterial, unrestrainedStrain,
  widthForRange,
  // planning
  areaLabour, batchesAt, batchesInDay, batchRecord, bedFromUsage, countLabour, crewDays, crewDuration, dayPlan,
  labourTime, lengthLabour, placeArea, shiftShare, stretchLabour, toolTime, usedAgainstPlan, volumeLabour,
  wasteFromUsage, waterFromUsage, waterRatio, waterSpread,
  // shapes
  archedOpening, circle, circularSegment, gable, openingMeasures, polygonEdge, rectangle, trapezoid, wallMeasures,
  // takeoff
  backingFace, columnFaces, compareTakeOffs, cornerPacks, courseHeight, deliveredWeight, edgeBacking, faceGrowth,
  faceLoss, fastenersByArea, hoistTrips, lathSheets, linePrice, overrunLength, paidHours, returnCornerCover,
  shareOfPrice, soffitFace, spareUnits, stoneFace, takeOff, unitsByElevation, unitsPlaced, wallCornerCover,
  // timing
  ageFactorByArrhenius, ageFactorByDoubling, ageForStrength, concreteStrengthShare, coverTonight, efflorescence,
  equivalentAge, exposureLeft, exposureShare, hyperbolicStrength, intervalAge, intervalMaturity, lastUnitToday,
  lifeAtTemperature, liftByLedger, liftHeight, maturity, meanOfTwo, mixClock, mixTimes, readingTimes, recoatWindow,
  shelfLife, strengthAtAge, strengthShare, timeByAgeFactor, timeToAge, workWindows,
  // weather
  coatingWeather, dewPoint, evaporation, evaporationMenzel, evaporationUnoSi, evaporationUnoUs, freshMortarTemperature,
  frostPoint, masonryWeather, mixTemperature, saturationPressure, standardPressure, surfaceMargin, surfaceOverDewPoint,
  vapourByWetBulb, waterForMortarTemperature, weatherDays, wetBulbHumidity,
]);
