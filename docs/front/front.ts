import MarkdownIt from "markdown-it";
import { boxTables } from "../in-page/wide-tables.js";
import { searchControls } from "../search/controls.js";
import { docs } from "../theme/documents.js";
import { figure } from "../theme/markdown.js";
import { doors } from "./doors.js";
import { smallSheet } from "./small-sheet.js";

/** The scheme of the page is known before it is drawn, so that it does not flash in the other. */
const scheme = 'document.documentElement.dataset.theme = localStorage.getItem("tsd-theme") || "os";';

const list = (links: readonly (readonly [to: string, name: string])[]) =>
  links.map(([to, name]) => `<li><a href="${to}">${name}</a></li>`).join("");

const doorsHtml = () =>
  doors
    .map(
      ({ name, who, links }) => `<section class="door"><h2>${name}</h2><p>${who}</p><ul>${list(links)}</ul></section>`,
    )
    .join("");

/** The front page: what the library promises, a sheet and a figure that it made, how to install it, and three ways on. */
export function frontPage(): string {
  const parser = new MarkdownIt();
  boxTables(parser);
  const sheet = parser.render(smallSheet());
  return `<!DOCTYPE html>
<html lang="en" data-base="./">
<head>
<meta charset="utf-8">
<title>gelwright: the numbers of a clear oil gel</title>
<meta name="description" content="A TypeScript library of calculations for clear oil gels: formula, batch, heat, particles and packs, from the bench to the kettle.">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="icon" href="data:,">
<link rel="stylesheet" href="assets/front.css">
<link rel="stylesheet" href="assets/find.css">
<script defer src="assets/find.js"></script>
</head>
<body>
<script>${scheme}</script>
<header><a class="title" href="index.html" aria-current="page">gelwright</a>${searchControls}</header>
<main class="col-content">
<h1>From a formula to the batch sheet, every number with its unit, range and source</h1>
<p class="lead">gelwright does the calculations behind clear oil gels for personal care: how much gel former to use, what to weigh, when to add each oil and the glitter, whether the motor can stir the gel, how much goes into each jar. It is a TypeScript library; it runs in your app, in a script or on this site.</p>
<div class="install"><pre><code>npm install gelwright</code></pre><a class="main-way" href="try-it/index.html">Try it in the browser</a> <small>Not published yet: <a href="documents/start.html">from a checkout</a> until then.</small></div>
<div class="shown">
<section aria-labelledby="sheet-title"><h2 id="sheet-title">What comes out</h2><div class="sheet">${sheet}</div><p><small>Part of the sheet of an invented example, as <code>runPlan</code> and <code>toMarkdown</code> gave it when this page was built. <a href="try-it/index.html">The whole sheet</a></small></p></section>
<section aria-labelledby="figure-title"><h2 id="figure-title">When may the glitter go in?</h2>${figure(`${docs}pages/window-for-adding.svg`)}</section>
</div>
<nav class="doors" aria-label="Ways into the site">${doorsHtml()}</nav>
<p><small>The library calculates; people decide. No result says that a product or a process is safe: <a href="documents/cautions.html">Cautions</a>.</small></p>
</main>
</body>
</html>
`;
}
