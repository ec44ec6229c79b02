/** One field of a document that was deleted: its path as faults name it, and the document without it. */
export interface Deletion {
  readonly path: string;
  readonly document: unknown;
}

function step(path: string, key: string | number): string {
  if (typeof key === "number") return `${path}[${key}]`;
  if (!/^[\p{L}_$][\p{L}\d_$-]*$/u.test(key)) return `${path}[${JSON.stringify(key)}]`;
  return path === "" ? key : `${path}.${key}`;
}

/** Every document that lacks one named field of this one, at any depth. Members of lists stay: their places are counted. */
export function* deletions(document: unknown, path = ""): Generator<Deletion> {
  if (typeof document !== "object" || document === null) return;
  if (Array.isArray(document)) {
    for (const [i, member] of document.entries())
      for (const one of deletions(member, step(path, i)))
        yield { ...one, document: document.map((other, j) => (j === i ? one.document : other)) };
    return;
  }
  for (const [key, member] of Object.entries(document)) {
    const { [key]: _, ...others } = document as Readonly<Record<string, unknown>>;
    yield { path: step(path, key), document: others };
    for (const one of deletions(member, step(path, key)))
      yield { ...one, document: { ...document, [key]: one.document } };
  }
}
