import type { Calculator } from "../in-page/calculator-data.js";
import { searchControls } from "../search/controls.js";
import { escaped } from "../theme/html.js";
import type { Described } from "./all.js";
import { fileOf } from "./links.js";

function frame(title: string, description: string, body: string, scripts = ""): string {
  return `<!doctype html>
<html lang="en" data-base="../">
  <head>
    <meta charset="utf-8">
    <title>${escaped(title)} | gelwright</title>
    <meta name="description" content="${escaped(description)}">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <meta http-equiv="Content-Security-Policy" content="connect-src 'none'; form-action 'none'; frame-src 'none'">
    <link rel="icon" href="data:,">
    <link rel="stylesheet" href="../tools.css">
    <link rel="stylesheet" href="calculators.css">
    <link rel="stylesheet" href="../assets/find.css">
    <script defer src="../assets/find.js"></script>
    ${scripts}
  </head>
  <body>
    <header>
      <a href="../index.html">gelwright</a>
      <nav aria-label="Guides">
        <a href="index.html">Calculators</a>
        <a href="../try-it/index.html">Try it</a>
        <a href="../documents/questions.html">Questions</a>
        <a href="../documents/glossary.html">Glossary</a>
        ${searchControls}
      </nav>
    </header>
    <main>
${body}
    </main>
  </body>
</html>
`;
}

/** The page of one calculator; its form is made from the data in it. */
export function pageOf({ calculator, summary, figures }: Described): string {
  const { room, name, question } = calculator;
  const starts = figures === "invented" ? "invented figures" : "the figures of the function's example";
  const data = JSON.stringify(calculator).replaceAll("<", "\\u003c");
  const body = `      <h1>${escaped(question)}</h1>
      <p class="intro">
        ${escaped(summary.replaceAll(/[`$]/g, ""))}
        The equation, its limits and its sources: <a href="../functions/${room}.${name}.html"><code>${name}</code></a>.
        It is arithmetic on your figures, and says nothing of safety: <a href="../documents/cautions.html">Cautions</a>.
      </p>
      <noscript><p>This page needs JavaScript, because the library is JavaScript.</p></noscript>
      <div class="halves">
        <form id="form" autocomplete="off">
          <h2>What you know</h2>
          <p class="hint">The form starts with ${starts}: put in your own.</p>
          <div id="fields"></div>
        </form>
        <section aria-labelledby="answer-title">
          <h2 id="answer-title">The answer</h2>
          <div id="answer" role="status"></div>
          <div id="more"></div>
          <div id="plot"></div>
          <h2>As code</h2>
          <pre id="code" tabindex="0"></pre>
          <p class="row">
            <button id="copy-code" type="button">Copy the code</button>
            <button id="copy-link" type="button">Copy a link to these inputs</button>
            <button id="restore" type="button">Start again</button>
          </p>
        </section>
      </div>
      <script type="application/json" id="calculator">${data}</script>`;
  return frame(question, summary, body, '<script defer src="calculators.js"></script>');
}

/** The list of all calculators. */
export function indexOf(calculators: readonly Calculator[]): string {
  const items = calculators.map(
    ({ room, name, question }) => `        <li><a href="${fileOf(`${room}.${name}`)}">${escaped(question)}</a></li>`,
  );
  const body = `      <h1>Calculators</h1>
      <p class="intro">
        The commonest questions of the trade, each with a form: your figures in, the answer with its unit and how sure it
        is. All of them, with the function that answers each: <a href="../documents/questions.html">Questions</a>. A whole
        job, from formula to batch sheet: <a href="../try-it/index.html">Try it</a>.
      </p>
      <ul class="list">
${items.join("\n")}
      </ul>`;
  return frame("Calculators", "Forms for the commonest questions of the trade of clear oil gels.", body);
}
