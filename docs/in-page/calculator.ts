// Runs on the page of a calculator: reads the fields, calls the function, shows what comes out of it.
import { CalculationError } from "gelwright/error";
import { Answer } from "./calculator-answer.js";
import { refit } from "./calculator-choices.js";
import { codeOf } from "./calculator-code.js";
import type { Calculator, Call } from "./calculator-data.js";
import { drawFields } from "./calculator-fields.js";
import { entriesOfHash, hashOfEntries } from "./calculator-link.js";
import { panelOf } from "./calculator-panels.js";
import { lengthened, rowsOf, shortened } from "./calculator-rows.js";
import { shownOf } from "./calculator-shown.js";
import { argumentsOf, type Entry, startOf, type Unread } from "./calculator-values.js";
import { capital } from "./capital.js";
import { element } from "./element.js";
import { watchWidths } from "./fit.js";
import { copyWith } from "./hand-over.js";
import { inWords } from "./in-words.js";
import { loadScript } from "./load-script.js";
import { made } from "./made.js";
import { followScheme } from "./scheme.js";

/** Starts the calculator of this page. */
export function start(calls: Readonly<Record<string, Call>>): void {
  const first = JSON.parse(element("calculator", HTMLElement).textContent ?? "") as Calculator;
  const call = calls[`${first.room}.${first.name}`];
  if (!call) throw new Error(`this page has no ${first.name}`);
  followScheme();
  new Page(first, call);
}

class Page {
  /** As it came with the page; `#calculator` may have more rows. */
  readonly #first: Calculator;
  readonly #call: Call;
  readonly #answer = element("answer", HTMLElement);
  readonly #more = element("more", HTMLElement);
  readonly #plot = element("plot", HTMLElement);
  readonly #code = element("code", HTMLElement);
  #calculator: Calculator;
  #entries: Map<string, Entry>;
  /** The units that a reader chose for results. */
  readonly #units = new Map<string, string>();
  /** Counts the runs, so that a plot that comes late is dropped. */
  #turn = 0;

  constructor(first: Calculator, call: Call) {
    this.#first = first;
    this.#calculator = first;
    this.#call = call;
    this.#entries = startOf(first);
    this.#openLink();
    this.#draw();
    const on = (id: string, act: (button: HTMLButtonElement) => void) => {
      const button = element(id, HTMLButtonElement);
      button.addEventListener("click", () => act(button));
    };
    on("copy-code", (button) => void copyWith(button, this.#code.textContent ?? ""));
    on("copy-link", (button) => void copyWith(button, new URL(hashOfEntries(this.#entries), location.href).href));
    on("restore", () => {
      this.#calculator = this.#first;
      this.#entries = startOf(this.#first);
      this.#draw();
    });
    element("form", HTMLFormElement).addEventListener("submit", (event) => event.preventDefault());
    addEventListener("hashchange", () => {
      this.#openLink();
      this.#draw();
    });
  }

  /** What the address holds, rows of lists among it. */
  #openLink(): void {
    const keys = [...new URLSearchParams(location.hash.slice(1)).keys()];
    if (keys.length === 0) return;
    for (const list of this.#first.lists) {
      const rows = keys.filter((key) => key.startsWith(`${list}[`)).map((key) => Number(/\d+/.exec(key)?.[0]) + 1);
      const count = Math.min(Math.max(0, ...rows), 50);
      if (count === 0) continue;
      while (rowsOf(this.#calculator, list) < count) this.#lengthen(list);
      while (rowsOf(this.#calculator, list) > count) this.#shorten(list);
    }
    for (const [path, entry] of entriesOfHash(location.hash, this.#calculator)) this.#entries.set(path, entry);
    refit(this.#calculator, this.#entries);
  }

  #lengthen(list: string): void {
    this.#calculator = lengthened(this.#calculator, list, this.#entries);
  }

  #shorten(list: string): void {
    this.#calculator = shortened(this.#calculator, list, this.#entries);
  }

  /** Draws the form anew: after a row came or went, and after a unit left another field without one that fits. */
  #draw(): void {
    drawFields(element("fields", HTMLElement), this.#calculator, this.#entries, {
      changed: (path, entry) => {
        this.#entries.set(path, entry);
        if (!refit(this.#calculator, this.#entries)) return this.#run();
        this.#draw();
        document.querySelector<HTMLElement>(`#fields [data-path="${CSS.escape(path)}"]`)?.focus();
      },
      lengthen: (list) => {
        this.#lengthen(list);
        this.#draw();
      },
      shorten: (list) => {
        this.#shorten(list);
        this.#draw();
      },
      rows: (list) => rowsOf(this.#calculator, list),
    });
    this.#run();
  }

  #run(): void {
    this.#turn += 1;
    const { args, unread } = argumentsOf(this.#calculator, this.#entries);
    const faults = new Map<string, string>();
    const tell = (fault: Unread) => faults.set(fault.path, `${capital(inWords(fault))}.`);
    unread.forEach(tell);
    let result: unknown;
    if (faults.size === 0) {
      try {
        result = this.#call(...args);
      } catch (error) {
        if (!(error instanceof CalculationError)) throw error;
        error.faults.forEach(tell);
      }
    }
    this.#showFaults(faults);
    // A call would hold the starting figure in place of a text that is no number.
    this.#code.textContent = unread.length > 0 ? "" : codeOf(this.#calculator, args, result);
    if (faults.size === 0)
      this.#show(new Answer(this.#calculator, this.#call, this.#entries, args, result, this.#units));
  }

  #show(answer: Answer): void {
    const { answer: words, more } = shownOf(answer, ({ path }, unit) => {
      this.#units.set(path, unit);
      this.#run();
      this.#answer.querySelector("select")?.focus();
    });
    this.#answer.replaceChildren(...words);
    this.#more.replaceChildren(...more);
    watchWidths(this.#more);
    void this.#draft(answer);
  }

  async #draft(answer: Answer): Promise<void> {
    const mine = this.#turn;
    const panel = panelOf(answer);
    if (!panel) {
      this.#plot.replaceChildren();
      return;
    }
    await loadScript("../plots.js");
    if (mine === this.#turn) this.#plot.replaceChildren(globalThis.gelwrightPlots.drawPanel(panel));
  }

  /** Each fault at its field, and all of them where the answer would stand. */
  #showFaults(faults: ReadonlyMap<string, string>): void {
    for (const input of document.querySelectorAll<HTMLElement>("#fields [data-path]")) {
      const fault = faults.get(input.dataset["path"] ?? "");
      const text = document.getElementById(`${input.id}-fault`);
      if (text) text.textContent = fault ?? "";
      input.setAttribute("aria-invalid", String(fault !== undefined));
    }
    if (faults.size === 0) return;
    this.#answer.replaceChildren(
      made("p", "fault", "No answer for these figures."),
      ...[...faults].map(([path, words]) => {
        const label = this.#calculator.fields.find((one) => one.path === path)?.label ?? path;
        return made("p", "fault", `${label}: ${words}`);
      }),
    );
    this.#more.replaceChildren();
    this.#plot.replaceChildren();
  }
}
