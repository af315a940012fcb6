import { boardLayers, boardLayout, type BoardLayout } from "../../../src/boards/index.js";
import type { AnyCallable } from "../../../src/core/callable.js";
import type { Solution } from "../../../src/core/solution.js";
import { boardElevation } from "../../../src/pictures/index.js";
import { html, markup, type Part } from "./html.js";

/** A drawing of what comes out, where there is one. */
export function pictureHtml(run: AnyCallable, { answers }: Solution): Part {
  const draw = (layout: BoardLayout, title: string): Part => html`<figure class="drawing">${markup(boardElevation(layout, { title, screws: layout.screws !== undefined }))}</figure>`;
  if (run === boardLayout) return draw(answers as BoardLayout, "Boards on the wall");
  if (run === boardLayers) return (answers as { readonly layers: readonly BoardLayout[] }).layers.map((layer, index) => draw(layer, `Layer ${String(index + 1)}`));
  return undefined;
}
