/** The box of the search, in place of the generator's own, which knows names and little else. */
export const searchControls = `<button id="find-open" class="tsd-widget" type="button" aria-haspopup="dialog"><svg width="16" height="16" viewBox="0 0 16 16" fill="none" aria-hidden="true"><circle cx="7" cy="7" r="4.5" stroke="currentColor" stroke-width="2"/><path d="m10.5 10.5 4 4" stroke="currentColor" stroke-width="2"/></svg> <span>Search</span> <kbd>/</kbd></button><dialog id="find" aria-label="Search"><input id="find-words" role="combobox" aria-label="What are you looking for?" aria-controls="find-hits" aria-autocomplete="list" aria-expanded="false" autocapitalize="off" autocomplete="off" spellcheck="false" placeholder="How warm may the oil be …" maxlength="120"><div id="find-status" role="status"></div><ul id="find-hits" role="listbox" aria-label="What was found"></ul></dialog>`;

/** A page of the generator with this search in its head instead of that one. */
export function withSearch(html: string): string {
  const base = /<html[^>]*\bdata-base="([^"]*)"/.exec(html)?.[1] ?? "./";
  const own = html
    .replace(
      /<script\b[^>]*id="tsd-search-script"[^>]*><\/script>/,
      `<link rel="stylesheet" href="${base}assets/find.css"/><script defer src="${base}assets/find.js"></script>`,
    )
    .replace(/<button id="tsd-search-trigger".*?<\/dialog>/s, () => searchControls);
  if (own.includes("tsd-search") || !own.includes("assets/find.js"))
    throw new Error("the search of a page was not replaced");
  return own;
}
