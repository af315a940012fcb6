import type { RefusalTexts } from "../../../src/wording/index.js";
import { boards } from "./boards.js";
import { common } from "./common.js";
import { exercise } from "./exercise.js";
import { fasteners } from "./fasteners.js";
import { film } from "./film.js";
import { joints } from "./joints.js";
import { layout } from "./layout.js";
import { limits } from "./limits.js";
import { many } from "./many.js";
import { membrane } from "./membrane.js";
import { mortar } from "./mortar.js";
import { movement } from "./movement.js";
import { pictures } from "./pictures.js";
import { planning } from "./planning.js";
import { schema } from "./schema.js";
import { shapes } from "./shapes.js";
import { sheet } from "./sheet.js";
import { takeoff } from "./takeoff.js";
import { timing } from "./timing.js";
import { weather } from "./weather.js";

type First<F> = F extends (...values: infer V) => string ? V : never;

/** Values for every refusal of a topic that has any: the compiler names what is missing. */
export type SamplesOf<Topic extends keyof RefusalTexts> = {
  readonly [Name in keyof RefusalTexts[Topic] as First<RefusalTexts[Topic][Name]> extends [] ? never : Name]: First<RefusalTexts[Topic][Name]>[0];
};

/** Values for every refusal, by topic. */
export const samples: { readonly [Topic in keyof RefusalTexts]: SamplesOf<Topic> } = { boards, common, exercise, fasteners, film, joints, layout, limits, many, membrane, mortar, movement, pictures, planning, schema, shapes, sheet, takeoff, timing, weather };
