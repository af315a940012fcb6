import { type Html, html, markup, type Part } from "../shared/html.js";

/** Nothing but the site's own files: no other host, no script or style in the page, no form that is sent. */
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; form-action 'none'; base-uri 'none'";

const places: readonly (readonly [page: string, name: string])[] = [
  ["handbook/index.html", "Handbook"],
  ["guide/index.html", "Guides"],
  ["coverage.html", "Checked against"],
  ["units.html", "Units"],
  ["sources.html", "Sources"],
  ["glossary.html", "Glossary"],
  ["api/index.html", "API"],
];

/** A page of the site. */
export interface Page {
  /** Where it stands, from the top of the site. */
  readonly page: string;
  readonly title: string;
  /** One sentence for lists and search engines. */
  readonly says: string;
  readonly body: Part;
  /** The place in the site that it belongs to, where it is not itself one. */
  readonly under?: string;
}

/** The way from a page to the top of the site. */
export function toTop(page: string): string {
  return "../".repeat(page.split("/").length - 1);
}

/** A page as a whole document. */
export function document({ page, title, says, body, under = page }: Page): string {
  const top = toTop(page);
  const link = ([to, name]: readonly [string, string]): Html => html`<li><a href="${top}${to}"${to === under && markup(' aria-current="true"')}>${name}</a></li>`;
  return `<!doctype html>
${
  html`<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${markup(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title === "settingbed" ? title : `${title} · settingbed`}</title>
<meta name="description" content="${says}">
<link rel="stylesheet" href="${top}worked.css">
<link rel="stylesheet" href="${top}site.css">
<link rel="icon" href="${top}mark.svg" type="image/svg+xml">
<script src="${top}site.js" defer></script>
</head>
<body data-top="${top}">
<a class="skip" href="#main">To the content</a>
<header class="head">
<div class="bar">
<a class="brand" href="${top}index.html">settingbed</a>
<form class="search" role="search" hidden>
<label for="search">Search</label>
<input id="search" type="search" autocomplete="off" spellcheck="false" aria-describedby="found-count">
<p id="found-count" class="unseen" role="status"></p>
<ul id="found" hidden></ul>
</form>
<nav aria-label="Site"><ul>${places.map(link)}</ul></nav>
</div>
</header>
<main id="main" tabindex="-1">
${body}
</main>
<footer class="foot"><p>Planning figures. Local code and a licensed design professional decide on structure; data sheets and a test on the wall come before the clock.</p></footer>
</body>
</html>`.text
}
`;
}
