import { type Documented, docstrings } from "../docstrings.js";
import { functionProofs, type Proof } from "../proof/functions.js";
import { questionRows } from "./questions.js";
import { type Theory, theory } from "./theory.js";

/** What a page of a function or a room is made of, beside its docstring. */
export interface Facts {
  readonly functions: ReadonlyMap<string, Documented>;
  readonly questions: (name: string) => readonly string[];
  readonly theory: (room: string, name: string) => readonly Theory[];
  /** Public functions, as `room.name`, that a reader of this one may want. */
  readonly related: (room: string, name: string) => readonly string[];
  readonly proof: (room: string, name: string) => Proof;
}

/** Pages of theory by room, where the page has another name than the room. */
const pages: Readonly<Record<string, string>> = { transient: "laws", sheet: "plan", error: "plan" };

let known: Facts | undefined;

/** Read once for all pages: docstrings, questions, theory and checks. */
export function facts(): Facts {
  known ??= gather();
  return known;
}

function gather(): Facts {
  const functions = docstrings();
  const rows = questionRows();
  const sections = theory();
  const proofs = functionProofs();
  const rooms = new Map<string, string[]>();
  for (const { room, name } of functions.values()) rooms.set(name, [...(rooms.get(name) ?? []), room]);
  const place = (name: string, room: string) => {
    const all = rooms.get(name) ?? [];
    const at = all.includes(room) ? room : all[0];
    return at === undefined ? undefined : `${at}.${name}`;
  };
  const theoryOf = (room: string, name: string) => {
    const named = sections.filter(({ names }) => names.has(name));
    const own = `documents/${pages[room] ?? room}.html`;
    const atHome = named.filter(({ url }) => url.startsWith(own));
    if (named.length > 0) return [...atHome, ...named.filter((one) => !atHome.includes(one))].slice(0, 3);
    return sections.filter(({ url }) => url === own);
  };
  return {
    functions,
    questions: (name) => rows.filter(({ names }) => names.includes(name)).map(({ question }) => question),
    theory: theoryOf,
    proof: (room, name) => proofs.get(`${room}.${name}`) ?? { checks: [], tests: [] },
    related: (room, name) => {
      const own = functions.get(`${room}.${name}`);
      const said = (one: Documented | undefined) => `${one?.summary} ${one?.returns} ${one?.sources.join(" ")}`;
      const sameQuestion = rows.filter(({ names }) => names.includes(name)).flatMap(({ names }) => names);
      const mentioned = [...said(own).matchAll(/\b([a-z]+[A-Z]\w*)\b/g)].map(([, one = ""]) => one);
      const mentioning = [...functions.values()].filter((one) => one.room === room && said(one).includes(name));
      const sameSection = theoryOf(room, name)
        .slice(0, 1)
        .flatMap(({ names }) => [...names]);
      const all = [...sameQuestion, ...mentioned, ...mentioning.map((one) => one.name), ...sameSection];
      const others = [...functions.values()].filter((one) => one.room === room).map((one) => one.name);
      const places = [...all, ...others].flatMap((one) => (one === name ? [] : (place(one, room) ?? [])));
      return [...new Set(places)].slice(0, 5);
    },
  };
}
