import type { Options } from "tsup";

/** Each file of `src` becomes one of JavaScript; `write-parts.ts` puts them together afterwards. */
const config: Options = {
  format: ["esm"],
  target: "es2022",
  entry: ["src/**/*.ts"],
  bundle: false,
  minifySyntax: true,
  sourcemap: true,
  esbuildOptions: (options) => {
    options.charset = "utf8";
  },
};

export default config;
