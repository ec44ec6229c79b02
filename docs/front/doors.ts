/** A way from the front page into the site, by what a reader came for. */
export interface Door {
  readonly name: string;
  readonly who: string;
  readonly links: readonly (readonly [to: string, name: string])[];
}

export const doors: readonly Door[] = [
  {
    name: "Formulate",
    who: "You develop or make gels, and have a question in numbers.",
    links: [
      ["calculators/index.html", "Calculators for the commonest questions"],
      ["documents/questions.html", "Which function answers which question"],
      ["try-it/index.html", "Try it: your own job, without installing"],
      ["documents/cold-route.html", "The cold route, from bench to plant"],
      ["documents/glossary.html", "Glossary: the words of the trade"],
    ],
  },
  {
    name: "Embed",
    who: "You write an app, a script or a notebook that needs the figures.",
    links: [
      ["documents/start.html", "Start in five minutes"],
      ["documents/recipes.html", "Recipes: browser, worker, server, spreadsheet"],
      ["modules.html#rooms", "Reference, room by room"],
      ["documents/weight.html", "What each room adds to a bundle"],
    ],
  },
  {
    name: "Verify",
    who: "You want to know what a figure rests on before you trust it.",
    links: [
      ["documents/verification.html", "Verification: every check and its deviation"],
      ["documents/how-sure.html", "How sure is a figure?"],
      ["documents/bibliography.html", "Bibliography"],
      ["documents/plan-questions.html", "What a plan checks, with limits and margins"],
    ],
  },
];
