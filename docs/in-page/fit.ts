/** What is wider than its place scrolls by itself, and then a keyboard must reach it. */
const fit = new ResizeObserver((entries) => {
  for (const { target } of entries)
    if (target.scrollWidth > target.clientWidth) target.setAttribute("tabindex", "0");
    else target.removeAttribute("tabindex");
});

/** Keeps an eye on the boxes within that scroll. */
export function watchWidths(within: ParentNode, which = ".wide, pre"): void {
  for (const box of within.querySelectorAll(which)) fit.observe(box);
}
