// The jobs film, joints and wall with a library of numbers: the factors between units are written out, nothing is checked.

/** @typedef {{ plus: (b: any) => N, minus: (b: any) => N, times: (b: any) => N, div: (b: any) => N, ceil: () => N }} N */

/** @param {(value: number) => N} n @returns {Record<string, (row: any) => Record<string, N>>} */
export function jobsWithoutUnits(n) {
  const shareLeft = (/** @type {number} */ percent) => n(1).minus(n(percent).div(n(100)));
  const withWaste = (/** @type {number} */ percent) => n(percent).div(n(100)).plus(n(1));
  const gallons = (/** @type {N} */ squareFeet, /** @type {N} */ mils) => squareFeet.times(mils).div(n(12000)).times(n(1728)).div(n(231));
  return {
    film({ area, wet, coats, solids, loss }) {
      const wetCoats = n(wet).times(n(coats));
      const coating = gallons(n(area), wetCoats).div(shareLeft(loss));
      return { dry: wetCoats.times(n(solids)).div(n(100)), coating, pails: coating.div(n(5)).ceil() };
    },
    joints({ area, unitLength, unitHeight, joint, depth, waste, bagYield }) {
      const module = n(unitLength).plus(n(joint)).times(n(unitHeight).plus(n(joint)));
      const perArea = module.minus(n(unitLength).times(n(unitHeight))).div(module).times(n(depth)).div(n(12));
      const volume = perArea.times(n(area));
      const gross = volume.times(withWaste(waste));
      return { module, perArea, volume, gross, bags: gross.div(n(bagYield)).ceil() };
    },
    wall(row) {
      const at = (/** @type {string} */ name) => n(row[name]);
      const [length, height, doors, windows, vents] = [at("length"), at("height"), at("doors"), at("windows"), at("vents")];
      const [doorWidth, doorHeight, windowWidth, windowHeight, ventWidth, ventHeight] = [at("doorWidth"), at("doorHeight"), at("windowWidth"), at("windowHeight"), at("ventWidth"), at("ventHeight")];
      const [unitLength, unitHeight, joint] = [at("unitLength"), at("unitHeight"), at("joint")];
      const [one, two, twelve] = [n(1), n(2), n(12)];
      const allowance = withWaste(row.waste);
      const gross = length.times(height);
      const openings = doorWidth.times(doorHeight).times(doors).plus(windowWidth.times(windowHeight).times(windows)).plus(ventWidth.times(ventHeight).times(vents).div(n(144)));
      const net = gross.minus(openings);
      const netWithWaste = net.times(allowance);
      const boards = netWithWaste.div(n(15)).ceil();
      const rowScrews = n(36).div(at("screwSpacing")).ceil().plus(one);
      const screwLines = n(60).div(at("studSpacing")).ceil().plus(one);
      const screws = boards.times(rowScrews).times(screwLines);
      const coating = gallons(net, at("film").times(at("coats"))).div(shareLeft(row.loss));
      const jambs = doors.times(two.times(doorHeight).plus(doorWidth)).plus(windows.times(two).times(windowHeight.plus(windowWidth))).plus(vents.times(two).times(ventHeight.plus(ventWidth)).div(twelve));
      const bedVolume = netWithWaste.times(at("bed")).div(twelve);
      const bedBags = bedVolume.div(at("bedYield")).ceil();
      const course = unitHeight.plus(joint);
      const module = unitLength.plus(joint).times(course);
      const pointing = netWithWaste.times(one.minus(unitLength.times(unitHeight).div(module))).div(n(24));
      const pointingBags = pointing.div(at("jointYield")).ceil();
      const flatUnits = netWithWaste.times(n(144)).div(module).ceil();
      return {
        gross, openings, net, boards, rowScrews, screwLines, screws,
        boxes: screws.times(allowance).div(n(250)).ceil(),
        rolls: boards.times(n(8)).div(n(150)).ceil(),
        coating,
        pails: coating.div(n(5)).ceil(),
        jambs,
        flashing: jambs.times(allowance).div(n(10)).ceil(),
        screed: length.times(allowance).div(n(10)).ceil(),
        bedVolume, bedBags, module, pointing, pointingBags,
        cornerUnits: at("corners").times(height).times(twelve).div(course).ceil(),
        flatUnits,
        packs: flatUnits.div(n(40)).ceil(),
        water: bedBags.plus(pointingBags).times(n(5)).div(n(4)),
        batches: bedBags.div(n(4)).ceil(),
        panels: length.div(n(18)).ceil(),
        courses: height.times(twelve).div(course).ceil(),
        weight: net.times(at("unitWeight")),
      };
    },
  };
}
