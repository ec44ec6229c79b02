/** What a screen reader is told of the parts of typedoc's pages. */
const landmarks: Readonly<Record<string, string>> = {
  "col-content": 'role="main"',
  "page-menu": 'role="complementary" aria-label="Settings and places on this page"',
  "site-menu": 'role="complementary" aria-label="Pages of the site"',
};

/** The parts of a page become landmarks, so that a screen reader can go from one to the next. */
export function addLandmarks(html: string): string {
  return html.replaceAll(/<div class="(col-content|page-menu|site-menu)">/g, (_, name: string) => {
    return `<div class="${name}" ${landmarks[name]}>`;
  });
}

/** A heading that opens and closes its group holds no link to itself: one thing to press, not two in one another. */
export function plainSummaries(html: string): string {
  return html.replaceAll(/<summary\b.*?<\/summary>/gs, (summary) =>
    summary.replaceAll(/<a\b[^>]*class="tsd-anchor-icon"[^>]*>.*?<\/a>/gs, ""),
  );
}
