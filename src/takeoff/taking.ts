import type { Work } from "../core/composed.js";
import { nearest, type Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import type { Layer, LayerOf, ReadJob } from "./job.js";
import type { JobMeasures } from "./measure-job.js";
import { say } from "./refusals.js";

type Pack = ReadJob["packs"][string];

/** Everything the lines of a take-off are made from, and the book of which items have been named. */
export interface Taking {
  readonly job: ReadJob;
  readonly measures: JobMeasures;
  readonly work: Work;
  /** Whether the layers and packs are those of many walls, of which this one need not use all. */
  readonly shared: boolean;
  /** The first layer of a kind. */
  readonly layer: <Kind extends Layer["kind"]>(kind: Kind) => LayerOf<Kind> | undefined;
  /** What a pack of an item says; a problem where it is missing. */
  readonly pack: <Key extends keyof Pack>(item: string, ...keys: readonly Key[]) => { readonly [K in Key]: NonNullable<Pack[K]> } | undefined;
  /** The waste of an item; a problem where there is none, or a loss share. */
  readonly waste: (item: string) => Quantity<"ratio"> | undefined;
  /** The allowance of an item, either way; a problem where there is none, or both. */
  readonly allowance: (item: string) => { readonly waste: Quantity<"ratio"> } | { readonly lossShare: Quantity<"ratio"> } | undefined;
  /** Names an item of the order list; a problem where the name is taken. */
  readonly item: (name: string, path: Path) => string;
  /** The items that have been named. */
  readonly items: () => readonly string[];
}

/** Opens the book of a take-off. */
export function openTaking(job: ReadJob, measures: JobMeasures, work: Work, shared: boolean): Taking & { readonly close: () => void } {
  const items = new Set<string>();
  const asked = { packs: new Set<string>(), allowances: new Set<string>() };
  const allowance: Taking["allowance"] = (item) => {
    asked.allowances.add(item);
    const path = ["allowances", item];
    const given = Object.hasOwn(job.allowances, item) ? job.allowances[item] : undefined;
    if (given?.waste !== undefined && given.lossShare === undefined) return { waste: given.waste };
    if (given?.lossShare !== undefined && given.waste === undefined) return { lossShare: given.lossShare };
    if (given === undefined) work.problem({ code: "missing", path, given: "", wanted: say("writeWaste") });
    else work.problem({ code: "either", path, given: given.waste === undefined ? "" : "waste and lossShare", wanted: { kind: "exactlyOne", of: ["waste", "lossShare"] } });
    return undefined;
  };
  return {
    job,
    measures,
    work,
    shared,
    layer: <Kind extends Layer["kind"]>(kind: Kind) => job.layers.find((layer): layer is LayerOf<Kind> => layer.kind === kind),
    allowance,
    waste(item) {
      const given = allowance(item);
      if (given === undefined || "waste" in given) return given?.waste;
      work.problem({ code: "refused", path: ["allowances", item, "lossShare"], given: "", wanted: say("lossForCoatings") });
      return undefined;
    },
    pack(item, ...keys) {
      asked.packs.add(item);
      const path = ["packs", item];
      const given: Pack | undefined = Object.hasOwn(job.packs, item) ? job.packs[item] : undefined;
      const lacking = keys.filter((key) => given?.[key] === undefined);
      const extra = Object.keys(given ?? {}).filter((key) => !keys.some((wanted) => wanted === key));
      if (given === undefined) work.problem({ code: "missing", path, given: "", wanted: say("whatAPackHolds", { keys }) });
      else for (const key of lacking) work.problem({ code: "missing", path: [...path, key], given: "", wanted: "" });
      for (const key of extra) work.problem({ code: "unknown", path: [...path, key], given: "", wanted: say("packKeys", { item, keys }) });
      return lacking.length > 0 || given === undefined ? undefined : (given as { readonly [K in (typeof keys)[number]]: NonNullable<Pack[K]> });
    },
    item(name, path) {
      if (items.has(name)) work.problem({ code: "refused", path: [...path, "name"], given: `"${name}"`, wanted: say("itemTwice") });
      items.add(name);
      return name;
    },
    items: () => [...items],
    close() {
      if (shared) return;
      for (const book of ["packs", "allowances"] as const) {
        for (const name of Object.keys(job[book]).filter((one) => !asked[book].has(one))) {
          const near = nearest(name, [...asked[book]]);
          const wanted = near === undefined ? say("listHas", { of: [...asked[book]] }) : { kind: "near" as const, key: near };
          work.problem({ code: "unknown", path: [book, name], given: "", wanted });
        }
      }
    },
  };
}
