// Prints the sheet of one example: `npm run sheet`, or `npm run sheet -- scrub-gel`.
const [name = "cuticle-gel"] = process.argv.slice(2);
await import(`./${name}/run.mjs`);
