import type { RefusalTexts } from "../refusals.js";
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

/** The refusals of every topic in Spanish. */
export const spanishRefusals: RefusalTexts = {
  boards, common, exercise, fasteners, film, joints, layout, limits, many, membrane, mortar, movement, pictures, planning, schema, shapes, sheet, takeoff, timing, weather,
};
