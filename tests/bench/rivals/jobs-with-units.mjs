// The jobs film, joints and wall with a library of units: what it can do is handed in, so that all are given the same.

/**
 * What a library of units does. A number without a unit is `N`, with one `Q`.
 * @typedef {object} Units
 * @property {(value: number, unit: string) => any} of - a quantity
 * @property {(value: number) => any} number - a number without a unit
 * @property {(a: any, b: any) => any} add
 * @property {(a: any, b: any) => any} sub
 * @property {(a: any, b: any) => any} mul
 * @property {(a: any, b: any) => any} per - a quotient that has no unit
 * @property {(a: any) => any} ceil - of what has no unit
 * @property {(quantity: any, unit: string) => number} read - a result as a number of a unit
 */

/** @param {Units} units @returns {Record<string, (row: any) => Record<string, any>>} */
export function jobsWithUnits({ of, number, add, sub, mul, per, ceil }) {
  const share = (/** @type {number} */ percent) => number(percent / 100);
  return {
    film({ area, wet, coats, solids, loss }) {
      const wetCoats = mul(of(wet, "mil"), number(coats));
      const coating = mul(mul(of(area, "ft2"), wetCoats), per(number(1), sub(number(1), share(loss))));
      return { dry: mul(wetCoats, share(solids)), coating, pails: ceil(per(coating, of(5, "gal"))) };
    },
    joints({ area, unitLength, unitHeight, joint, depth, waste, bagYield }) {
      const [length, height, width] = [of(unitLength, "in"), of(unitHeight, "in"), of(joint, "in")];
      const module = mul(add(length, width), add(height, width));
      const perArea = mul(of(depth, "in"), per(sub(module, mul(length, height)), module));
      const volume = mul(of(area, "ft2"), perArea);
      const gross = mul(volume, add(number(1), share(waste)));
      return { module, perArea, volume, gross, bags: ceil(per(gross, of(bagYield, "ft3"))) };
    },
    wall(row) {
      const feet = (/** @type {string} */ name) => of(row[name], "ft");
      const inches = (/** @type {string} */ name) => of(row[name], "in");
      const [doors, windows, vents] = [number(row.doors), number(row.windows), number(row.vents)];
      const [doorWidth, doorHeight, windowWidth, windowHeight, ventWidth, ventHeight] = [feet("doorWidth"), feet("doorHeight"), feet("windowWidth"), feet("windowHeight"), inches("ventWidth"), inches("ventHeight")];
      const [length, height, unitLength, unitHeight, joint] = [feet("length"), feet("height"), inches("unitLength"), inches("unitHeight"), inches("joint")];
      const [boardWidth, boardHeight, piece] = [of(3, "ft"), of(5, "ft"), of(10, "ft")];
      const two = number(2);
      const allowance = add(number(1), share(row.waste));
      const gross = mul(length, height);
      const openings = add(add(mul(mul(doorWidth, doorHeight), doors), mul(mul(windowWidth, windowHeight), windows)), mul(mul(ventWidth, ventHeight), vents));
      const net = sub(gross, openings);
      const netWithWaste = mul(net, allowance);
      const boards = ceil(per(netWithWaste, mul(boardWidth, boardHeight)));
      const rowScrews = add(ceil(per(boardWidth, inches("screwSpacing"))), number(1));
      const screwLines = add(ceil(per(boardHeight, inches("studSpacing"))), number(1));
      const screws = mul(mul(boards, rowScrews), screwLines);
      const coating = mul(mul(mul(net, of(row.film, "mil")), number(row.coats)), per(number(1), sub(number(1), share(row.loss))));
      const jambs = add(
        add(mul(add(mul(doorHeight, two), doorWidth), doors), mul(mul(add(windowHeight, windowWidth), two), windows)),
        mul(mul(add(ventHeight, ventWidth), two), vents),
      );
      const bedVolume = mul(netWithWaste, inches("bed"));
      const bedBags = ceil(per(bedVolume, of(row.bedYield, "ft3")));
      const module = mul(add(unitLength, joint), add(unitHeight, joint));
      const pointing = mul(mul(netWithWaste, sub(number(1), per(mul(unitLength, unitHeight), module))), of(0.5, "in"));
      const pointingBags = ceil(per(pointing, of(row.jointYield, "ft3")));
      const flatUnits = ceil(per(netWithWaste, module));
      const course = add(unitHeight, joint);
      return {
        gross, openings, net, boards, rowScrews, screwLines, screws,
        boxes: ceil(per(mul(screws, allowance), number(250))),
        rolls: ceil(per(mul(add(boardWidth, boardHeight), boards), of(150, "ft"))),
        coating,
        pails: ceil(per(coating, of(5, "gal"))),
        jambs,
        flashing: ceil(per(mul(jambs, allowance), piece)),
        screed: ceil(per(mul(length, allowance), piece)),
        bedVolume, bedBags, module, pointing, pointingBags,
        cornerUnits: ceil(per(mul(height, number(row.corners)), course)),
        flatUnits,
        packs: ceil(per(flatUnits, number(40))),
        water: mul(of(5, "qt"), add(bedBags, pointingBags)),
        batches: ceil(per(bedBags, number(4))),
        panels: ceil(per(length, of(18, "ft"))),
        courses: ceil(per(height, course)),
        weight: mul(net, of(row.unitWeight, "lb/ft2")),
      };
    },
  };
}
