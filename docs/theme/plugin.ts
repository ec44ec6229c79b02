// What makes typedoc's site ours: pages with titles and an order, words in code marks that lead somewhere, a way to Try it.
import { basename } from "node:path";
import MarkdownIt from "markdown-it";
import {
  type Application,
  Converter,
  type DocumentReflection,
  JSX,
  KindRouter,
  PageEvent,
  type Reflection,
  ReflectionKind,
} from "typedoc";
import { linkCalculators } from "../calculators/links.js";
import { frontPage } from "../front/front.js";
import { sources } from "../proof/sources.js";
import { facts } from "../reference/facts.js";
import { functionPage, type Inline } from "../reference/function-page.js";
import { roomPage } from "../reference/room-page.js";
import { withSearch } from "../search/controls.js";
import { breakNames, linkCode, linkSources, namesOf } from "./code-links.js";
import { describe, documents } from "./documents.js";
import { addLandmarks, plainSummaries } from "./landmarks.js";
import { extendMarkdown } from "./markdown.js";

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

/** A page of a function or a room with what the reader of docstrings, the questions and the checks add to it. */
function referencePage(html: string, of: Reflection, inline: Inline): string {
  if (of.kindOf(ReflectionKind.Module)) return roomPage(html, of.name, facts(), inline);
  const documented = of.kindOf(ReflectionKind.Function) && facts().functions.get(`${of.parent?.name}.${of.name}`);
  return documented ? functionPage(html, documented, facts(), inline) : html;
}

function finishPages(app: Application): void {
  const parser = new MarkdownIt();
  extendMarkdown(parser);
  const inline: Inline = (markdown) => parser.renderInline(markdown);
  app.renderer.on(PageEvent.END, (page) => {
    const { router } = app.renderer;
    if (!router || page.contents === undefined) return;
    if (page.url === "index.html") {
      page.contents = frontPage();
      return;
    }
    const from = page.model as Reflection;
    const room = fileNames.get(from) ?? page.url.split("/")[1]?.split(".")[0] ?? "";
    const names = [...namesOf(page.project, room)].filter(([, to]) => to !== from);
    const places = new Map(names.map(([name, to]) => [name, router.relativeUrl(from, to)]));
    const bibliography = router.baseRelativeUrl(from, "documents/bibliography.html");
    for (const key of Object.keys(sources)) places.set(key, `${bibliography}#${key}`);
    const own = referencePage(page.contents, from, inline);
    const linked = breakNames(linkCalculators(linkSources(linkCode(own, places), places), page.url));
    page.contents = withSearch(plainSummaries(addLandmarks(linked)));
  });
}

/** The page on which a job can be run stands outside what typedoc knows. */
const tryIt = "try-it/index.html";

function linkTryIt(app: Application): void {
  const { createElement } = JSX;
  app.renderer.hooks.on("sidebar.begin", (context) =>
    createElement("a", { class: "try-it", href: context.relativeURL(tryIt) }, "Try it"),
  );
}

export function load(app: Application): void {
  nameDocuments(app);
  app.renderer.defineRouter("gelwright", Router);
  finishPages(app);
  linkTryIt(app);
}
