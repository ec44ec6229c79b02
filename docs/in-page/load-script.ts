const loaded = new Map<string, Promise<void>>();

/** Loads a script that stands beside the page, once and when it is needed; as a classic one, which a folder serves too. */
export function loadScript(name: string): Promise<void> {
  const before = loaded.get(name);
  if (before) return before;
  const loading = new Promise<void>((resolve, reject) => {
    const script = document.createElement("script");
    script.src = name;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => reject(new Error(`${name} was not loaded`)));
    document.head.append(script);
  });
  loaded.set(name, loading);
  return loading;
}
