/** What a hit leads to: questions and headings come before functions' texts, types and properties last. */
export type Kind = "function" | "section" | "page" | "room" | "value" | "list" | "type" | "property";

/** A piece of the site that can be found by itself. */
export interface Section {
  /** Address from the front page, with the place on the page. */
  readonly url: string;
  readonly kind: Kind;
  readonly title: string;
  /** Where it stands: the title of its page, or its room. */
  readonly in: string;
  /** Questions of the trade that it answers, as the page of questions asks them. */
  readonly questions?: readonly string[];
  /** Wordings in which users ask for it; they are looked through and not shown. */
  readonly wordings?: readonly string[];
  /** What it says, as plain text; the first sentence first. */
  readonly text: string;
  /** How many letters of the text are shown, where the rest is a table. */
  readonly shown?: number;
}
