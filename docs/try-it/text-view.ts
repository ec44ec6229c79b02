import { loadScript } from "../in-page/load-script.js";
import type { Editor, EditorOptions, Marked } from "./editor-type.js";
import type { Place } from "./place.js";

/** The JSON of the job: a plain text area, in front of which the editor stands once it is loaded. */
export interface TextView {
  /** Loads the editor; where that fails, the text area stays. */
  readonly open: () => Promise<void>;
  readonly set: (text: string) => void;
  readonly goTo: (place: Place) => void;
  readonly mark: (faults: readonly Marked[]) => void;
}

export function textView(
  area: HTMLTextAreaElement,
  options: Pick<EditorOptions, "place" | "labelledBy" | "schema" | "document">,
  changed: () => void,
): TextView {
  let editor: Editor | undefined;
  let marked: readonly Marked[] = [];
  area.addEventListener("input", changed);
  return {
    open: async () => {
      try {
        await loadScript("editor.js");
      } catch {
        // The text area does all that is needed.
        return;
      }
      if (editor) return;
      editor = globalThis.gelwrightEditor({
        ...options,
        text: area.value,
        changed: (text) => {
          area.value = text;
          changed();
        },
      });
      const hadFocus = document.activeElement === area;
      area.hidden = true;
      editor.mark(marked);
      if (hadFocus) editor.goTo({ start: area.selectionStart, end: area.selectionEnd });
    },
    set: (text) => {
      area.value = text;
      editor?.set(text);
    },
    goTo: (place) => {
      if (editor) editor.goTo(place);
      else goToIn(area, place);
    },
    mark: (faults) => {
      marked = faults;
      editor?.mark(faults);
    },
  };
}

function goToIn(area: HTMLTextAreaElement, { start, end }: Place): void {
  area.focus();
  area.setSelectionRange(start, end);
  const line = area.value.slice(0, start).split("\n").length;
  area.scrollTop = (line - 4) * (area.scrollHeight / area.value.split("\n").length);
}
