// The box in which a reader types a question: on every page, small; what it searches is fetched once it is opened.
import { watchWidths } from "../../in-page/fit.js";
import { loadScript } from "../../in-page/load-script.js";
import type { Found } from "../found.js";

declare global {
  interface Window {
    /** Set by the script that is fetched when the box opens first. */
    gelwrightFind?: (question: string) => readonly Found[];
  }
}

const base = document.documentElement.dataset["base"] ?? "./";
const trigger = document.getElementById("find-open");
const dialog = document.getElementById("find") as HTMLDialogElement | null;
const field = document.getElementById("find-words") as HTMLInputElement | null;
const list = document.getElementById("find-hits");
const status = document.getElementById("find-status");

function start(
  trigger: HTMLElement,
  dialog: HTMLDialogElement,
  field: HTMLInputElement,
  list: HTMLElement,
  status: HTMLElement,
): void {
  let chosen = -1;

  const links = (): HTMLAnchorElement[] => [...list.querySelectorAll("a")];

  const choose = (index: number): void => {
    const all = [...list.children];
    chosen = all.length === 0 ? -1 : (index + all.length) % all.length;
    all.forEach((one, i) => {
      one.setAttribute("aria-selected", String(i === chosen));
    });
    const one = all[chosen];
    if (one) {
      field.setAttribute("aria-activedescendant", one.id);
      one.scrollIntoView({ block: "nearest" });
    } else field.removeAttribute("aria-activedescendant");
  };

  const show = async (): Promise<void> => {
    const question = field.value;
    try {
      status.textContent = window.gelwrightFind ? "" : "Loading the search …";
      await loadScript(`${base}assets/finder.js`);
    } catch {
      status.textContent = "The search could not be loaded.";
      return;
    }
    if (question !== field.value) return;
    const found = window.gelwrightFind?.(question) ?? [];
    list.dataset["for"] = question;
    list.replaceChildren(...found.map((one, i) => option(one, i)));
    field.setAttribute("aria-expanded", String(found.length > 0));
    status.textContent =
      question.trim() === ""
        ? "Ask in your own words, or type a name."
        : found.length === 0
          ? "Nothing found. Try other words, or the page of questions."
          : "";
    choose(found.length > 0 ? 0 : -1);
  };

  const open = (): void => {
    if (!dialog.open) dialog.showModal();
    field.select();
    void show();
  };

  let typed: ReturnType<typeof setTimeout> | undefined;
  trigger.addEventListener("click", open);
  field.addEventListener("input", () => {
    clearTimeout(typed);
    typed = setTimeout(() => void show(), 60);
  });
  field.addEventListener("keydown", async (event) => {
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      choose(chosen + (event.key === "ArrowDown" ? 1 : -1));
    } else if (event.key === "Enter") {
      event.preventDefault();
      clearTimeout(typed);
      // Whoever types faster than the list follows means what was typed.
      const before = chosen;
      if (list.dataset["for"] !== field.value) await show();
      links()[Math.max(0, list.dataset["for"] === field.value ? before : 0)]?.click();
    }
  });
  dialog.addEventListener("click", (event) => {
    if (event.target === dialog || (event.target as Element).closest("a")) dialog.close();
  });
  document.addEventListener("keydown", (event) => {
    const inField = (event.target as Element | null)?.closest("input, textarea, select, [contenteditable]");
    const asked =
      event.key === "/"
        ? !inField && !event.ctrlKey && !event.metaKey && !event.altKey
        : event.key === "k" && (event.ctrlKey || event.metaKey);
    if (!asked) return;
    event.preventDefault();
    open();
  });
}

/** One line of what was found: title, where it stands, and the sentence that holds the words. */
function option(found: Found, index: number): HTMLElement {
  const item = document.createElement("li");
  item.id = `find-hit-${index}`;
  item.role = "option";
  const link = document.createElement("a");
  link.href = base + found.url;
  link.tabIndex = -1;
  const title = document.createElement("strong");
  title.append(...marked(found.title));
  const place = document.createElement("small");
  place.textContent = found.in;
  const excerpt = document.createElement("span");
  excerpt.append(...marked(found.excerpt));
  link.append(title, place, excerpt);
  item.append(link);
  return item;
}

function marked(parts: Found["title"]): Node[] {
  return parts.map(({ text, hit }) => {
    if (!hit) return document.createTextNode(text);
    const mark = document.createElement("mark");
    mark.textContent = text;
    return mark;
  });
}

if (trigger && dialog && field && list && status) start(trigger, dialog, field, list, status);
// This script is on every page, the front page too.
watchWidths(document, ".wide, pre, .tsd-signature");
