import { expect, test } from "vitest";
import { linkCode, linkSources } from "../../docs/theme/code-links.js";

const places = new Map([
  ["coolingTime", "f.html"],
  ["bergman-2011", "b.html#bergman-2011"],
]);

test("a name in code marks leads to its page, in words and tables, and not in blocks or other links", () => {
  expect(linkCode("<p><code>coolingTime</code></p>", places)).toBe(
    '<p><a href="f.html"><code>coolingTime</code></a></p>',
  );
  for (const html of [
    "<pre><code>coolingTime</code></pre>",
    '<a href="x"><code>coolingTime</code></a>',
    "<code>coolingTime({})</code>",
    "coolingTime",
  ])
    expect(linkCode(html, places)).toBe(html);
});

test("a source in a docstring leads to the bibliography, words that only look like a key do not", () => {
  const source = '<div class="tsd-tag-source"><p>bergman-2011 section 5.3, as second-hand</p></div>';
  expect(linkSources(source, places)).toBe(
    '<div class="tsd-tag-source"><p><a href="b.html#bergman-2011">bergman-2011</a> section 5.3, as second-hand</p></div>',
  );
  expect(linkSources("<p>bergman-2011</p>", places)).toBe("<p>bergman-2011</p>");
});
