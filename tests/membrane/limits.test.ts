// What can be and what cannot. A wall and a roll have a size; returns, laps and what is taken off may be nought.
import { describe } from "vitest";
import { detailBand } from "../../src/membrane/detail-band.js";
import { netBarrier } from "../../src/membrane/net-barrier.js";
import { returnStrip } from "../../src/membrane/return-strip.js";
import { sheetLaps } from "../../src/membrane/sheet-laps.js";
import { barrierArea } from "../../src/membrane/barrier-area.js";
import { barrierOrder } from "../../src/membrane/barrier-order.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(detailBand, { length: "above 0 ft", bandWidth: "above 0 in", wetFilm: "above 0 mil", coats: "from 1, whole" });
  itHoldsTheLimits(netBarrier, { gross: "above 0 ft2", deducted: "from 0 ft2", openingReturns: "from 0 ft2", edgeReturns: "from 0 ft2" });
  itHoldsTheLimits(returnStrip, { length: "from 0 ft", depth: "from 0 in" });
  itHoldsTheLimits(sheetLaps, { wallLength: "above 0 ft", wallHeight: "above 0 ft", sheetWidth: "above 0 in", rollLength: "above 0 ft", sideLap: "from 0 in", endLap: "from 0 in" });

  const window = { kind: "rectangle", width: "3 ft", height: "4 ft" } as const;
  const walls = [{ shape: { kind: "rectangle", width: "40 ft", height: "9 ft" } }] as const;
  itHoldsTheLimitsIn(barrierArea, "walls, openings and edges", {
    walls, deductFrom: "10 ft2", edges: [{ edge: "corner", length: "9 ft", depth: "1 ft" }],
    openings: [{ shape: window, returnDepth: "6 in" }, { shape: window, returnDepths: { sill: "2 in", jambs: "3 in", head: "4 in" } }],
  }, {
    deductFrom: "from 0 ft2", "edges.0.length": "above 0 ft", "edges.0.depth": "above 0 in",
    "openings.0.returnDepth": "from 0 in", "openings.1.returnDepths.sill": "from 0 in", "openings.1.returnDepths.jambs": "from 0 in", "openings.1.returnDepths.head": "from 0 in",
    "walls.0.shape.width": "above 0 ft", "walls.0.shape.height": "above 0 ft", "openings.0.shape.width": "above 0 ft", "openings.0.shape.height": "above 0 ft",
  });
  const order = {
    area: "1155 ft2", wetFilm: "20 mil", coats: 2, volumeSolids: "60 %", firstCoatTexture: "5 mil", packVolume: "5 gal",
    bands: [{ length: "77 ft", bandWidth: "6 in", wetFilm: "40 mil", coats: 1 }], bandsFrom: "own packs", bandPackVolume: "1 gal",
  } as const;
  itHoldsTheLimitsIn(barrierOrder, "waste, and bands from packs of their own", { ...order, waste: "10 %" }, {
    area: "above 0 ft2", wetFilm: "above 0 mil", coats: "from 1, whole", volumeSolids: "above 0 %, to 100 %", firstCoatTexture: "from 0 mil", packVolume: "above 0 gal", waste: "from 0 %, below 100 %",
    "bands.0.length": "above 0 ft", "bands.0.bandWidth": "above 0 in", "bands.0.wetFilm": "above 0 mil", "bands.0.coats": "from 1, whole", bandPackVolume: "above 0 gal",
  });
  itHoldsTheLimitsIn(barrierOrder, "a loss", { ...order, lossShare: "10 %" }, { lossShare: "from 0 %, below 100 %" });
});
