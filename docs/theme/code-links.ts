import type { DeclarationReflection, ProjectReflection } from "typedoc";

/** Where a word in code marks leads: from a name to a place in the site. A name that two rooms share leads nowhere. */
export type Places = ReadonlyMap<string, string>;

/** The public names of every room, those of the room named standing first where two rooms share one. */
export function namesOf(project: ProjectReflection, room: string): ReadonlyMap<string, DeclarationReflection> {
  const named = new Map<string, DeclarationReflection[]>();
  for (const module of project.children ?? [])
    for (const child of module.children ?? []) named.set(child.name, [...(named.get(child.name) ?? []), child]);
  const chosen = new Map<string, DeclarationReflection>();
  for (const [name, all] of named) {
    const [one] = all.length === 1 ? all : all.filter(({ parent }) => parent?.name === room);
    if (one) chosen.set(name, one);
  }
  for (const module of project.children ?? []) chosen.set(`gelwright/${module.name}`, module);
  return chosen;
}

/** Words in code marks that have a place become links to it. What stands in a link or in a block of code is left alone. */
export function linkCode(html: string, places: Places): string {
  return html.replaceAll(/<a\b[^>]*>.*?<\/a>|<pre\b.*?<\/pre>|<code>([^<]+)<\/code>/gs, (all, name?: string) => {
    const place = name === undefined ? undefined : places.get(name);
    return place === undefined ? all : `<a href="${place}">${all}</a>`;
  });
}

/** In the cells of a table a long name may go on to the next line before one of its words. */
export function breakNames(html: string): string {
  return html.replaceAll(/<(td|th)\b.*?<\/\1>/gs, (cell) =>
    cell.replaceAll(
      /<code>([A-Za-z]{13,})<\/code>/g,
      (_, name: string) => `<code>${name.replaceAll(/(?<=[a-z])(?=[A-Z])/g, "<wbr>")}</code>`,
    ),
  );
}

/** Keys of the bibliography in what a docstring says of its source. */
export function linkSources(html: string, places: Places): string {
  return html.replaceAll(/<div class="tsd-tag-source">.*?<\/div>/gs, (source) =>
    source.replaceAll(/<a\b[^>]*>.*?<\/a>|<code>.*?<\/code>|[a-z0-9]+(?:-[a-z0-9]+)+/gs, (word) => {
      const place = places.get(word);
      return place === undefined ? word : `<a href="${place}">${word}</a>`;
    }),
  );
}
