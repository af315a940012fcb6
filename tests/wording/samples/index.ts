import type { RefusalTexts } from "../../../src/wording/index.js";
import { common } from "./common.js";
import { film } from "./film.js";
import { joints } from "./joints.js";

type First<F> = F extends (...values: infer V) => string ? V : never;

/** Values for every refusal of a topic that has any: the compiler names what is missing. */
export type SamplesOf<Topic extends keyof RefusalTexts> = {
  readonly [Name in keyof RefusalTexts[Topic] as First<RefusalTexts[Topic][Name]> extends [] ? never : Name]: First<RefusalTexts[Topic][Name]>[0];
};

/** Values for every refusal, by topic. */
export const samples: { readonly [Topic in keyof RefusalTexts]: SamplesOf<Topic> } = { common, film, joints };
