import { examples } from "./examples.js";

/** The jobs of the page: those that it offers, changed or not, and the reader's own. Kept by the browser where it may. */
export interface Jobs {
  readonly names: () => readonly string[];
  readonly text: (name: string) => string;
  readonly isExample: (name: string) => boolean;
  /** The one that was in use when the page was left. */
  readonly current: () => string;
  readonly use: (name: string) => void;
  readonly change: (name: string, text: string) => void;
  /** Puts an example back as it was, or removes a job of the reader's own. */
  readonly forget: (name: string) => void;
  /** Adds a job under this name or the next that is free, unless its very text is there; returns its name. */
  readonly add: (name: string, text: string) => string;
}

const key = "gelwright-try-it";

interface Kept {
  current?: string;
  /** What differs from the examples. */
  texts: Record<string, string>;
}

function stored(): Kept | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? "") as Kept;
    const texts = Object.entries(kept.texts).filter(([, text]) => typeof text === "string");
    return { ...kept, texts: Object.fromEntries(texts) };
  } catch {
    return undefined;
  }
}

export function jobs(): Jobs {
  let kept = stored() ?? { texts: {} };
  /** On what is stored by then: another tab may have changed another job. */
  const update = (change: (kept: Kept) => void) => {
    kept = stored() ?? kept;
    change(kept);
    try {
      localStorage.setItem(key, JSON.stringify(kept));
    } catch {
      // A browser that keeps nothing, or has no room left: the page works on without.
    }
  };
  const isExample = (name: string) => Object.hasOwn(examples, name);
  const names = () => [...Object.keys(examples), ...Object.keys(kept.texts).filter((name) => !isExample(name))];
  const text = (name: string) => kept.texts[name] ?? examples[name] ?? "";
  return {
    names,
    text,
    isExample,
    current: () => (kept.current !== undefined && names().includes(kept.current) ? kept.current : (names()[0] ?? "")),
    use: (name) =>
      update((now) => {
        now.current = name;
      }),
    change: (name, changed) =>
      update(({ texts }) => {
        if (changed === examples[name]) delete texts[name];
        else texts[name] = changed;
      }),
    forget: (name) =>
      update(({ texts }) => {
        delete texts[name];
      }),
    add: (name, added) => {
      const same = names().find((one) => text(one) === added);
      if (same !== undefined) return same;
      let free = name;
      for (let i = 2; names().includes(free); i++) free = `${name} ${i}`;
      update(({ texts }) => {
        texts[free] = added;
      });
      return free;
    },
  };
}
