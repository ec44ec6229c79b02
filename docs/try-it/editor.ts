// The editor of the JSON, bundled for itself: it is loaded when the JSON is looked at for the first time.
import { autocompletion, closeBrackets, closeBracketsKeymap, completionKeymap } from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { json } from "@codemirror/lang-json";
import { bracketMatching, HighlightStyle, indentOnInput, syntaxHighlighting } from "@codemirror/language";
import { lintGutter, setDiagnostics } from "@codemirror/lint";
import { Annotation, EditorState } from "@codemirror/state";
import { EditorView, hoverTooltip, keymap, lineNumbers } from "@codemirror/view";
import { tags } from "@lezer/highlight";
import { completionBy, pathAt } from "./completion.js";
import "./editor-type.js";
import { descriptionOf, schemaAt } from "./schema.js";

/** Marks what the page itself puts into the editor, which it need not be told of. */
const given = Annotation.define<boolean>();

const colours = HighlightStyle.define([
  { tag: tags.propertyName, color: "var(--link)" },
  { tag: [tags.number, tags.bool, tags.null], fontWeight: "bold" },
]);

/** What changes one text into another, without what both begin and end with: the place in sight stays there. */
function changeBetween(before: string, after: string): { from: number; to: number; insert: string } {
  const max = Math.min(before.length, after.length);
  let from = 0;
  while (from < max && before[from] === after[from]) from++;
  let same = 0;
  while (same < max - from && before.at(-1 - same) === after.at(-1 - same)) same++;
  return { from, to: before.length - same, insert: after.slice(from, after.length - same) };
}

globalThis.gelwrightEditor = ({ place, labelledBy, text, schema, document, changed }) => {
  const view = new EditorView({
    parent: place,
    state: EditorState.create({
      doc: text,
      extensions: [
        lineNumbers(),
        lintGutter(),
        history(),
        json(),
        syntaxHighlighting(colours),
        bracketMatching(),
        closeBrackets(),
        indentOnInput(),
        autocompletion({ icons: false, override: [completionBy(schema, document)] }),
        // Tab leaves the editor, as it leaves any field.
        keymap.of([...closeBracketsKeymap, ...completionKeymap, ...historyKeymap, ...defaultKeymap]),
        EditorView.lineWrapping,
        EditorView.contentAttributes.of({
          "aria-labelledby": labelledBy,
          tabindex: "0",
          autocapitalize: "off",
          spellcheck: "false",
        }),
        hoverTooltip(({ state }, pos) => {
          const words = descriptionOf(schemaAt(schema, document(), pathAt(state, pos)) ?? {});
          if (words === "") return null;
          return {
            pos,
            create: () => {
              const dom = globalThis.document.createElement("div");
              dom.className = "cm-said";
              dom.textContent = words;
              return { dom };
            },
          };
        }),
        EditorView.updateListener.of(({ docChanged, transactions, state }) => {
          if (docChanged && !transactions.some((one) => one.annotation(given))) changed(state.doc.toString());
        }),
      ],
    }),
  });
  return {
    set: (next) => {
      const now = view.state.doc.toString();
      if (next === now) return;
      const changes = changeBetween(now, next);
      view.dispatch({ changes, effects: EditorView.scrollIntoView(changes.from), annotations: given.of(true) });
    },
    goTo: ({ start, end }) => {
      view.focus();
      view.dispatch({
        selection: { anchor: start, head: end },
        effects: EditorView.scrollIntoView(start, { y: "center" }),
      });
    },
    mark: (faults) => {
      const { length } = view.state.doc;
      view.dispatch(
        setDiagnostics(
          view.state,
          faults.map(({ place: { start, end }, message }) => ({
            from: Math.min(start, length),
            to: Math.min(end, length),
            severity: "error" as const,
            message,
          })),
        ),
      );
    },
  };
};
