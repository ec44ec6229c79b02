// Run after the calculators are built: the page of a function, and the front page, lead to the form that computes it.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const site = fileURLToPath(new URL("./site/", import.meta.url));
const folder = `${site}calculators/`;

/** Puts a piece into a page, once. */
function put(file: string, before: string, piece: string): void {
  const html = readFileSync(file, "utf8");
  if (html.includes(piece)) return;
  if (!html.includes(before)) throw new Error(`${file} has no place for a calculator`);
  writeFileSync(
    file,
    html.replace(before, () => piece + before),
  );
}

if (existsSync(folder)) {
  for (const page of readdirSync(folder).filter((name) => /^[\w-]+\.\w+\.html$/.test(name)))
    put(
      `${site}functions/${page}`,
      "<dt>Theory</dt>",
      `<dt>Calculator</dt><dd><a href="../calculators/${page}">Open in a calculator</a></dd>`,
    );
  if (existsSync(`${folder}index.html`))
    put(
      `${site}index.html`,
      '<li><a href="documents/questions.html">',
      '<li><a href="calculators/index.html">Calculators for the commonest questions</a></li>',
    );
}
