/** What the tests use of js-quantities, which brings no types. */
declare module "js-quantities/esm" {
  export default function Qty(text: string): { to(units: string): { readonly scalar: number } };
}
