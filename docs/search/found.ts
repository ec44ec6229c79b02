import type { Hit } from "./finder.js";
import { isSilent, stemOf, wordsOf } from "./words.js";

/** A piece of text, and whether it is a word that was asked for. */
export interface Piece {
  readonly text: string;
  readonly hit: boolean;
}

/** A hit as it is shown. */
export interface Found {
  readonly url: string;
  readonly title: readonly Piece[];
  readonly in: string;
  readonly excerpt: readonly Piece[];
}

/** A text in pieces, its words that share a stem with the question by themselves. */
function pieces(text: string, stems: ReadonlySet<string>): Piece[] {
  const isHit = (word: string) => wordsOf(word).some((one) => !isSilent(one) && stems.has(stemOf(one)));
  return text
    .split(/([\p{L}\p{N}'’]+)/u)
    .flatMap((part, i) => (part === "" ? [] : [{ text: part, hit: i % 2 === 1 && isHit(part) }]));
}

const length = 150;

/** The sentence or two around the place where most of the asked words stand close together. */
function excerptOf(text: string, stems: ReadonlySet<string>): readonly Piece[] {
  const all = pieces(text, stems);
  let at = 0;
  const hits = all.flatMap((piece) => {
    const place = { at, hit: piece.hit };
    at += piece.text.length;
    return place.hit ? [place.at] : [];
  });
  const near = (from: number) => hits.filter((hit) => hit >= from && hit < from + length).length;
  const best = hits.reduce((max, hit) => (near(hit) > near(max) ? hit : max), hits[0] ?? 0);
  // What stands in the first lines is shown with them.
  const from = best < length / 2 ? 0 : text.lastIndexOf(" ", best - 40) + 1;
  const to = text.length - from <= length ? text.length : text.lastIndexOf(" ", from + length);
  const shown = `${from > 0 ? "… " : ""}${text.slice(from, to)}${to < text.length ? " …" : ""}`;
  return pieces(shown, stems);
}

/** Hits as they are shown: a question that was shown already gives way to the name. */
export function shown(hits: readonly Hit[]): readonly Found[] {
  const seen = new Set<string>();
  return hits.map((hit) => {
    const { question, ...rest } = hit;
    if (question === undefined || seen.has(question)) return foundOf(rest);
    seen.add(question);
    return foundOf(hit);
  });
}

/** A hit in the words that are shown: the question that it answers where it answers one, else its name. */
export function foundOf({ section, question, stems }: Hit): Found {
  const asked = new Set(stems);
  const { url, kind, title, in: place, text, shown = text.length } = section;
  const named = question === undefined ? title : question;
  return {
    url,
    title: pieces(named, asked),
    in: question === undefined || question === title ? place || kind : `${title}${place ? `, ${place}` : ""}`,
    excerpt: excerptOf(text.slice(0, shown), asked),
  };
}
