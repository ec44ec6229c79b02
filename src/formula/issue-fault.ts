import type { Fault } from "../error.js";
import { didYouMean, nearest, show } from "../guards.js";
import { noSuchField } from "./entry.js";

/** An issue of the validator, as far as a fault is made of it. */
interface Issue {
  readonly type: string;
  readonly message: string;
  readonly received: string;
  readonly expected: string | null;
  readonly input: unknown;
  readonly requirement?: unknown;
  readonly issues?: readonly unknown[] | undefined;
}

/** Whether an object was found to be of no known kind; else what stands in its place is no object at all. */
export function isUnknownKind({ type, expected }: Pick<Issue, "type" | "expected">): boolean {
  return type === "variant" && expected !== "Object";
}

/** What an entry found and expected, as a fault; `near` finds the name that was probably meant. */
export function faultOf(issue: Issue, path: string, name: string, near: typeof nearest): Fault {
  const { type, message, received, expected, input } = issue;
  const { issues = [] } = issue;
  if (message === noSuchField) {
    const meant = near(name, issues as readonly string[]);
    const parameters = { name, ...(meant !== undefined && { nearest: meant }) };
    return {
      path,
      found: `the field ${name}`,
      expected: message + didYouMean(meant),
      rule: "unknown-field",
      parameters,
    };
  }
  const [own] = issues as readonly Fault[];
  // A parser of ours has said what is wrong.
  if (own) return { ...own, path };
  if (received === "undefined")
    return { path, found: "nothing", expected: `a value: the field ${name} is required`, rule: "missing" };
  const found = show(input);
  const isWord = type === "picklist" || type === "literal" || isUnknownKind(issue);
  if (isWord) return notOneOf(path, input, String(expected));
  if (type === "integer" || type === "finite" || type.endsWith("_value") || type.endsWith("_length"))
    return { path, found, expected: message, rule: "out-of-range", ...numbersOf(issue) };
  const words = { string: "text", boolean: "true or false", Object: "an object with named fields", Array: "a list" };
  const wanted = message.startsWith("Invalid") ? (words[expected as keyof typeof words] ?? String(expected)) : message;
  return { path, found, expected: wanted, rule: "wrong-type" };
}

/** A word that is none of those that are allowed, which the validator gives as `("share" | "mass")`, of kinds as `("share" | ("mass" | "parts"))`. */
function notOneOf(path: string, input: unknown, expected: string): Fault {
  const choices = [...expected.matchAll(/"[^"]*"|[^\s|()]+/g)].map(([choice]) => choice);
  const allowed = choices.map((choice) => choice.replaceAll('"', ""));
  const near = typeof input === "string" ? nearest(input, allowed) : undefined;
  return {
    path,
    found: show(input),
    expected: choices.join(" or ") + didYouMean(near),
    rule: "not-one-of",
    parameters: { allowed, ...(near !== undefined && { nearest: near }) },
  };
}

function numbersOf({ type, input, requirement }: Issue): Pick<Fault, "parameters"> {
  const end = { min_value: "min", gt_value: "min", max_value: "max", min_length: "min", max_length: "max" }[type];
  return {
    parameters: {
      ...(Number.isFinite(input) && { value: input as number }),
      ...(Array.isArray(input) && { value: input.length }),
      ...(end !== undefined && { [end]: requirement }),
    },
  };
}
