import { Marked } from "marked";
import { escaped } from "../shared/html.js";

/** A heading of a guide, for the list at its head. */
export interface Heading {
  readonly id: string;
  readonly text: string;
}

/** A guide as markup. */
export interface ReadGuide {
  readonly title: string;
  readonly says: string;
  readonly markup: string;
  readonly headings: readonly Heading[];
}

const plain = (text: string): string => text.replaceAll(/<[^>]*>/g, "");

/** Text with Markdown in a line: `code`, emphasis, links. */
export function inlineMarkdown(text: string): string {
  return new Marked().parseInline(text, { async: false }).trim();
}

/** Reads a guide: its front matter is left out, links to other guides lead to their pages. */
export function readGuide(source: string): ReadGuide {
  const text = source.replace(/^---\n[\s\S]*?\n---\n/, "");
  const headings: Heading[] = [];
  const marked = new Marked({
    renderer: {
      heading({ tokens, depth }) {
        const inner = this.parser.parseInline(tokens);
        const id = plain(inner).toLowerCase().replaceAll(/[^a-z0-9]+/g, "-").replaceAll(/^-|-$/g, "");
        if (depth === 2) headings.push({ id, text: plain(inner) });
        return `<h${String(depth)} id="${id}">${inner}</h${String(depth)}>\n`;
      },
      code({ text: code }) {
        return `<pre class="code"><code>${escaped(code)}</code></pre>\n`;
      },
      table(token) {
        const cells = (row: typeof token.header, tag: string): string => row.map((cell) => `<${tag}>${this.parser.parseInline(cell.tokens)}</${tag}>`).join("");
        return `<div class="scroll"><table><thead><tr>${cells(token.header, 'th scope="col"').replaceAll('</th scope="col">', "</th>")}</tr></thead><tbody>${token.rows.map((row) => `<tr>${cells(row, "td")}</tr>`).join("")}</tbody></table></div>\n`;
      },
      link({ href, tokens }) {
        const to = href.replace(/^(?:\.\/)?([\w-]+)\.md(?=#|$)/, "$1.html").replace(/^\.\.\/site\//, "../");
        return `<a href="${escaped(to)}">${this.parser.parseInline(tokens)}</a>`;
      },
      html({ text: raw }) {
        return escaped(raw);
      },
    },
  });
  const written = marked.parse(text, { async: false });
  const [, title = ""] = /<h1[^>]*>([\s\S]*?)<\/h1>/.exec(written) ?? [];
  const [, says = ""] = /<p>([\s\S]*?)<\/p>/.exec(written) ?? [];
  return { title: plain(title), says: plain(says).replaceAll(/\s+/g, " "), markup: written, headings };
}
