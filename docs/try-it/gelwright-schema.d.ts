/** The JSON Schema of a job, as the package ships it: the build bundles it from there. */
declare module "gelwright/schema/job.json" {
  const schema: import("./schema.js").Schema;
  export default schema;
}
