// What can be and what cannot. A film, an area, a pack is above nought; solids are at most all of it; what is lost, wasted
// or thinned away stays below the whole; coats and readings are whole, one at the least.
import { describe } from "vitest";
import { cleanerOrder } from "../../src/film/cleaner-order.js";
import { coatingOrder } from "../../src/film/coating-order.js";
import { coatingPacks } from "../../src/film/coating-packs.js";
import { coatingVolume } from "../../src/film/coating-volume.js";
import { cureTests } from "../../src/film/cure-tests.js";
import { dryFilm } from "../../src/film/dry-film.js";
import { filmAllowance } from "../../src/film/film-allowance.js";
import { filmFromUsage } from "../../src/film/film-from-usage.js";
import { filmMean } from "../../src/film/film-mean.js";
import { filmReadingPlan } from "../../src/film/film-reading-plan.js";
import { filmSpreadingRate } from "../../src/film/film-spreading-rate.js";
import { packCover } from "../../src/film/pack-cover.js";
import { readingAreasPa2 } from "../../src/film/reading-areas-pa2.js";
import { readingAreas } from "../../src/film/reading-areas.js";
import { shortShare } from "../../src/film/short-share.js";
import { spreadingRate } from "../../src/film/spreading-rate.js";
import { wetFilmBracket } from "../../src/film/wet-film-bracket.js";
import { wetFilm } from "../../src/film/wet-film.js";
import { filmReadingCheck } from "../../src/film/film-reading-check.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(cleanerOrder, { area: "above 0 ft2", applications: "from 1, whole", spreadingRate: "above 0 ft2/gal", waterParts: "from 0 %", waste: "from 0 %, below 100 %", packVolume: "above 0 gal" });
  itHoldsTheLimits(coatingOrder, { area: "above 0 ft2", wetFilm: "above 0 mil", coats: "from 1, whole", waste: "from 0 %, below 100 %", lossShare: "from 0 %, below 100 %", packVolume: "above 0 gal" });
  itHoldsTheLimits(coatingPacks, { net: "above 0 gal", waste: "from 0 %, below 100 %", lossShare: "from 0 %, below 100 %", packVolume: "above 0 gal" });
  itHoldsTheLimits(coatingVolume, { area: "above 0 ft2", wetFilm: "above 0 mil", coats: "from 1, whole", firstCoatTexture: "from 0 mil, usually 0 mil" });
  itHoldsTheLimits(cureTests, { area: "above 0 ft2" });
  itHoldsTheLimits(dryFilm, { wetFilm: "above 0 mil", volumeSolids: "above 0 %, to 100 %", thinner: "from 0 %, below 100 %, usually 0", coats: "from 1, whole" });
  itHoldsTheLimits(filmAllowance, { specified: "above 0 mil", share: "above 0 %, to 200 %" });
  itHoldsTheLimits(filmFromUsage, { volumeUsed: "above 0 gal", area: "above 0 ft2", lossShare: "from 0 %, below 100 %", volumeSolids: "above 0 %, to 100 %", thinner: "from 0 %, below 100 %, usually 0", coats: "from 1, whole", specified: "above 0 mil" });
  itHoldsTheLimits(filmMean, { total: "above 0 mil", readings: "from 1, whole" });
  itHoldsTheLimits(filmReadingPlan, { area: "above 0 ft2", areaSize: "above 0 ft2", spotsPerArea: "from 1, whole", readingsPerSpot: "from 1, whole" });
  itHoldsTheLimits(filmSpreadingRate, { wetFilm: "above 0 mil", coats: "from 1, whole", firstCoatTexture: "from 0 mil, usually 0 mil" });
  itHoldsTheLimits(packCover, { packVolume: "above 0 gal", spreadingRate: "above 0 ft2/gal", waste: "from 0 %, below 100 %", lossShare: "from 0 %, below 100 %" });
  itHoldsTheLimits(readingAreasPa2, { area: "above 0 ft2" });
  itHoldsTheLimits(readingAreas, { area: "above 0 ft2", areaSize: "above 0 ft2", spotsPerArea: "from 1, whole", readingsPerSpot: "from 1, whole" });
  itHoldsTheLimits(shortShare, { short: "from 0, whole", readings: "from 1, whole" });
  itHoldsTheLimits(spreadingRate, { wetFilm: "above 0 mil", dryFilm: "above 0 mil", volumeSolids: "above 0 %, to 100 %", coats: "from 1, whole", firstCoatTexture: "from 0 mil, usually 0 mil" });
  itHoldsTheLimits(wetFilmBracket, { lastWetTooth: "from 0 mil", firstDryTooth: "above 0 mil", least: "above 0 mil", most: "above 0 mil" });
  itHoldsTheLimits(wetFilm, { dryBuild: "above 0 mil", volumeSolids: "above 0 %, to 100 %", thinner: "from 0 %, below 100 %, usually 0", coats: "from 1, whole" });
  itHoldsTheLimitsIn(filmReadingCheck, "a band", { film: "wet", rule: "band", least: "15 mil", most: "22 mil", spots: [{ readings: ["16 mil"], teeth: [{ lastWetTooth: "16 mil", firstDryTooth: "18 mil" }] }] }, {
    least: "above 0 mil", most: "above 0 mil", "spots.0.teeth.0.lastWetTooth": "from 0 mil", "spots.0.teeth.0.firstDryTooth": "above 0 mil",
  });
});
