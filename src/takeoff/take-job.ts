import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { notchedBed } from "../mortar/notched-bed.js";
import { type FaceMeasures, measureFaces, meetingOfJob } from "./face-measures.js";
import type { Layer, LayerOf, ReadJob } from "./job.js";
import { linesOf } from "./lines-of.js";
import { type Check, checksOf } from "./lists/checks.js";
import { type Labour, type LabourLine, labourOf } from "./lists/labour.js";
import { type Priced, pricedOf } from "./lists/prices.js";
import { spareLines } from "./lists/spare.js";
import { type Costs, costsOf, type PriceLine } from "./lists/told-prices.js";
import { type MixingWater, waterOf } from "./lists/water.js";
import { type WeightLine, type Weights, weightsOf } from "./lists/weights.js";
import { measureJob } from "./measure-job.js";
import { noughtOf, type Part } from "./measured.js";
import type { OrderLine } from "./order-line.js";
import { say } from "./refusals.js";
import { openTaking } from "./taking.js";

/** What to beware of in every take-off. */
export const cautions: readonly string[] = [
  "Yields, film, water and pot life are those of the data sheets: check them against what is delivered.",
  "Cut wet or with suction and wear a mask: the dust of stone, board and mortar holds silica. Wet mortar burns: wear gloves and glasses.",
  "Wind and fastening are not checked here, and weight only against limits that are given; local code and a licensed design professional decide.",
];

/** What was measured on one elevation, or on the columns of one kind: flats, corners, sills, soffits and caps apart. */
export interface ElevationMeasures {
  readonly name: string;
  readonly walls: Quantity<"area">;
  readonly openings: Quantity<"area">;
  readonly returns: Quantity<"area">;
  readonly soffits: Quantity<"area">;
  readonly outsideCorners: Quantity<"length">;
  readonly insideCorners: Quantity<"length">;
  readonly sills: Quantity<"length">;
  readonly heads: Quantity<"length">;
  readonly caps: Quantity<"length">;
}

/** What a take-off answers; of what was not asked for there is nothing. */
export interface TakeOff {
  readonly lines: readonly OrderLine[];
  /** The faces of the job: the whole stone face, what of it is flat, what corner units cover, and the backing. */
  readonly faces: FaceMeasures;
  readonly elevations: readonly ElevationMeasures[];
  /** Clean water for mixing every bag on the list. */
  readonly water?: MixingWater;
  readonly weights?: readonly WeightLine[];
  /** The weights together. */
  readonly deliveredWeight?: Quantity<"mass">;
  readonly labour?: readonly LabourLine[];
  /** Hours of all tasks: at the tool, and paid. */
  readonly hours?: { readonly toolHours: Quantity<"time">; readonly paidHours: Quantity<"time"> };
  readonly prices?: readonly PriceLine[];
  /** The prices together, with allowance and tax. */
  readonly cost?: Omit<Costs, "lines">;
  readonly checks?: readonly Check[];
}

/** A job taken off, before it is told. */
export interface Taken {
  readonly lines: readonly OrderLine[];
  readonly faces: FaceMeasures;
  readonly parts: readonly Part[];
  readonly water: MixingWater | undefined;
  readonly weights: Weights | undefined;
  readonly labour: Labour | undefined;
  readonly priced: Priced | undefined;
  readonly checks: readonly Check[] | undefined;
}

/**
 * Takes off a job that has been read.
 *
 * @param shared - whether its layers and packs are those of many walls, of which this one need not use all
 */
export function takeJob(job: ReadJob, work: Work, shared = false): TakeOff {
  return toldJob(workOutJob(job, work, shared));
}

/** Works out a job in quantities alone: no number of them is looked at, so that it can be done for many walls together. */
export function workOutJob(job: ReadJob, work: Work, shared: boolean): Taken {
  const taking = openTaking(job, measureJob(job, work), work, shared);
  refuseSecondLayers(job, work);
  const units = taking.layer("units");
  const bed = bedThickness(taking.layer("setting bed"), units, job.layers, work);
  const stone = units === undefined ? undefined : { units, bed };
  const faces = measureFaces(taking.measures, meetingOfJob(taking.measures), stone, taking);
  work.assume("boards cover the walls without returns into openings; all openings are deducted from them");
  const ordered = job.layers.flatMap((layer, index) => linesOf(layer, index, { bed, stone, faces, taking }));
  const lines = [...ordered, ...spareLines(ordered, taking)];
  const [water, weights, labour, priced, checks] = [waterOf(lines), weightsOf(lines, taking), labourOf(lines, faces, taking), pricedOf(lines, taking), checksOf(taking)];
  taking.close();
  return { lines, faces, parts: taking.measures.parts, water, weights, labour, priced, checks };
}

/** Layers of which a wall has one: each takes the whole face, so that a second would be bought on top of the first. */
const once: readonly Layer["kind"][] = ["studs", "masonry backing", "setting bed", "units", "joints"];

function refuseSecondLayers({ layers }: ReadJob, work: Work): void {
  for (const [index, { kind }] of layers.entries()) {
    if (!once.includes(kind) || layers.findIndex((layer) => layer.kind === kind) === index) continue;
    work.problem(refusal(["layers", index, "kind"], kind, say("oneSuchLayer")));
  }
}

function toldJob({ lines, faces, parts, water, weights, labour, priced, checks }: Taken): TakeOff {
  return {
    lines,
    faces,
    elevations: parts.map(toldMeasures),
    ...(water === undefined ? {} : { water }),
    ...(weights === undefined ? {} : { weights: weights.lines, ...(weights.total === undefined ? {} : { deliveredWeight: weights.total }) }),
    ...(labour === undefined ? {} : { labour: labour.lines, ...(labour.hours === undefined ? {} : { hours: labour.hours }) }),
    ...(priced === undefined ? {} : withoutLines(costsOf(priced))),
    ...(checks === undefined ? {} : { checks }),
  };
}

function withoutLines({ lines, ...cost }: Costs): Pick<TakeOff, "prices" | "cost"> {
  return { prices: lines, cost };
}

function toldMeasures({ name, walls, openings, returns, soffits, cladCorners, uncladCorners, insideCorners, uncladInsideCorners, sills, heads, caps }: Part): ElevationMeasures {
  return {
    name, walls, openings, returns, soffits,
    outsideCorners: sum([cladCorners, uncladCorners]),
    insideCorners: sum([insideCorners, uncladInsideCorners]),
    sills, heads, caps,
  };
}

/** The bed behind the units: by thickness, or as the trowel leaves it; none where there is no setting bed. */
function bedThickness(layer: LayerOf<"setting bed"> | undefined, units: LayerOf<"units"> | undefined, layers: readonly Layer[], work: Work): Quantity<"length"> {
  if (layer === undefined) return units === undefined ? quantity("length", "0 in") : noughtOf(units.unitThickness);
  if (layer.bed.from === "thickness") return layer.bed.thickness;
  const { notch, depth, width, tooth, angle } = layer.bed;
  return work.part(notchedBed, { notch, depth, width, tooth, angle }, ["layers", layers.indexOf(layer), "bed"]).answers.bed;
}
