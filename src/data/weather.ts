import type { Basis } from "../core/basis.js";

/** Dew point over water by the Magnus form. */
export const magnus = {
  kind: "published",
  publisher: "University of Arizona, AZMET",
  title: "Dew point from temperature and humidity",
  edition: "edition not named",
  locator: "constants 17.27 and 237.3 degC",
  says: "of four pairs in print this one is nearest to ASHRAE 2017: within 0.02 degC from 0 to 29 degC",
} as const satisfies Basis;

/** The same form over ice. */
export const magnusOverIce = {
  kind: "derived",
  says: "Magnus form over ice with 22.46 and 272.62 degC, checked against PsychroLib 1.1.1 (ASHRAE 2017) within 0.05 degC",
} as const satisfies Basis;

/** Vapour pressure over water, after Tetens. */
export const tetens = {
  kind: "published",
  publisher: "FAO",
  title: "Irrigation and Drainage Paper 56",
  edition: "1998",
  locator: "chapter 3, equation 11",
  quotedBy: "the documentation of NCL",
} as const satisfies Basis;

/** Vapour pressure from a wet bulb. */
export const psychrometer = {
  kind: "published",
  publisher: "University of Arizona, AZMET",
  title: "Dew point from temperature and humidity",
  edition: "edition not named",
  locator: "vapour pressure from dry and wet bulb",
} as const satisfies Basis;

/** Where the scale of a temperature begins or water freezes. */
export const scaleZero = { kind: "definition", says: "0 degC is 32 degF" } as const satisfies Basis;

/** An equation that holds for numbers in certain units is divided by them. */
export const unitOfTheEquation = { kind: "definition", says: "the unit for which the equation is written" } as const satisfies Basis;

/** Surface over dew point, in the United States. */
export const marginUfc = {
  kind: "published",
  publisher: "US Department of Defense",
  title: "MIL-HDBK-1110 (UFC 3-190-06)",
  edition: "online copy",
  locator: "7.4.1 and 9.6.6",
  says: "surface at least 5 degF over the dew point, and rising",
} as const satisfies Basis;

/** Surface over dew point, metric. */
export const marginFhwa = {
  kind: "published",
  publisher: "Federal Highway Administration",
  title: "coating checklist",
  edition: "edition not named",
  locator: "condensation",
  says: "surface at least 3 degC over the dew point; printed with 5 degF, which is 2.8 degC",
} as const satisfies Basis;

/** Evaporation by the equation behind the ACI nomograph. */
export const menzel = {
  kind: "published",
  publisher: "Menzel",
  title: "evaporation equation of the ACI 305R nomograph",
  edition: "1954",
  locator: "W = 0.44 (e0 - r ea) (0.253 + 0.096 V)",
  quotedBy: "a public code repository",
} as const satisfies Basis;

/** Evaporation by the formulas of Uno. */
export const uno = {
  kind: "published",
  publisher: "American Concrete Institute",
  title: "P. Uno, Plastic Shrinkage Cracking and Evaporation Formulas, ACI Materials Journal 95-M34",
  edition: "July-August 1998",
  locator: "formulas in SI and US units",
  quotedBy: "texts on plastic shrinkage",
} as const satisfies Basis;

/** How far an estimate of evaporation may be off. */
export const evaporationSpread = {
  kind: "published",
  publisher: "American Concrete Institute",
  title: "Hover, After Two Hundred Years of Estimating Evaporation, SP-338",
  edition: "March 2020",
  locator: "abstract",
  says: "the estimate may be off by 40 % either way",
} as const satisfies Basis;

/** Rates from which concrete is protected; the two are no conversion of each other. */
export const evaporationLimits = {
  kind: "published",
  publisher: "ACI",
  title: "305R-91 and 308-92",
  edition: "1991 and 1992",
  locator: "plastic shrinkage",
  quotedBy: "the Silica Fume Association",
  says: "0.2 lb/ft2/h, or 1 kg/m2/h",
} as const satisfies Basis;

/** Temperature of a fresh mix from its parts. */
export const blend = {
  kind: "published",
  publisher: "US Army and Air Force",
  title: "TM 5-852-4 / AFM 88-19 chapter 4 (UFC 3-130-04)",
  edition: "online copy",
  locator: "paragraph 6 e(2), equation 16",
  says: "heat held by solids taken as 0.22 of that held by water",
} as const satisfies Basis;

/** What may be mixed, and how hot. */
export const mortarLimits = {
  kind: "published",
  publisher: "mason contractors' association",
  title: "text of TMS 602 explained, hot weather",
  edition: "edition not named",
  locator: "items 1-3",
  says: "mortar at most 120 degF (48.9 degC)",
} as const satisfies Basis;

/** Cold weather by TMS 602-02, as far as it was read. */
export const tms602Cold = {
  kind: "published",
  publisher: "TMS",
  title: "ACI 530.1-02/ASCE 6-02/TMS 602-02",
  edition: "2002",
  locator: "cold weather construction",
  quotedBy: "Masonry magazine, September 2004, Table 2, page 22",
} as const satisfies Basis;

/** What the bands of TMS 602 ask that was not seen. */
export const tms602FromMemory = { kind: "from memory", says: "TMS 602, cold weather construction; read the edition the job is under" } as const satisfies Basis;

/** Hot weather by TMS 602. */
export const tms602Hot = {
  kind: "published",
  publisher: "TMS",
  title: "TMS 602, hot weather",
  edition: "edition not named",
  locator: "items 1-3",
  quotedBy: "the mason contractors' association",
} as const satisfies Basis;

/** How far mortar is spread in the heat. */
export const hotSpread = {
  kind: "published",
  publisher: "Masonry Construction magazine",
  title: "Laying masonry in hot weather",
  edition: "edition not named",
  locator: "construction",
} as const satisfies Basis;

/** Units and sand in the cold. */
export const coldMaterials = {
  kind: "published",
  publisher: "mason contractors' association, Masonry magazine",
  title: "Material heating; Heating masonry materials",
  edition: "1999; September 2004",
  locator: "text; Table 3, page 24",
} as const satisfies Basis;

/** Frost by the standards of a warranty body in the United Kingdom. */
export const ukFrost = {
  kind: "published",
  publisher: "UK warranty standards body",
  title: "Standards 2023",
  edition: "2023",
  locator: "3.2.5, masonry in cold weather",
  says: "the mortar trade has the same figures",
} as const satisfies Basis;

/** Heat by the same standards, a year before. */
export const ukHeat = {
  kind: "published",
  publisher: "UK warranty standards body",
  title: "Standards 2022",
  edition: "2022",
  locator: "6.1.20",
} as const satisfies Basis;

/** A band of cold: from its lower end up to, not with, its upper end; what it asks is asked of the colder ones too. */
export const coldBands = [
  { band: "cold, 32 to 40 degF", below: "40 degF", asks: "heat sand or water so that the mortar is mixed between 40 and 120 degF", basis: tms602FromMemory },
  { band: "cold, 25 to 32 degF", below: "32 degF", asks: "keep mortar above freezing until it is used", basis: tms602FromMemory },
  { band: "cold, 20 to 25 degF", below: "25 degF", asks: "heat masonry under construction to 40 degF; wind breaks or enclosures where the wind is above 15 mph", basis: tms602Cold },
  { band: "cold, under 20 degF", below: "20 degF", asks: "enclose the masonry and heat the enclosure above 32 degF", basis: tms602FromMemory },
] as const;

/** What every band of cold asks of materials. */
export const coldAsks = [
  { asks: "warm units that are colder than 20 degF before they are used", basis: coldMaterials },
  { asks: "heat sand that is below 32 degF, to about 50 degF or more as needed", basis: coldMaterials },
] as const;

/** Two steps of heat: above a temperature, or above a lower one where the wind is above 8 mph. */
export const hotBands = [
  { band: "hot", above: "100 degF", aboveInWind: "90 degF", wind: "8 mph" },
  { band: "very hot", above: "115 degF", aboveInWind: "105 degF", wind: "8 mph" },
] as const;

/** What the first step of heat asks. */
export const hotAsks = [
  { asks: "keep mortar below 120 degF", basis: tms602Hot },
  { asks: "fog new masonry at least 3 times a day until it is 3 days old", basis: tms602Hot },
  { asks: "spread mortar no more than 4 ft ahead of the units", basis: hotSpread },
] as const;

/** What the second step of heat asks besides. */
export const veryHotAsks = [{ asks: "shade the materials and the mixer", basis: tms602Hot }] as const;

/** The frost rule of the United Kingdom. */
export const ukRule = { stopBelow: "3 degC", resumeFrom: "1 degC", expectedAbove: "3 degC", hotAbove: "30 degC" } as const;

/** Standard atmosphere. */
export const standardAtmosphere = {
  kind: "published",
  publisher: "ASHRAE",
  title: "Handbook of Fundamentals",
  edition: "2017",
  locator: "chapter 1, equation 3",
  quotedBy: "PsychroLib 1.1.1",
} as const satisfies Basis;
