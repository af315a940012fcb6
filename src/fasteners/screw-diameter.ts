import { composed } from "../core/composed.js";
import { quantity } from "../core/read-quantity.js";
import { screwSizeTable } from "../data/fasteners.js";

/**
 * Nominal diameter of a screw by its size.
 *
 * @example
 * ```ts
 * screwDiameter({ size: "#8" }).diameter.toString(); // "0.164 in"
 * ```
 */
export const screwDiameter = /* @__PURE__ */ composed({
  id: "fasteners.screw-diameter",
  title: "Nominal diameter of a screw",
  given: {
    size: { oneOf: ["#6", "#7", "#8", "#10", "#12", "1/4 in"], says: "size of the screw" },
  },
  run: ({ size }, work) => {
    work.stand(screwSizeTable.basis);
    return { diameter: quantity("length", screwSizeTable.rows[size]) };
  },
});
