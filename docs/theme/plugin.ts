// What makes typedoc's site ours: pages with titles and an order, words in code marks that lead somewhere, a way to Try it.
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import {
  type Application,
  Converter,
  type DocumentReflection,
  JSX,
  KindRouter,
  PageEvent,
  type Reflection,
} from "typedoc";
import { withSearch } from "../search/controls.js";
import { linkCode, linkSources, namesOf } from "./code-links.js";
import { describe, docs, documents } from "./documents.js";
import { addLandmarks } from "./landmarks.js";

const pages = new Map(documents.map((file) => [file, describe(file)]));
/** File names of the pages, by which they are addressed; their titles may change. */
const fileNames = new WeakMap<Reflection, string>();

/** Typedoc makes the documents in the order of the list that it was given. */
function nameDocuments(app: Application): void {
  const left = [...pages.values()];
  app.converter.on(Converter.EVENT_CREATE_DOCUMENT, (_, document: DocumentReflection) => {
    const page = left.find(({ name }) => name === basename(document.name));
    if (!page) return;
    left.splice(left.indexOf(page), 1);
    fileNames.set(document, page.name);
    document.name = page.title;
    document.frontmatter["category"] = page.category;
  });
}

class Router extends KindRouter {
  protected override getIdealBaseName(reflection: Reflection): string {
    const name = fileNames.get(reflection);
    return name === undefined ? super.getIdealBaseName(reflection) : `documents/${name}`;
  }
}

function finishPages(app: Application): void {
  const keys = Object.keys(JSON.parse(readFileSync(`${docs}bibliography.json`, "utf8")) as object);
  app.renderer.on(PageEvent.END, (page) => {
    const { router } = app.renderer;
    if (!router || page.contents === undefined) return;
    const from = page.model as Reflection;
    const room = fileNames.get(from) ?? page.url.split("/")[1]?.split(".")[0] ?? "";
    const names = [...namesOf(page.project, room)].filter(([, to]) => to !== from);
    const places = new Map(names.map(([name, to]) => [name, router.relativeUrl(from, to)]));
    const bibliography = router.baseRelativeUrl(from, "documents/bibliography.html");
    for (const key of keys) places.set(key, `${bibliography}#${key}`);
    page.contents = withSearch(addLandmarks(linkSources(linkCode(page.contents, places), places)));
  });
}

/** The page on which a job can be run stands outside what typedoc knows. */
const tryIt = "try-it/index.html";

/** The first places to go from the front page, where a phone shows no list of pages. */
const ways: readonly (readonly [string, string])[] = [
  ["documents/start.html", "Start in five minutes"],
  ["documents/questions.html", "Which function answers which question"],
  [tryIt, "Try it"],
  ["documents/verification.html", "Verification"],
];

function linkTryIt(app: Application): void {
  const { createElement } = JSX;
  app.renderer.hooks.on("sidebar.begin", (context) =>
    createElement("a", { class: "try-it", href: context.relativeURL(tryIt) }, "Try it"),
  );
  app.renderer.hooks.on("content.begin", (context) => {
    if (context.page.url !== "index.html") return createElement(JSX.Fragment, null);
    const items = ways.map(([to, name]) => createElement("li", null, createElement("a", { href: to }, name)));
    return createElement("nav", { "aria-label": "First steps" }, createElement("ul", { class: "ways" }, ...items));
  });
}

export function load(app: Application): void {
  nameDocuments(app);
  app.renderer.defineRouter("gelwright", Router);
  finishPages(app);
  linkTryIt(app);
}
