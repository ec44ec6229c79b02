import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";
import { tex } from "@mdit/plugin-tex";
import katex from "katex";
import { OptionDefaults } from "typedoc";

const root = fileURLToPath(new URL("../", import.meta.url));
const rooms = readdirSync(`${root}src`).filter((name) => existsSync(`${root}src/${name}/index.ts`));
const guides = ["", "pages/"].flatMap((folder) =>
  readdirSync(`${root}docs/${folder}`)
    .filter((name) => name.endsWith(".md"))
    .map((name) => folder + name),
);

/** @type {Partial<import("typedoc").TypeDocOptions>} */
export default {
  name: "gelwright",
  entryPoints: ["../src/error.ts", ...rooms.map((room) => `../src/${room}/index.ts`)],
  projectDocuments: guides,
  out: "site",
  tsconfig: "api/tsconfig.json",
  includeVersion: true,
  excludeInternal: true,
  disableGit: true,
  disableSources: true,
  hideGenerator: true,
  blockTags: [...OptionDefaults.blockTags, "@source"],
  validation: { notExported: true, invalidLink: true, invalidPath: true, rewrittenLink: true, notDocumented: true },
  // What holds a number is asked for its words by tests/architecture/docstrings.test.ts: a name says enough of a name.
  requiredToBeDocumented: [
    "Function",
    "Interface",
    "TypeAlias",
    "Variable",
    "Class",
    "Method",
    "Accessor",
    "Constructor",
  ],
  // Types that only the compiler reads: they make a wrong unit fail to compile.
  intentionallyNotExported: ["Spelling", "Tables"],
  treatWarningsAsErrors: true,
  treatValidationWarningsAsErrors: true,
  // Under a figure stands its description, for those who cannot see it and for those who can.
  // Equations become MathML while the site is built: no fonts, no script, no other host, and a bad one fails the build.
  markdownItLoader(parser) {
    parser.use(tex, {
      render: (equation, displayMode) =>
        katex.renderToString(equation, { displayMode, output: "mathml", throwOnError: true, strict: "error" }),
    });
    const image = parser.renderer.rules.image;
    parser.renderer.rules.image = (tokens, index, ...rest) => {
      const figure = `${root}docs/pages/${basename(tokens[index].attrGet("src") ?? "")}`;
      const description = existsSync(figure) && /<desc\b[^>]*>(.*?)<\/desc>/s.exec(readFileSync(figure, "utf8"))?.[1];
      return image(tokens, index, ...rest) + (description ? `<br><small>${description}</small>` : "");
    };
  },
};
