/** An element with a class and a text. */
export function made<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  className = "",
  text = "",
): HTMLElementTagNameMap[Tag] {
  const one = document.createElement(tag);
  if (className !== "") one.className = className;
  one.textContent = text;
  return one;
}

/** A button that does something; `label` says to a screen reader what its sign means. */
export function button(text: string, act: () => void, label?: string): HTMLButtonElement {
  const one = made("button", "", text);
  one.type = "button";
  if (label !== undefined) one.setAttribute("aria-label", label);
  if (label !== undefined) one.title = label;
  one.addEventListener("click", act);
  return one;
}
