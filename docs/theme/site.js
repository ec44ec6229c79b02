// An equation that is wider than its place is set smaller, down to where it can still be read.
const shrink = () => {
  for (const place of document.querySelectorAll(".equation > div")) {
    const math = place.querySelector("math");
    if (!math) continue;
    math.style.fontSize = "";
    const { paddingLeft, paddingRight } = getComputedStyle(place);
    const room = place.parentElement.clientWidth - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight) - 2;
    const wide = math.getBoundingClientRect().width;
    if (room > 0 && wide > room) math.style.fontSize = `${Math.max(0.5, (0.98 * room) / wide)}em`;
  }
};
new ResizeObserver(shrink).observe(document.documentElement);

// The list of pages comes with the link of a room inside the button that opens it, which no screen reader can tell apart:
// the link moves to the head of the list that opens.
const separate = (list) => {
  for (const link of list.querySelectorAll("summary a")) {
    const name = document.createElement("span");
    name.append(...link.cloneNode(true).childNodes);
    const items = link.closest("details")?.querySelector("ul");
    const item = document.createElement("li");
    link.replaceWith(name);
    // The link is a flex box, which drops plain spaces between its parts.
    link.replaceChildren("All of\u00a0", ...link.childNodes);
    item.append(link);
    items?.prepend(item);
  }
};
// Who has opened and closed nothing yet finds the guides open.
const openGuides = (list) => {
  const guides = list.querySelector('summary[data-key="Guides"]')?.closest("details");
  if (guides && localStorage.getItem("tsd-accordion-Guides") === null) guides.open = true;
};

const list = document.getElementById("tsd-nav-container");
if (list)
  new MutationObserver(() => {
    separate(list);
    openGuides(list);
  }).observe(list, { childList: true, subtree: true });
