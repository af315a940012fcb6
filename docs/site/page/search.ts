import { escaped } from "../shared/html.js";
import { several } from "../shared/words.js";
import { afterQuiet, element } from "./elements.js";

type Findable = readonly [title: string, page: string, kind: string, words: string];

const most = 12;

/** Search over titles and words; the index is loaded at the first use. */
export function openSearch(): void {
  const field = element("search", HTMLInputElement);
  const [found, count] = [element("found", HTMLElement), element("found-count", HTMLElement)];
  const top = document.body.dataset.top ?? "";
  const form = field.form as HTMLFormElement;
  form.hidden = false;
  let rows: readonly Findable[] | undefined;

  const close = (): void => {
    found.hidden = true;
    count.textContent = "";
  };
  const show = (): void => {
    const words = field.value.toLowerCase().match(/[\p{L}\d]+/gu) ?? [];
    if (rows === undefined || words.length === 0) {
      close();
      return;
    }
    const hits = rows.map((row) => [rank(row, words), row] as const).filter(([points]) => points > 0).sort(([one], [other]) => other - one);
    found.innerHTML = hits.slice(0, most).map(([, [title, page, kind]]) => `<li><a href="${escaped(top + page)}">${escaped(title)} <span class="kind">${escaped(kind)}</span></a></li>`).join("");
    if (hits.length === 0) found.innerHTML = "<li>Nothing found</li>";
    found.hidden = false;
    count.textContent = hits.length === 0 ? "Nothing found" : several(hits.length, "page") + (hits.length > most ? ` found, the nearest ${String(most)} listed` : " found");
  };
  const quiet = afterQuiet(150, show);

  const load = (): void => {
    if (document.getElementById("search-index") !== null) return;
    const script = document.createElement("script");
    script.id = "search-index";
    script.src = `${top}search-index.js`;
    script.addEventListener("load", () => {
      rows = (globalThis as { settingbedIndex?: readonly Findable[] }).settingbedIndex;
      show();
    });
    document.head.append(script);
  };

  field.addEventListener("focus", load);
  field.addEventListener("input", () => {
    load();
    quiet.later();
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    found.querySelector("a")?.click();
  });
  form.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    close();
    field.focus();
  });
  form.addEventListener("focusout", ({ relatedTarget }) => {
    if (!(relatedTarget instanceof Node) || !form.contains(relatedTarget)) setTimeout(close, 150);
  });
}

/** How well a row fits: all words must be met; those in the title weigh most. */
function rank([title, , , further]: Findable, words: readonly string[]): number {
  const heading = title.toLowerCase();
  const points = words.map((word) => (heading.startsWith(word) ? 9 : new RegExp(`(^|[^\\p{L}])${word}`, "u").test(heading) ? 7 : heading.includes(word) ? 5 : ` ${further}`.includes(` ${word}`) ? 2 : further.includes(word) ? 1 : 0));
  return points.includes(0) ? 0 : points.reduce<number>((sum, one) => sum + one, 0);
}
