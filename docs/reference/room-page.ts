import { readFileSync } from "node:fs";
import { docs } from "../theme/documents.js";
import type { Facts } from "./facts.js";
import type { Inline } from "./function-page.js";
import { questionRows } from "./questions.js";

/** What a room is about, if it has no page of theory or that page begins with what it covers itself. */
const paragraphs: Readonly<Record<string, string>> = {
  formula:
    "A formula as people write it, read into shares that sum to 1: percent, parts or masses, one line *q.s.*, strengths corrected, premixes broken down; and the properties of a mix.",
  "natural-origin":
    "The natural, natural origin, organic and organic origin content of a product by ISO 16128, between bounds if an index is not known, and what a claim leaves room for. Whether a claim may be made is law, and differs by place.",
  gel: "Gel former and oil: the ratio, which dose gives which strength, when the gel sets, how strong and how clear a gel of packed droplets is, and what water does to it.",
  rheology:
    "How a gel flows, from rheometer readings: whether it runs, spreads or sprays, and how pigment thickens it.",
  oils: "What follows from a fatty-acid profile, what a standard says about an oil, blends, polarity, oxidation, and replacing one oil with another.",
  heat: "Heating, melting and cooling, from the cold charge to the pack that has set: times, powers, mixing temperatures, walls and jackets, evaporation, and what the heat does to the oils.",
  units: 'Quantities as text with their unit, `"60 kg"`, and conversion between units, exact as far as numbers allow.',
  error:
    "The one error of the library: a code, every fault with its place, and a message for a person that says what to write instead.",
  transient:
    "One stretch of cooling or heating: how long it takes, and what accumulates on the way. Other rooms give it their laws.",
  sheet:
    "A plan in words: the batch sheet as Markdown, tables for a spreadsheet, JSON for another program, and the sheets for label, stability, exposure and filling.",
};

/** What a room is about: the first paragraph of its page of theory. */
function paragraphOf(room: string): string {
  const own = paragraphs[room];
  if (own !== undefined) return own;
  const [, first = ""] = readFileSync(`${docs}${room}.md`, "utf8").split(/\n\n/);
  return first
    .replaceAll(/\]\((?!\.\.|https?:|#)(?:guides\/)?([\w-]+)\.md/g, "](../documents/$1.html")
    .replaceAll("\n", " ");
}

/** The functions of a room under the questions that they answer; those that answer none come last. */
function roomFront(room: string, facts: Facts, inline: Inline): string {
  const own = [...facts.functions.values()].filter((one) => one.room === room);
  const shown = new Set<string>();
  const line = (name: string) => {
    shown.add(name);
    const summary = own.find((one) => one.name === name)?.summary ?? "";
    return `<li><a href="../functions/${room}.${name}.html"><code>${name}</code></a>: ${inline(summary.replaceAll(/\s+/g, " "))}</li>`;
  };
  const groups = questionRows().flatMap(({ question, names }) => {
    const here = names.filter((name) => own.some((one) => one.name === name) && !shown.has(name));
    return here.length === 0 ? [] : [`<dt>${inline(question)}</dt><dd><ul>${here.map(line).join("")}</ul></dd>`];
  });
  const left = own.map(({ name }) => name).filter((name) => !shown.has(name));
  if (left.length > 0)
    groups.push(
      `<dt>${groups.length > 0 ? "What these rest on" : "Functions"}</dt><dd><ul>${left.map(line).join("")}</ul></dd>`,
    );
  const ways = [
    `<a href="../documents/questions.html">All questions of the trade</a>`,
    `<a href="../documents/glossary.html">Words of the trade</a>`,
    ...(own.length > 0 ? [`<a href="../documents/verification-${room}.html">How these functions are proved</a>`] : []),
  ];
  return `<section class="tsd-panel room-front"><p>${inline(paragraphOf(room))}</p><p>${ways.join(" · ")}</p>${groups.length > 0 ? `<h2 id="questions">Questions and the functions that answer them</h2><dl class="by-question">${groups.join("")}</dl>` : ""}<h2 id="everything">Everything in this room</h2></section>`;
}

/** The page of a room: what it is about and its questions before the list that the generator makes. */
export function roomPage(html: string, room: string, facts: Facts, inline: Inline): string {
  const title = /<div class="tsd-page-title">.*?<\/h1>.*?<\/div>/s.exec(html)?.[0];
  if (title === undefined) throw new Error(`the page of ${room} is not as it was`);
  return html.replace(title, () => `${title}${roomFront(room, facts, inline)}`);
}
