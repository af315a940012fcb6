import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

const beds = { low: "cama baja", typical: "cama usual" };
const materials = { "thin-set mortar": "mortero de capa delgada", "coloured joint mortar": "mortero de color para juntas", "repointing mortar": "mortero para rejuntear" };

/** Why the functions for mortar refuse, in Spanish. */
export const mortar: RefusalTexts["mortar"] = {
  besidesLife: () => "life es la vida a la temperatura de uso; no escriba esto, o dé lifeAtReference en vez de life",
  lifeAtReferenceNeeds: () => "lifeAtReference necesita además reference, temperature y rule",
  bedUnderLower: ({ than, least }) => sentence`al menos la ${beds[than]}, ${least}`,
  notForMaterial: ({ material }) => sentence`no lo escriba para ${materials[material]}`,
  sourcesDiffer: ({ of }) => sentence`las fuentes no coinciden; escriba una de estas opciones: ${of}`,
  sandByProportion: ({ most }) => sentence`a lo más ${most} si el mortero se especifica por proporciones`,
};
