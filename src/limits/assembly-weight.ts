import { common } from "../core/common-refusals.js";
import { composed, type Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { densityTable, layerTable, weightCaution } from "../data/limits.js";
import { nested } from "../schema/nested.js";
import { assemblyInput, type ReadLayer } from "./assembly-layers.js";
import { layerWeight } from "./layer-weight.js";
import { weightOnStud } from "./weight-on-stud.js";
import { wetWeight } from "./wet-weight.js";

/** One layer weighed. */
export interface WeighedLayer {
  readonly name: string;
  readonly part: "unit" | "veneer" | "wall";
  readonly dry: Quantity<"arealMass">;
  readonly wet: Quantity<"arealMass">;
}

/** Weights of a wall by what is counted; one that has no layer is absent. */
export interface AssemblyWeights {
  /** The units alone, which older limits on adhered veneer are meant for. */
  readonly unit?: Quantity<"arealMass">;
  /** The units with all that is set with them. */
  readonly installed?: Quantity<"arealMass">;
  /** Everything. */
  readonly total: Quantity<"arealMass">;
}

/** A wall weighed layer by layer. */
export interface AssemblyWeight {
  readonly layers: readonly WeighedLayer[];
  readonly dry: AssemblyWeights;
  readonly wet: AssemblyWeights;
  /** What falls to one stud, all layers wet; absent where no spacing of studs is given. */
  readonly onStud?: Quantity<"linearMass">;
}

/**
 * Weight of a wall layer by layer, dry and wet: of the units alone, of the veneer as installed, and of everything.
 *
 * @example
 * ```ts
 * const wall = assemblyWeight({
 *   layers: [
 *     { name: "stone", part: "unit", from: "density", thickness: "1-1/4 in", density: "150 lb/ft3", wetGain: "4 %" },
 *     { name: "setting bed", part: "veneer", from: "density", thickness: "1/2 in", density: "132 lb/ft3", wetGain: "10 %" },
 *     { name: "barrier", part: "wall", from: "layer table", material: "liquid membrane", wetGain: "0 %" },
 *   ],
 * });
 * wall.dry.unit?.toString(); // "15.625 lb/ft2"
 * wall.dry.installed?.toString(); // "21.125 lb/ft2"
 * wall.wet.total.toString(); // "23.3 lb/ft2"
 * ```
 */
export const assemblyWeight = /* @__PURE__ */ composed({
  id: "limits.assembly-weight",
  title: "Weight of a wall layer by layer",
  reads: /* @__PURE__ */ nested(assemblyInput),
  cautions: [weightCaution, "Limits on the weight of a unit and on the weight as installed are not the same limit: read which one the code means."],
  run: ({ layers: given, studSpacing }, work): AssemblyWeight => {
    if (given.length === 0) work.refuse(refusal(["layers"], common("noneGiven", { of: "layer" }), common("giveOneOrMore")));
    const layers = given.flatMap((layer, index) => {
      const weights = weigh(layer, ["layers", index], work);
      return weights === undefined ? [] : [{ name: layer.name, part: layer.part, ...weights }];
    });
    const wet = weightsOf(layers, "wet");
    const onStud = studSpacing === undefined ? {} : { onStud: work.part(weightOnStud, { weight: wet.total, studSpacing }).answers.onStud };
    return { layers, dry: weightsOf(layers, "dry"), wet, ...onStud };
  },
});

type Weights = Pick<WeighedLayer, "dry" | "wet">;

function weigh(layer: ReadLayer, path: Path, work: Work): Weights | undefined {
  const { wetGain } = layer;
  const byWeight = (weight: Quantity<"arealMass">): Weights | undefined => {
    const wet = work.attempt(wetWeight, { weight, wetGain }, path)?.answers.wet;
    return wet === undefined ? undefined : { dry: weight, wet };
  };
  const byDensity = (thickness: Quantity<"length">, density: Quantity<"density">): Weights | undefined => work.attempt(layerWeight, { thickness, density, wetGain }, path)?.answers;
  switch (layer.from) {
    case "weight":
      return byWeight(layer.weight);
    case "density":
      return byDensity(layer.thickness, layer.density);
    case "layer table": {
      const row = layerTable[layer.material];
      work.stand(row.basis);
      return byWeight(quantity("arealMass", row.weight));
    }
    case "density table": {
      const row = densityTable[layer.material];
      work.stand(row.basis);
      if (layer.part === "unit") work.caution("The densities of stone on file are the least that the standards ask for: a real stone is heavier.");
      return byDensity(layer.thickness, quantity("density", row.density));
    }
  }
}

function weightsOf(layers: readonly WeighedLayer[], state: "dry" | "wet"): AssemblyWeights {
  const of = (...parts: readonly WeighedLayer["part"][]): readonly Quantity<"arealMass">[] => layers.filter(({ part }) => parts.includes(part)).map((layer) => layer[state]);
  const [unit, installed] = [of("unit"), of("unit", "veneer")];
  return {
    ...(unit.length === 0 ? {} : { unit: sum(unit) }),
    ...(installed.length === 0 ? {} : { installed: sum(installed) }),
    total: sum(of("unit", "veneer", "wall")),
  };
}
