import type MarkdownIt from "markdown-it";

/** Tables in boxes that scroll, so that a wide one does not widen its page. */
export function boxTables({ renderer: { rules } }: MarkdownIt): void {
  rules["table_open"] = () => '<div class="wide"><table>\n';
  rules["table_close"] = () => "</table></div>\n";
}
