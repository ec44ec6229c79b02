import { list } from "./list.js";

const names = new Set(list.map(({ name }) => name));

/** Where the calculator of a function stands, from the root of the site; nothing if it has none. */
export function calculatorOf(name: string): string | undefined {
  return names.has(name) ? `calculators/${name}.html` : undefined;
}

/** The page of questions leads to a calculator behind each function that has one. */
export function linkCalculators(html: string, url: string): string {
  if (url !== "documents/questions.html") return html;
  return html.replaceAll(
    /<a href="\.\.\/functions\/([\w-]+\.\w+)\.html"><code>\w+<\/code><\/a>/g,
    (link, name: string) => {
      const to = calculatorOf(name);
      return to === undefined ? link : `${link} (<a href="../${to}">calculator</a>)`;
    },
  );
}
