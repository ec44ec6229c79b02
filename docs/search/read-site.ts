import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Kind, Section } from "./section.js";

/** Kinds by the folder in which typedoc puts a page. */
const kinds: Readonly<Record<string, Kind>> = {
  functions: "function",
  classes: "type",
  interfaces: "type",
  types: "type",
  variables: "value",
  modules: "room",
};

const entities: Readonly<Record<string, string>> = { lt: "<", gt: ">", quot: '"', amp: "&", "#39": "'", nbsp: " " };

/** The words of a piece of a page: without its tags, its drawings and the source of its equations. */
export function textOf(html: string): string {
  return html
    .replaceAll(/<math\b[^>]*display="block".*?<\/math>|<(annotation|svg|script|style|button|aside)\b.*?<\/\1>/gs, " ")
    .replaceAll(/<\/?(?:code|b|strong|em|span|a|wbr|mi|mo|mn|mrow|msub|msup)\b[^>]*>/g, "")
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll(/&(#?\w+);/g, (all, name: string) => entities[name] ?? all)
    .replaceAll(/\s+/g, " ")
    .trim();
}

/** What a page says, without the lists around it. */
function mainOf(html: string): string {
  const from = html.indexOf('<div class="col-content"');
  if (from < 0) return /<main\b.*?<\/main>/s.exec(html)?.[0] ?? "";
  const to = html.indexOf('<div class="col-sidebar"', from);
  return html.slice(from, to < 0 ? undefined : to);
}

const titleOf = (html: string) => textOf(/<h1\b[^>]*>(.*?)<\/h1>/s.exec(html)?.[1] ?? "");

/** Lists of checks, sources and questions are looked up on their page; each question is found by what answers it. */
const isList = (url: string) => /verification|bibliography|documents\/questions/.test(url);

/** The page of a tool, found by its title and its introduction: the rest is the form. */
function sectionOfTool(url: string, main: string): Section {
  const [, intro = ""] = /<p class="intro">(.*?)<\/p>/s.exec(main) ?? [];
  const place = url.startsWith("calculators") ? "Calculator" : "";
  return { url, kind: "page", title: titleOf(main), in: place, text: textOf(intro) };
}

/** A page of prose, cut at its headings. */
function sectionsOfPage(url: string, main: string): Section[] {
  const title = titleOf(main);
  if (/^(calculators|try-it)\//.test(url)) return [sectionOfTool(url, main)];
  const parts = main.split(/(?=<h[1-4]\b[^>]*\bid=")/);
  return parts.slice(title === "" ? 0 : 1).map((part, i) => {
    const [, id = "", heading = ""] = /^<h[1-4]\b[^>]*\bid="([^"]*)"[^>]*>(.*?)<\/h[1-4]>/s.exec(part) ?? [];
    const body = isList(url) ? part.slice(0, 4000) : part;
    const text = textOf(body.replace(/^<h[1-4]\b.*?<\/h[1-4]>/s, "").replaceAll(/<pre\b.*?<\/pre>/gs, " "));
    if (i === 0) return { url, kind: "page", title, in: "", text };
    return { url: `${url}#${id}`, kind: isList(url) ? "list" : "section", title: textOf(heading), in: title, text };
  });
}

/** The first letters of a text, to the end of a word. */
function shortened(text: string, max: number): string {
  return text.length <= max ? text.trim() : text.slice(0, text.lastIndexOf(" ", max));
}

/** The page of a function, a value, a type or a room; of a type its properties too. */
function sectionsOfReference(url: string, kind: Kind, main: string): Section[] {
  const name =
    titleOf(main.replaceAll(/<code class="tsd-tag">.*?<\/code>/g, ""))
      .split(" ")
      .at(-1) ?? "";
  const room = url.split("/")[1]?.split(".")[0] ?? "";
  const said = [...main.matchAll(/<div class="tsd-comment tsd-typography">(.*?)<\/div>/gs)];
  const cut = main.replaceAll(/<pre\b.*?<\/pre>|<div class="tsd-signature.*?<\/div>/gs, " ");
  const summary = textOf(said[0]?.[1] ?? "");
  // Of a function what it says of itself and of its arguments; refusals and examples name too much else.
  const text =
    kind === "function" ? textOf(cut.slice(cut.indexOf("<h1")).split('<div class="tsd-tag-')[0] ?? "") : summary;
  const own = {
    url,
    kind,
    title: kind === "room" ? `gelwright/${name}` : name,
    in: kind === "room" ? "rooms" : `gelwright/${room}`,
    text:
      kind === "function"
        ? shortened(`${summary} ${text.slice(text.indexOf(summary) + summary.length)}`, 1500)
        : summary,
    ...(kind === "function" && { shown: Math.min(summary.length, 1500) }),
  };
  if (kind !== "type") return [own];
  const members = [...main.matchAll(/<section class="tsd-panel tsd-member">(.*?)<\/section>/gs)];
  const properties = members.flatMap(([, member = ""]): Section[] => {
    const [, id] = /<h3\b[^>]*\bid="([^"]*)"/.exec(member) ?? [];
    const [, property = ""] = /<h3\b.*?<span[^>]*>(.*?)<\/span>/s.exec(member) ?? [];
    const words = /<div class="tsd-comment tsd-typography">(.*?)<\/div>/s.exec(member)?.[1] ?? "";
    if (id === undefined) return [];
    const title = textOf(property);
    return [{ url: `${url}#${id}`, kind: "property", title, in: `gelwright/${room}, ${name}`, text: textOf(words) }];
  });
  return [own, ...properties];
}

/** The questions of the trade, by the pages that answer them: each row of the page of questions. */
function questionsByPage(html: string): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const [, question = "", answer = ""] of html.matchAll(/<tr>\s*<td>(.*?)<\/td>\s*<td>(.*?)<\/td>/gs))
    for (const [, to = ""] of answer.matchAll(/href="\.\.\/([^"#]*)/g))
      found.set(to, [...(found.get(to) ?? []), textOf(question)]);
  return found;
}

/** Wordings of users, by the page or the place on a page that answers: each line of the files in `wordings`. */
export function wordingsByUrl(): ReadonlyMap<string, readonly string[]> {
  const folder = fileURLToPath(new URL("./wordings/", import.meta.url));
  const lines = readdirSync(folder).flatMap((file) => readFileSync(join(folder, file), "utf8").trim().split("\n"));
  return new Map(
    lines.map((line) => {
      const [, page = "", place = "", wordings = ""] = /^([^:#]+)(#[^:]*)?: (.*)$/.exec(line) ?? [];
      return [`${page}.html${place}`, wordings.split("; ")];
    }),
  );
}

/** Everything that the search knows, read from the site as it was built. */
export function readSite(site: string): Section[] {
  const files = readdirSync(site, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".html"));
  const questions = questionsByPage(readFileSync(join(site, "documents/questions.html"), "utf8"));
  const wordings = wordingsByUrl();
  const withQuestions = (section: Section): Section => {
    const asked = section.kind === "property" ? undefined : questions.get(section.url);
    // A calculator answers what its function does.
    const also = wordings.get(section.url.replace(/^calculators/, "functions"));
    return { ...section, ...(asked && { questions: asked }), ...(also && { wordings: also }) };
  };
  return files
    .filter((file) => !/^(hierarchy|modules|index|404)\.html$/.test(file))
    .sort()
    .flatMap((url) => {
      const main = mainOf(readFileSync(join(site, url), "utf8"));
      const kind = kinds[url.split("/")[0] ?? ""];
      return kind ? sectionsOfReference(url, kind, main) : sectionsOfPage(url, main);
    })
    .map(withQuestions);
}
