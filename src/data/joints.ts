import type { Basis } from "../core/basis.js";

/** The joint width that spacers usually give. */
export const usualJoint = { kind: "common practice", says: "joints of 3/8 in (10 mm) from spacers" } as const satisfies Basis;

/** Layers in which a raked-out joint is filled again. */
export const repointingLayers = {
  kind: "published",
  publisher: "US National Park Service",
  title: "Preservation Brief 2",
  edition: "edition not named",
  locator: "filling the joint",
  quotedBy: "a teaching edition",
  says: "layers of about 1/4 in, each left to thumbprint hardness",
} as const satisfies Basis;

/** How deep a joint is raked out before it is repointed. */
export const repointingDepth = {
  kind: "published",
  publisher: "Masonry Construction",
  title: "Restoring mortar joints in historic buildings",
  edition: "trade journal, edition not named",
  locator: "joint preparation",
  says: "2 to 2-1/2 times the width of the joint",
} as const satisfies Basis;

/** The depth of a sealant bead. */
export const usualSealantDepth = { kind: "common practice", says: "sealant half as deep as wide, at least 1/4 in and at most 1/2 in" } as const satisfies Basis;

/** The thickness of a backer rod. */
export const usualRodOversize = { kind: "common practice", says: "backer rod about a quarter thicker than the joint is wide" } as const satisfies Basis;

/** The sizes of backer rod. */
export const usualRodSizes = { kind: "common practice", says: "backer rod in sizes by the eighth of an inch" } as const satisfies Basis;
