/** Marks a box that scrolls, and lets the keyboard reach it; takes both away once its content fits. */
function mark(box: Element): void {
  const hidden = box.scrollWidth - box.clientWidth;
  if (hidden > 0) box.setAttribute("tabindex", "0");
  else box.removeAttribute("tabindex");
  box.toggleAttribute("data-more", hidden > 0 && box.scrollLeft < hidden - 1);
}

const fit = new ResizeObserver((entries) => {
  for (const { target } of entries) mark(target);
});

/** Keeps an eye on the boxes within that scroll. */
export function watchWidths(within: ParentNode, which = ".wide, pre"): void {
  for (const box of within.querySelectorAll(which)) {
    fit.observe(box);
    box.addEventListener("scroll", () => mark(box), { passive: true });
  }
}
