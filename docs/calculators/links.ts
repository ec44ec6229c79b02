import { list } from "./list.js";

const names = new Set(list.map(({ name }) => name));

/** The page of questions leads to a calculator behind each function that has one. */
export function linkCalculators(html: string, url: string): string {
  if (url !== "documents/questions.html") return html;
  return html.replaceAll(
    /<a href="\.\.\/functions\/([\w-]+\.\w+)\.html"><code>\w+<\/code><\/a>/g,
    (link, one: string) => (names.has(one) ? `${link} (<a href="../calculators/${one}.html">calculator</a>)` : link),
  );
}
