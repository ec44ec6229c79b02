/** What `docs/build-search.ts` reads from the site, put in place by the bundler. */
declare module "sections" {
  import type { Section } from "../section.js";

  const sections: readonly Section[];
  export default sections;
}
