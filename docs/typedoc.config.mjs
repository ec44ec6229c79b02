import { OptionDefaults } from "typedoc";
import { rooms } from "../tests/support/rooms.js";
import { categoryOrder, defaultCategory, documents } from "./theme/documents.js";
import { extendMarkdown } from "./theme/markdown.js";
import { load } from "./theme/plugin.js";

/** @type {Partial<import("typedoc").TypeDocOptions>} */
export default {
  name: "gelwright",
  entryPoints: ["../src/error.ts", ...rooms.map((room) => `../src/${room}/index.ts`)],
  projectDocuments: documents,
  plugin: [load],
  router: "gelwright",
  markdownItLoader: extendMarkdown,
  // The usual dark one has tags too faint on its ground.
  darkHighlightTheme: "github-dark-default",
  customCss: "theme/site.css",
  customJs: "theme/site.js",
  headings: { readme: false, document: false },
  // Functions come first: they answer the questions.
  kindSortOrder: [
    "Document",
    "Project",
    "Module",
    "Namespace",
    "Function",
    "Class",
    "Interface",
    "TypeAlias",
    "Variable",
  ],
  groupOrder: ["Documents", "Modules", "Functions", "Classes", "Interfaces", "Type Aliases", "Variables", "*"],
  categorizeByGroup: false,
  categoryOrder,
  defaultCategory,
  navigation: { includeCategories: true },
  out: "site",
  tsconfig: "api/tsconfig.json",
  // The compiler has checked the same files for the declarations of the build.
  skipErrorChecking: true,
  includeVersion: true,
  excludeInternal: true,
  disableGit: true,
  disableSources: true,
  hideGenerator: true,
  blockTags: [...OptionDefaults.blockTags, "@source"],
  validation: { notExported: true, invalidLink: true, invalidPath: true, rewrittenLink: true, notDocumented: true },
  // What holds a number is asked for its words by tests/architecture/docstrings.test.ts: a name says enough of a name.
  // Functions are asked for theirs by that test too: the table of words holds hundreds in records, which their ids name.
  requiredToBeDocumented: ["Interface", "TypeAlias", "Variable", "Class", "Accessor", "Constructor"],
  // Types that only the compiler reads: they make a wrong unit fail to compile, or map a document to what was read.
  // The last stand in a prepared job, which nobody takes apart, and in the words, which are handed over whole.
  intentionallyNotExported: [
    "Spelling",
    "Tables",
    "Read",
    "Job",
    "Some",
    "labels",
    "Dated",
    "Estimated",
    "Aim",
    "Exposed",
    "Waited",
    "Between",
  ],
  treatWarningsAsErrors: true,
  treatValidationWarningsAsErrors: true,
};
