/** Packed, so that a job of some kilobytes makes a link that mail programs still take. */
async function through(bytes: Uint8Array<ArrayBuffer>, stream: GenericTransformStream): Promise<Uint8Array> {
  const packed = new Blob([bytes]).stream().pipeThrough(stream);
  return new Uint8Array(await new Response(packed).arrayBuffer());
}

/** What stands behind `#` in a link that holds a text. */
export async function hashOf(text: string): Promise<string> {
  const bytes = await through(new TextEncoder().encode(text), new CompressionStream("deflate-raw"));
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return `#job=${btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "")}`;
}

/** The text that a link holds; nothing where it holds none, or one that was cut off on its way. */
export async function textOf(hash: string): Promise<string | undefined> {
  const [, packed] = /^#job=([\w-]+)$/.exec(hash) ?? [];
  if (packed === undefined) return undefined;
  try {
    const binary = atob(packed.replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = Uint8Array.from(binary, (character) => character.charCodeAt(0));
    return new TextDecoder().decode(await through(bytes, new DecompressionStream("deflate-raw")));
  } catch {
    return undefined;
  }
}
