import MiniSearch from "minisearch";
import type { Kind, Section } from "./section.js";
import { synonyms } from "./synonyms.js";
import { isFaint, isSilent, isUnit, stemOf, stemsOf, wordsOf } from "./words.js";

/** A section that answers, and which of its words did. */
export interface Hit {
  readonly section: Section;
  readonly score: number;
  /** Stems of the question that the section holds, for marking them. */
  readonly stems: readonly string[];
  /** The question of the trade that comes nearest to what was typed. */
  readonly question?: string;
}

/** How much a kind of section counts beside the others. */
const weights: Readonly<Record<Kind, number>> = {
  function: 1.6,
  section: 1,
  page: 1,
  room: 0.75,
  value: 0.7,
  list: 0.5,
  type: 0.45,
  property: 0.35,
};

const boosts = { title: 3, asked: 2.6, lead: 1.2, in: 0.8, text: 0.7 };

/** How much a section's own text counts beside the question or wording that comes nearest to what was typed. */
const ownText = 0.7;

/** How much a function counts that answers none of the questions. */
const unasked = 0.7;

/** A word or phrase of a question, and everything that it may mean: stems with their weight. */
type Concept = ReadonlyMap<string, number>;

const meant = new Map<string, Map<string, number>>();
for (const [typed, words] of synonyms)
  for (const phrase of typed) {
    const key = wordsOf(phrase).map(stemOf).join(" ");
    const known = meant.get(key) ?? new Map<string, number>();
    for (const word of words) known.set(stemOf(word), 0.75);
    meant.set(key, known);
  }
const longestPhrase = Math.max(...[...meant.keys()].map((key) => key.split(" ").length));

/** Distance of two words in letters changed, left out, added or swapped; given up beyond `max`. */
function distance(a: string, b: string, max: number): number {
  if (Math.abs(a.length - b.length) > max) return max + 1;
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      next.push(cost);
    }
    if (Math.min(...next) > max) return max + 1;
    before = row;
    row = next;
  }
  return row[b.length] ?? max + 1;
}

/** What is looked through: a section, one of the questions that it answers, or a wording of users. */
interface Entry {
  readonly section: number;
  readonly question?: string;
  readonly wording?: string;
}

/** How well a section answers: by its own text, by the best of its questions, and of its wordings. */
interface Worth {
  own: number;
  asked: number;
  worded: number;
  question?: string;
}

/** The search over all sections of the site. */
export class Finder {
  readonly #sections: readonly Section[];
  readonly #entries: readonly Entry[];
  readonly #index: MiniSearch;
  readonly #known = new Set<string>();
  /** Of a name in one piece its words. */
  readonly #joined = new Map<string, readonly string[]>();
  readonly #found = new Map<string, ReadonlyMap<number, number>>();

  constructor(sections: readonly Section[]) {
    this.#sections = sections;
    this.#entries = sections.flatMap(({ questions = [], wordings = [] }, section) => [
      { section },
      ...questions.map((question) => ({ section, question })),
      ...wordings.map((wording) => ({ section, wording })),
    ]);
    this.#index = new MiniSearch({
      fields: Object.keys(boosts),
      tokenize: stemsOf,
      processTerm: (term) => {
        this.#known.add(term);
        return term;
      },
    });
    for (const { title } of sections) {
      const parts = stemsOf(title);
      if (parts.length > 1) this.#joined.set(stemOf(title.toLowerCase()), parts);
    }
    this.#index.addAll(this.#entries.map((entry, id) => ({ id, ...fieldsOf(entry, sections) })));
  }

  /** The sections that answer a question, the best first, two of a page at most. */
  find(question: string, limit = 20): readonly Hit[] {
    const concepts = apart(this.#conceptsOf(question));
    const typed = question.trim().toLowerCase();
    const found = concepts.map((concept) => this.#scoresOf(concepts.length > 1 ? subdued(concept) : concept));
    const worths = found.map((scores) => Math.max(0, ...scores.values()));
    const total = worths.reduce((sum, worth) => sum + worth, 0);
    const entries = new Map<number, { score: number; held: number }>();
    found.forEach((scores, i) => {
      for (const [id, score] of scores) {
        const { score: before, held } = entries.get(id) ?? { score: 0, held: 0 };
        entries.set(id, { score: before + score, held: held + (worths[i] ?? 0) });
      }
    });
    const best = new Map<number, Worth>();
    for (const [id, { score, held }] of entries) {
      const entry = this.#entries[id];
      if (!entry) continue;
      const one = best.get(entry.section) ?? { own: 0, asked: 0, worded: 0 };
      const worth = score * (0.3 + 0.7 * (held / total));
      if (entry.wording !== undefined) one.worded = Math.max(one.worded, worth);
      else if (entry.question === undefined) one.own = worth;
      else if (worth > one.asked) Object.assign(one, { asked: worth, question: entry.question });
      best.set(entry.section, one);
    }
    const stems = [...new Set(concepts.flatMap((concept) => [...concept.keys()]))];
    const ranked = [...best]
      .flatMap(([id, { own, asked, worded, question }]): Hit[] => {
        const section = this.#sections[id];
        if (!section) return [];
        const common = section.kind === "function" && section.questions === undefined ? unasked : 1;
        const named = isNamed(section, typed) ? 10 : 1;
        const score = (ownText * own + Math.max(asked, worded)) * weights[section.kind] * common * named;
        return [{ section, score, stems, ...(question !== undefined && { question }) }];
      })
      .sort((a, b) => b.score - a.score);
    return fewOfAPage(varied(ranked), limit);
  }

  /** What a question asks for: its phrases and words, each with what else it may mean. */
  #conceptsOf(question: string): Concept[] {
    const all = wordsOf(question);
    const words = withoutMeasures(all);
    const conversion = [new Map([[stemOf("convert"), 1]]), new Map([[stemOf("units"), 1]])];
    if (isConversion(all)) return conversion;
    // Two units in a question about something else are still likely to be asked to be converted.
    const concepts: Concept[] = words.filter(isUnit).length > 1 ? conversion : [];
    // "How thick at 30 °C" asks for a temperature.
    if (hasTemperature(all)) concepts.push(new Map([[stemOf("temperature"), 0.5]]));
    for (let i = 0; i < words.length; ) {
      const length = phraseAt(words, i);
      const stems = words.slice(i, i + length).map(stemOf);
      const own = words
        .slice(i, i + length)
        .filter((word) => !isSilent(word))
        .map(stemOf);
      if (length > 1) concepts.push(phraseConcept(own, meant.get(stems.join(" "))));
      else if (own[0] !== undefined) concepts.push(this.#conceptOf(own[0], words[i] ?? "", i === words.length - 1));
      i += length;
    }
    return concepts.length > 0 ? concepts : words.map((word) => new Map([[stemOf(word), 1]]));
  }

  /** A word with what it may mean; one that nobody wrote is taken for those nearest to it. */
  #conceptOf(stem: string, word: string, last: boolean): Concept {
    const known = this.#known.has(stem);
    const spelled: (readonly [string, number])[] = known || meant.has(stem) ? [[stem, 1]] : this.#nearest(stem);
    const concept = new Map<string, number>();
    for (const [one, weight] of spelled) {
      concept.set(one, weight);
      for (const part of this.#joined.get(one) ?? []) concept.set(part, 0.8 * weight);
      for (const [other, share] of meant.get(one) ?? [])
        concept.set(other, Math.max(concept.get(other) ?? 0, share * weight));
    }
    // The last word may still be being typed, and one that no page has may be an abbreviation: "visc", "conc". A word
    // with an ending is whole.
    if ((last || (!known && !meant.has(stem))) && stem.length > 2 && word.length < stem.length + 2)
      for (const one of this.#known)
        if (one !== stem && one.startsWith(stem)) concept.set(one, concept.get(one) ?? (known ? 0.4 : 0.8));
    return concept;
  }

  #nearest(stem: string): (readonly [string, number])[] {
    // A short word is near to too many others: it is taken to lack a letter, or not to be one of these pages.
    const max = stem.length < 4 ? 0 : stem.length < 8 ? 1 : 2;
    const isLikely = (one: string) => stem.length > 4 || one.length > 4;
    let best = max;
    let found: string[] = [];
    for (const one of [...this.#known, ...meant.keys()]) {
      // A slip seldom falls on the first letter.
      if (one[0] !== stem[0] || !isLikely(one)) continue;
      const apart = distance(stem, one, best);
      if (apart > best || apart === 0) continue;
      if (apart < best) found = [];
      best = apart;
      found.push(one);
    }
    return [...new Set(found)].map((one) => [one, 0.8] as const);
  }

  /** For each section that holds a concept, by the best of the words that may be meant. */
  #scoresOf(concept: Concept): ReadonlyMap<number, number> {
    const scores = new Map<number, number>();
    for (const [stem, weight] of concept)
      for (const [id, score] of this.#scoresOfStem(stem)) scores.set(id, Math.max(scores.get(id) ?? 0, weight * score));
    return scores;
  }

  #scoresOfStem(stem: string): ReadonlyMap<number, number> {
    const known = this.#found.get(stem);
    if (known) return known;
    const results = this.#index.search(stem, {
      boost: boosts,
      tokenize: (text) => [text],
      processTerm: (term) => term,
    });
    const scores = new Map(results.map(({ id, score }) => [id as number, score]));
    this.#found.set(stem, scores);
    return scores;
  }
}

/** "The gel sinks" asks about sinking. */
function subdued(concept: Concept): Concept {
  const [first] = concept.keys();
  if (first === undefined || !isFaint(first)) return concept;
  return new Map([...concept].map(([stem, weight]) => [stem, 0.5 * weight]));
}

/** A phrase means what it is listed for; a word of it by itself says less. */
function phraseConcept(own: readonly string[], words: ReadonlyMap<string, number> = new Map()): Concept {
  const concept = new Map(own.map((stem) => [stem, 0.4]));
  for (const stem of words.keys()) concept.set(stem, 0.9);
  return concept;
}

/** A word that the question itself names is not counted a second time for another that may mean it. */
function apart(concepts: readonly Concept[]): readonly Concept[] {
  const own = concepts.map((concept) => [...concept].filter(([, weight]) => weight === 1).map(([stem]) => stem));
  return concepts.map((concept, i) => {
    const others = new Set(own.filter((_, j) => j !== i).flat());
    return new Map([...concept].filter(([stem, weight]) => weight === 1 || !others.has(stem)));
  });
}

/** Units alone, with a number at most, are asked to be converted: "17 lb to oz". */
function isConversion(words: readonly string[]): boolean {
  const named = words.filter(
    (word) => !isSilent(word) && !/^\d+$/.test(word) && !/^(conver\w+|equals?|fluid)$/.test(word),
  );
  return named.length > 0 && named.every(isUnit);
}

function hasTemperature(words: readonly string[]): boolean {
  return words.some(
    (word, i) => /^(celsius|fahrenheit|degrees?|kelvin)$/.test(word) && /^\d+$/.test(words[i - 1] ?? ""),
  );
}

/** "20 kg" in a question is a size, and no question about kilograms. */
function withoutMeasures(words: readonly string[]): string[] {
  const isSize = (word: string) =>
    isUnit(word) || /^([glcfm]|rpm|minutes?|hours?|days?|weeks?|months?|years?|degrees?|percent|pieces)$/.test(word);
  return words.filter((word, i) => !(/^\d+$/.test(words[i - 1] ?? "") && isSize(word)));
}

/** How many words from here on make a phrase that is known. */
function phraseAt(words: readonly string[], from: number): number {
  for (let length = Math.min(longestPhrase, words.length - from); length > 1; length--)
    if (
      meant.has(
        words
          .slice(from, from + length)
          .map(stemOf)
          .join(" "),
      )
    )
      return length;
  return 1;
}

/** Whoever types a whole name means it, but "tip speed" and "hlb" no property. */
function isNamed({ kind, title }: Section, typed: string): boolean {
  return title.toLowerCase() === typed && (kind !== "property" || /\p{Ll}\p{Lu}/u.test(title));
}

/** A question that better hits answer already counts for less, so that other answers are seen. */
function varied(ranked: readonly Hit[]): readonly Hit[] {
  const seen = new Map<string, number>();
  return ranked
    .map((hit): Hit => {
      const before = seen.get(hit.question ?? "") ?? 0;
      if (hit.question !== undefined) seen.set(hit.question, before + 1);
      return before === 0 || hit.question === undefined ? hit : { ...hit, score: hit.score * 0.85 ** before };
    })
    .sort((a, b) => b.score - a.score);
}

function fewOfAPage<T extends { readonly section: Section }>(hits: readonly T[], limit: number): T[] {
  const counts = new Map<string, number>();
  const chosen: T[] = [];
  for (const hit of hits) {
    const page = hit.section.url.split("#")[0] ?? "";
    const count = counts.get(page) ?? 0;
    if (count === 2) continue;
    counts.set(page, count + 1);
    chosen.push(hit);
    if (chosen.length === limit) break;
  }
  return chosen;
}

/** What the index is given of an entry. A heading is asked for as questions are. */
function fieldsOf(
  { section, question, wording }: Entry,
  sections: readonly Section[],
): Record<keyof typeof boosts, string> {
  const { kind, title, in: place, text, questions } = sections[section] as Section;
  const typed = question ?? wording;
  if (typed !== undefined) return { title: "", asked: typed, lead: "", in: "", text: "" };
  const isHeading = kind === "section" || kind === "page";
  const lead = /^.*?[.?!](?=\s|$)/.exec(text)?.[0] ?? text;
  // A function that no question names answers what its first sentence says.
  const asked = isHeading ? title : kind === "function" && questions === undefined ? lead : "";
  // A name is found whole as well as by its words.
  return { title: isHeading ? title : `${title} ${title.toLowerCase()}`, asked, lead, in: place, text };
}
