import { list } from "./list.js";

const names = new Set(list.map(({ name }) => name));

/** Where the calculator of a function, `room.name`, stands in the folder of the calculators. */
export const fileOf = (name: string): string => `${name}.html`;

/** Where it stands from the root of the site; nothing if the function has no calculator. */
export function calculatorAddress(name: string): string | undefined {
  return names.has(name) ? `calculators/${fileOf(name)}` : undefined;
}

/** The page of questions leads to a calculator behind each function that has one. */
export function linkCalculators(html: string, url: string): string {
  if (url !== "documents/questions.html") return html;
  return html.replaceAll(
    /<a href="\.\.\/functions\/([\w-]+\.\w+)\.html"><code>\w+<\/code><\/a>/g,
    (link, name: string) => {
      const to = calculatorAddress(name);
      return to === undefined ? link : `${link} (<a href="../${to}">calculator</a>)`;
    },
  );
}
