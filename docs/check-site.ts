// Run after typedoc: every link of the site leads somewhere, and no page or figure loads anything from another host.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";

const site = fileURLToPath(new URL("./site/", import.meta.url));
const files = readdirSync(site, { recursive: true, encoding: "utf8" });
const pages = files.filter((file) => /\.(html|svg)$/.test(file));
const text = new Map(
  files
    .filter((file) => /\.(html|css|js|svg)$/.test(file))
    .map((file) => [file, readFileSync(join(site, file), "utf8")]),
);

/** Every attribute of a page or figure that names another place, and the element it stands in. */
function references(html: string): { readonly element: string; readonly target: string }[] {
  return [...html.matchAll(/<([a-z]+)\b[^>]*?\s(?:href|src|srcset|action|data)="([^"]*)"/g)].map(
    ([, element = "", target = ""]) => ({ element, target: target.replaceAll("&amp;", "&") }),
  );
}

const isElsewhere = (target: string) => /^([a-z]+:)?\/\//i.test(target);

function faultOfLink(page: string, target: string): string | undefined {
  const [path = "", fragment = ""] = target.split("#");
  const file = normalize(path === "" ? page : join(dirname(page), decodeURIComponent(path)));
  if (!existsSync(join(site, file))) return `${page}: no file ${target}`;
  const id = decodeURIComponent(fragment);
  if (id && !text.get(file)?.includes(` id="${id}"`)) return `${page}: no place ${target}`;
  return undefined;
}

function faultsOfPage(page: string): string[] {
  return references(text.get(page) ?? "").flatMap(({ element, target }) => {
    if (isElsewhere(target)) return element === "a" ? [] : [`${page}: <${element}> loads ${target}`];
    if (/^(mailto|data|javascript):/.test(target)) return [];
    return faultOfLink(page, target) ?? [];
  });
}

/** What a style sheet or a script would fetch by itself. */
function faultsOfAsset(file: string): string[] {
  const loads = /(?:url\(|@import|import\(|fetch\(|importScripts\()\s*["'`]?\s*(?:https?:)?\/\/[^"'`)]*/g;
  return (text.get(file)?.match(loads) ?? []).map((load) => `${file}: ${load}`);
}

const links = pages.reduce((sum, page) => sum + references(text.get(page) ?? "").length, 0);
const faults = [...pages.flatMap(faultsOfPage), ...[...text.keys()].flatMap(faultsOfAsset)];
console.log(`${pages.length} pages, ${links} links, ${faults.length} faults`);
for (const fault of faults.slice(0, 20)) console.error(fault);
process.exitCode = faults.length === 0 && links > 0 ? 0 : 1;
