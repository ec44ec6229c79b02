import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the site's sources, with a slash at its end. */
export const docs: string = fileURLToPath(new URL("../", import.meta.url));

/** A folder of `docs` whose every page stands in the site, under one heading, those named first; with pages of other folders. */
interface Shelf {
  readonly category: string;
  readonly folder: string;
  readonly first: readonly string[];
  readonly also?: readonly string[];
}

const shelves: readonly Shelf[] = [
  {
    category: "Guides",
    folder: "guides/",
    first: ["start", "questions", "documents", "names", "recipes", "cautions", "versions"],
    also: ["pages/glossary.md"],
  },
  {
    category: "What it rests on",
    folder: "",
    first: [
      "formula",
      "natural-origin",
      "gel",
      "cold-route",
      "oils",
      "batch",
      "heat",
      "particles",
      "rheology",
      "mixing",
      "labelling",
      "exposure",
      "stability",
      "packing",
      "plan",
      "laws",
      "units",
      "how-sure",
    ],
  },
  {
    category: "Proof",
    folder: "pages/",
    first: ["verification", "bibliography", "plan-questions", "weight", "runtimes", "constants", "mutants"],
  },
];

/** The heading under which the modules stand. */
export const defaultCategory = "Rooms";
export const categoryOrder: readonly string[] = [...shelves.map(({ category }) => category), defaultCategory];

const elsewhere = new Set(shelves.flatMap(({ also = [] }) => also));

/** Pages that the order does not know come last, by name. */
function inOrder({ folder, first, also = [] }: Shelf): string[] {
  const place = (name: string) => (first.includes(name) ? first.indexOf(name) : first.length);
  const own = readdirSync(docs + folder)
    .filter((file) => file.endsWith(".md"))
    .map((file) => file.slice(0, -".md".length))
    .sort((a, b) => place(a) - place(b) || a.localeCompare(b, "en"))
    .map((name) => `${folder}${name}.md`)
    .filter((file) => !elsewhere.has(file));
  return [...own, ...also.filter((file) => existsSync(docs + file))];
}

/** Every page, from the folder `docs`, in the order of the site. */
export const documents: readonly string[] = shelves.filter(({ folder }) => existsSync(docs + folder)).flatMap(inOrder);

/** What a page is called, from its first heading, and under what it stands. */
export function describe(file: string): { readonly name: string; readonly title: string; readonly category: string } {
  const [, title] = /^# (.+)$/m.exec(readFileSync(docs + file, "utf8")) ?? [];
  if (title === undefined) throw new Error(`docs/${file} has no heading`);
  const folder = file.slice(0, file.lastIndexOf("/") + 1);
  const shelf = shelves.find(({ also }) => also?.includes(file)) ?? shelves.find((one) => one.folder === folder);
  const category = shelf?.category ?? defaultCategory;
  return { name: basename(file, ".md"), title, category };
}
