import remapping from "@jridgewell/remapping";
import { decode, encode, type SourceMapSegment } from "@jridgewell/sourcemap-codec";

/** Where each place of a file comes from, as the standard for source maps has it; names and sources' contents are left out. */
export interface SourceMap {
  readonly version: 3;
  readonly sources: readonly (string | null)[];
  readonly mappings: string;
}

/** A file with where its places come from. */
export interface Mapped {
  readonly code: string;
  readonly map: SourceMap;
}

/** The map of a step that was taken after another. */
export function after(map: SourceMap | string, before: SourceMap): SourceMap {
  const { sources, mappings } = remapping([map as string, before as never], () => null, {
    excludeContent: true,
    decodedMappings: false,
  });
  return { version: 3, sources, mappings: String(mappings) };
}

/** A comment that gives a tool the map of what it reads. */
export function inlined({ code, map }: Mapped): string {
  return `${code}\n//# sourceMappingURL=data:application/json;base64,${Buffer.from(JSON.stringify(map)).toString("base64")}`;
}

/** One place for each line of the source: enough to say where an error was thrown, at a fifth of the weight. */
export function byLine({ mappings, ...others }: SourceMap): SourceMap {
  const lines = decode(mappings).map((segments) => {
    let last = "";
    return segments.filter((segment): boolean => {
      const place = `${segment[1]}:${segment[2]}`;
      const isNew = segment.length > 1 && place !== last;
      last = place;
      return isNew;
    });
  });
  const plain = lines.map((segments) => segments.map((segment) => segment.slice(0, 4) as SourceMapSegment));
  return { ...others, mappings: encode(plain) };
}
