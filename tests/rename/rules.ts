/** How the old names of the map become new ones in files: what the map cannot say by a word alone. Deleted with the map. */
import ts from "typescript";

/** Identifiers, field names, path segments and words in code marks, in some files only. The first rule that fits is taken; the map's `everywhere` comes after. */
export interface Rule {
  readonly old: string;
  readonly new: string;
  readonly in: RegExp;
  readonly not?: RegExp;
  /** Of identifiers in code: only where this holds. Rules with a condition do not touch comments and strings. */
  readonly when?: (node: ts.Identifier) => boolean;
}

const isName = (node: ts.Identifier): boolean =>
  ((ts.isPropertyAssignment(node.parent) ||
    ts.isPropertySignature(node.parent) ||
    ts.isShorthandPropertyAssignment(node.parent) ||
    ts.isPropertyAccessExpression(node.parent)) &&
    node.parent.name === node) ||
  (ts.isBindingElement(node.parent) && (node.parent.propertyName ?? node.parent.name) === node);

/** `supply: "power"`, in a value or in a type, and `supply.supply`. */
const isTag =
  (holder: RegExp) =>
  (node: ts.Identifier): boolean => {
    const { parent } = node;
    if (ts.isPropertyAssignment(parent) && parent.name === node)
      return ts.isStringLiteral(
        ts.isAsExpression(parent.initializer) ? parent.initializer.expression : parent.initializer,
      );
    if (ts.isPropertySignature(parent) && parent.name === node)
      return (
        parent.type !== undefined &&
        (ts.isLiteralTypeNode(parent.type) || parent.type.kind === ts.SyntaxKind.UnknownKeyword)
      );
    return (
      ts.isPropertyAccessExpression(parent) &&
      parent.name === node &&
      holder.test(parent.expression.getText().replace(/ as \{ \w+: unknown \}/, ""))
    );
  };

const notOfFastCheck = (node: ts.Identifier): boolean =>
  !(
    ts.isPropertyAccessExpression(node.parent) &&
    node.parent.name === node &&
    node.parent.expression.getText() === "fc"
  );

export const rules: readonly Rule[] = [
  // tags of unions
  { old: "supply", new: "kind", in: /./, when: isTag(/supply\)*$|beside/) },
  { old: "stretch", new: "kind", in: /./, not: /^src\/units/, when: isTag(/stretch\)*$/) },
  { old: "supply", new: "heating", in: /^src\/heat\/heating-time\.ts/ },
  { old: "supply", new: "heatSource", in: /./ },
  { old: "stretches", new: "stretches", in: /^src\/batch/ },
  { old: "stretch", new: "segment", in: /./, not: /^src\/units/ },
  // the room leg
  {
    old: "leg",
    new: "transientSegment",
    in: /valid-inputs\.ts$/,
    when: (node) => ts.isPropertyAssignment(node.parent),
  },
  { old: "leg", new: "transient", in: /^src\/index\.ts$|^tests\/architecture|^tests\/support/ },
  {
    old: "leg",
    new: "transientSegment",
    in: /./,
    when: (node) =>
      ts.isImportSpecifier(node.parent) ||
      ts.isExportSpecifier(node.parent) ||
      ts.isFunctionDeclaration(node.parent) ||
      (ts.isCallExpression(node.parent) && node.parent.expression === node && isImported(node)) ||
      (ts.isPropertyAccessExpression(node.parent) && node.parent.name === node),
  },
  {
    old: "leg",
    new: "transient",
    in: /./,
    when: (node) => isImported(node) || (ts.isPropertyAccessExpression(node.parent) && node.parent.name === node),
  },
  { old: "leg", new: "segment", in: /\.ts$|\.mjs$/, when: () => true },
  { old: "leg", new: "transient", in: /^(tests\/architecture|tests\/support|bench|README|DEVELOPERS|CHANGELOG)/ },
  { old: "leg", new: "transientSegment", in: /\.ts$|\.md$/ },
  // volume fraction of oil at which trials inverted
  { old: "volumeFractionGreatest", new: "volumeFractionMax", in: /^src\/particles\// },
  { old: "ceiling", new: "limit", in: /^(src|tests)\/mixing\// },
  { old: "ceiling", new: "volumeFractionOilMax", in: /^(src|tests)\/(gel|plan)\/|\.(json|md)$/ },
  // the emulsion's bench document
  {
    old: "shares",
    new: "additionShareMax",
    in: /^src\/plan\/(cold-schema|cold\/types|cold\/bench)\.ts|^tests\/plan\/cold|(documents|cold-route)\.md$/,
  },
  {
    old: "uptake",
    new: "incorporationTime",
    in: /^(src|tests)\/(mixing|plan)\/|^docs\/(examples|guides|mixing|plan|cold-route)|^tests\/checks\/mixing/,
  },
  { old: "droplets", new: "dropletDiameter", in: /^src\/plan\/(cold-schema|cold\/types)\.ts|documents\.md$/ },
  { old: "droplets", new: "dropletDiameter", in: /^src\/plan\/cold\/bench\.ts/ },
  { old: "droplets", new: "dropletDiameter", in: /^tests\/plan/, when: isName },
  { old: "bubbles", new: "bubbleDiameter", in: /^src\/plan\/(cold-schema|cold\/types)\.ts|documents\.md$/ },
  { old: "bubbles", new: "bubbleDiameter", in: /^src\/plan\/cold\/bench\.ts|^tests\/plan\/cold/ },
  { old: "bubble", new: "bubbleDiameter", in: /^src\/plan\/(strength-schema|strength\/types)\.ts|documents\.md$/ },
  { old: "bubble", new: "bubbleDiameter", in: /^src\/plan\/strength\/read\.ts/ },
  { old: "bubble", new: "bubbleDiameter", in: /^tests\/plan/ },
  {
    old: "before",
    new: "proceedWhen",
    in: /^src\/plan\/(schema|cold\/(types|step|plan))\.ts|^src\/sheet\/cold\.ts|documents\.md$|cold-route\.md$/,
  },
  {
    old: "before",
    new: "proceedWhen",
    in: /^src\/plan\/cold\/additions\.ts/,
    when: (node) => isName(node) && /^(before: step\.before|step\.before)$/.test(node.parent.getText()),
  },
  {
    old: "highest",
    new: "temperatureMax",
    in: /^src\/plan\/(schema|vessel-document|read-vessel|read-walls)\.ts|^tests\/plan\/((heat|walls)\.test|jobs)|\.md$|^docs\/examples/,
  },
  // local words for ends of a range
  { old: "lowest", new: "doseMin", in: /^src\/gel\/dose-/ },
  { old: "highest", new: "doseMax", in: /^src\/gel\/dose-/ },
  { old: "lowest", new: "oilMin", in: /^src\/gel\/packed-strength/ },
  { old: "highest", new: "oilMax", in: /^src\/gel\/packed-strength/ },
  // targets
  {
    old: "wanted",
    new: "target",
    in: /^src\/plan\/strength|^src\/sheet\/strength|^docs\/gel\.md|^docs\/examples|^tests\/plan\/(strength|jobs)/,
  },
  {
    old: "wanted",
    new: "massTarget",
    in: /^src\/batch\/(scale|weigh)\.ts|^src\/plan\/checks\/batch\.ts|^src\/plan\/(run-plan|pack)\.ts|^tests\/batch\/scale/,
  },
  { old: "atLeast", new: "totalMin", in: /^(src|tests)\/batch|\.json$|\.md$/ },
  {
    old: "why",
    new: "reason",
    in: /^src\/batch|^tests\/batch|^src\/plan\/(lot-order|cold\/warming|cold\/plan)\.ts|^src\/sheet\/cold\.ts|^tests\/plan\/cold-stirring/,
  },
  // rheology
  {
    old: "give",
    new: "yieldPoint",
    in: /^src\/rheology\/amplitude-sweep|^tests\/rheology\/yield-stresses|^tests\/checks\/rheology/,
  },
  {
    old: "flow",
    new: "flowPoint",
    in: /^src\/rheology\/amplitude-sweep|^tests\/rheology\/yield-stresses|^tests\/checks\/rheology/,
  },
  // mixing
  {
    old: "constant",
    new: "laminarPowerConstant",
    in: /^(src|tests)\/mixing\/|^src\/plan\/impeller\.ts|^tests\/plan\/stirring/,
    when: notOfFastCheck,
  },
  {
    old: "constant",
    new: "laminarPowerConstant",
    in: /^(src|tests)\/mixing\/.*(comment|path)$|^tests\/checks\/mixing|^docs\/mixing\.md/,
  },
  // plan
  {
    old: "largestHeld",
    new: "largestSuspended",
    in: /^src\/plan\/strength\/(outlook|plan)\.ts|^src\/sheet|^tests\/plan/,
  },
  {
    old: "held",
    new: "suspended",
    in: /^src\/plan\/strength\/(air|plan|check-air)\.ts|^src\/sheet\/strength|^tests\/plan\/(strength|jobs)/,
  },
  { old: "thickest", new: "thicknessMax", in: /^src\/plan\/strength\/(plan|films)\.ts/ },
  { old: "thickest", new: "thicknessMax", in: /^src\/sheet\/strength|^tests\/plan/ },
  { old: "onWall", new: "thicknessOnWall", in: /./ },
  {
    old: "durationToSpare",
    new: "durationWorking",
    in: /^(src|tests)\/heat|^docs\/plots|^docs\/heat|^tests\/checks|^tests\/docs|^docs\/guides/,
  },
  { old: "durationToSpare", new: "durationMargin", in: /./ },
  { old: "toSpare", new: "working", in: /^src\/heat/ },
  { old: "flow", new: "flowRate", in: /^src\/mixing\/circulation\.ts/ },
  { old: "before", new: "massBefore", in: /^(src|tests)\/heat\/(evaporation\.(test\.)?ts|valid-inputs\.ts)/ },
  { old: "after", new: "massAfter", in: /^(src|tests)\/heat\/(evaporation\.(test\.)?ts|valid-inputs\.ts)/ },
  // types of one name in two rooms
  { old: "Balance", new: "HeatBalance", in: /^(src|tests)\/heat/ },
  // the lowest temperature met beside the lowest allowed, in one function
  {
    old: "temperatureLowest",
    new: "coolest",
    in: /^src\/heat\/least-additions\.ts/,
    when: (node) =>
      !((ts.isPropertyAssignment(node.parent) || ts.isPropertySignature(node.parent)) && node.parent.name === node),
  },
];

function isImported(node: ts.Identifier): boolean {
  return node
    .getSourceFile()
    .statements.some(
      (statement) =>
        ts.isImportDeclaration(statement) &&
        new RegExp(`\\b${node.text}\\b`).test(statement.importClause?.getText() ?? ""),
    );
}

/** Internal words of the same kinds as those of the map, everywhere. */
export const internal: Readonly<Record<string, string>> = {
  additionsMost: "additionsMax",
  foldsMost: "foldsMax",
  halvingsMost: "halvingsMax",
  partsMost: "partsMax",
  portionsMost: "portionsMax",
  sumsMost: "sumsMax",
  triesMost: "triesMax",
  slopeLeast: "slopeMin",
  mostLots: "lotsMax",
  leastMoved: "movedMin",
  leastWith: "minWith",
  leastAt: "minAt",
  leastTotal: "totalMin",
  leastBlendReynolds: "blendReynoldsMin",
  leastVortexReynolds: "vortexReynoldsMin",
  checkLeastVolume: "checkMinimumVolume",
  checkHighestShares: "checkMaximumShares",
  checkHighestTemperatures: "checkMaximumTemperatures",
  checkCeiling: "checkMaximumOilFraction",
  checkHeld: "checkSuspended",
  checkParticlesHeld: "checkParticlesSuspended",
  checkSparedOils: "checkHeatSensitive",
  alongStretches: "alongSegments",
  stretchesFrom: "segmentsFrom",
  stretchesOf: "segmentsOf",
  runLeg: "runSegment",
  legs: "segments",
  compileSupply: "compileHeatSource",
  CompiledSupply: "CompiledHeatSource",
  StirredSupply: "StirredHeatSource",
  CompiledBalance: "CompiledHeatBalance",
  compileBalance: "compileHeatBalance",
  noSupply: "noHeatSource",
  supplyAt: "sourceAt",
  exposureOf: "thermalExposureOf",
  exposuresOf: "thermalExposuresOf",
  readSensitivity: "readAgeingKinetics",
  compileUptake: "compileIncorporationTime",
  uptakeFactorOf: "incorporationTimeFactorOf",
  uptakeOn: "incorporationTimeOn",
  oilOrderOf: "oxidationRankingOf",
  heldSizes: "suspendedSizes",
  heldIn: "suspendedIn",
};

/** Files, by a pattern on the path; `$1` as in a replacement. */
export const moves: readonly (readonly [RegExp, string])[] = [
  [/^src\/leg\/cooling-leg\.ts$/, "src/transient/cooling-segment.ts"],
  [/^src\/leg\/leg\.ts$/, "src/transient/segment.ts"],
  [/^src\/leg\/(.*)$/, "src/transient/$1"],
  [/^tests\/leg\/leg\.test\.ts$/, "tests/transient/segment.test.ts"],
  [/^tests\/leg\/(.*)$/, "tests/transient/$1"],
  [/^tests\/checks\/leg\.json$/, "tests/checks/transient.json"],
  [/^tests\/heat\/against-leg\.test\.ts$/, "tests/heat/against-transient.test.ts"],
  [/^(src|tests)\/heat\/vessel-leg(.*)$/, "$1/heat/vessel-segment$2"],
  [/^(src|tests)\/heat\/stretches(.*)$/, "$1/heat/segments$2"],
  [/^(src|tests)\/heat\/supply(.*)$/, "$1/heat/heat-source$2"],
  [/^(src|tests)\/(heat|plan)\/exposure(.*)$/, "$1/$2/thermal-exposure$3"],
  [/^src\/heat\/sensitivity\.ts$/, "src/heat/ageing-kinetics.ts"],
  [/^src\/heat\/jacket-wanted\.ts$/, "src/heat/jacket-target.ts"],
  [/^src\/heat\/least-additions(.*)$/, "src/heat/fewest-additions$1"],
  [/^src\/heat\/pack-time-until\.ts$/, "src/heat/pack-cooling-time.ts"],
  [/^src\/mixing\/uptake-scale\.ts$/, "src/mixing/incorporation-time-scale.ts"],
  [/^src\/plan\/cold\/uptake-factor\.ts$/, "src/plan/cold/incorporation-time-factor.ts"],
  [/^src\/oils\/addition-order\.ts$/, "src/oils/oxidation-ranking.ts"],
  [/^(src|tests)\/plan\/addition-order(.*)$/, "$1/plan/oxidation-ranking$2"],
  [/^src\/particles\/flake-held\.ts$/, "src/particles/suspended-flake.ts"],
  [/^src\/particles\/held\.ts$/, "src/particles/suspended-diameter.ts"],
  [/^tests\/particles\/held\.test\.ts$/, "tests/particles/suspended-diameter.test.ts"],
  [/^(src|tests)\/particles\/yield-stress-to-hold(.*)$/, "$1/particles/yield-stress-to-suspend$2"],
  [/^tests\/checks\/particles-held\.json$/, "tests/checks/particles-suspended.json"],
  [/^src\/plan\/check-held\.ts$/, "src/plan/check-suspended.ts"],
  [/^src\/plan\/held\.ts$/, "src/plan/suspended.ts"],
  [/^src\/plan\/checks\/least-volume\.ts$/, "src/plan/checks/minimum-volume.ts"],
  [/^src\/rheology\/shear-rates-of-use\.ts$/, "src/rheology/shear-rates-in-use.ts"],
  [/^docs\/plots\/held-sizes\.ts$/, "docs/plots/suspended-sizes.ts"],
];

/** Words of sentences, in comments, in Markdown outside of code and in strings with a space. Equations are left alone. */
export const prose: readonly { readonly in: RegExp; readonly from: RegExp; readonly to: string }[] = [
  { in: /./, from: /\bkink(s?)\b/, to: "breakpoint$1" },
  { in: /./, from: /\bleg(s?)\b/, to: "segment$1" },
  { in: /./, from: /\bLeg(s?)\b/, to: "Segment$1" },
  { in: /^docs\/laws\.md/, from: /\bLaws and (legs|segments)\b/, to: "Laws and segments" },
  {
    in: /^(src|tests)\/(heat|plan)\/(?!jacket|heating-time|checks|pack\.ts|cold)/,
    from: /\bstretch(es)?\b(?! of (time|it))/,
    to: "segment$1",
  },
  { in: /^(src|tests)\/(heat|plan)\//, from: /\bsegmentes\b/, to: "segments" },
  { in: /^(src|tests)\/heat\/|^src\/plan\/run\/|^docs\/heat\.md|^CHANGELOG/, from: /\bsupply\b/, to: "heat source" },
  { in: /^(src|tests)\/plan\//, from: /\bno heat sensitivity is stated\b/, to: "no ageing kinetics are stated" },
  { in: /^(src|tests|docs)\//, from: /\btime of uptake\b|\buptake time\b/, to: "incorporation time" },
  { in: /^(src|tests)\/(gel|mixing|plan)\/|^docs\//, from: /\bceiling stated\b/, to: "maximum stated" },
  { in: /^(src|tests)\/(gel|mixing|plan)\/|^docs\//, from: /\bceiling\b/, to: "maximum oil fraction" },
  { in: /./, from: /\bleast not above greatest\b/, to: "min not above max" },
];

/** Texts that are neither an identifier nor a path: replaced as they stand, in files whose old or new path fits. */
export const texts: readonly { readonly in: RegExp; readonly from: RegExp | string; readonly to: string }[] = [
  { in: /^(package|biome)\.json$/, from: /(?<=[/"])leg(?=[/".])/, to: "transient" },
  // heat of a material
  { in: /\.(json|md|ts)$/, from: '"heat": "spare"', to: '"heatSensitive": true' },
  { in: /\.(json|md|ts)$/, from: '"heat": "stands heat"', to: '"heatSensitive": false' },
  { in: /\.(md|ts)$/, from: 'heat: "spare"', to: "heatSensitive: true" },
  { in: /\.(md|ts)$/, from: 'heat: "stands heat"', to: "heatSensitive: false" },
  {
    in: /material-document\.ts$/,
    from: 'readonly heat?: "spare" | "stands heat";',
    to: "readonly heatSensitive?: boolean;",
  },
  {
    in: /material-document\.ts$/,
    from: '/** `"spare"` for what oxidises or is lost on the heat and is stirred in off it. */',
    to: "/** True for what oxidises or is lost on the heat and is stirred in off it; false for what stands the heat. */",
  },
  {
    in: /^src\/formula\/schema\.ts$/,
    from: 'heat: exactOptional(picklist(["spare", "stands heat"]))',
    to: "heatSensitive: exactOptional(boolean())",
  },
  {
    in: /^src\/formula\/material\.ts$/,
    from: 'spareFromHeat: draft.heat === "spare"',
    to: "heatSensitive: draft.heatSensitive === true",
  },
  {
    in: /documents\.md$/,
    from: '`heat` is `"stands heat"` or `"spare"`: what is to be spared goes in off the heat.',
    to: "`heatSensitive` is `true` for what oxidises or is lost on the heat, and goes in off it; `false` for what stands the heat.",
  },
  // what a figure of the timeline rests on
  { in: /^src\/plan\/plan\.ts$/, from: "`law` says what is missing", to: "`basis` says what is missing" },
  { in: /^src\/plan\/(plan|heat-plan)\.ts$/, from: /readonly law(\??): string;/, to: "readonly basis$1: string;" },
  { in: /^src\/plan\/(cold\/)?timeline\.ts$/, from: /^ {6}law,$/m, to: "      basis: law," },
  { in: /^src\/plan\/after-filling\.ts$/, from: "law: cooling.from", to: "basis: cooling.from" },
  { in: /^src\/plan\/after-filling\.ts$/, from: "found.law", to: "found.basis" },
  { in: /^src\/sheet\/heat\.ts$/, from: /(topUp, )law(, notKnown)/, to: "$1basis$2" },
  { in: /^src\/sheet\/heat\.ts$/, from: /(after filling: \$\{)law(\}\.)/, to: "$1basis$2" },
  { in: /^src\/sheet\/(tables|markdown)\.ts$/, from: "lawTable", to: "basisTable" },
  { in: /^src\/sheet\/tables\.ts$/, from: "step.law", to: "step.basis" },
  { in: /^src\/sheet\/tables\.ts$/, from: /^ {6}"law",$/m, to: '      "basis",' },
  {
    in: /^tests\/(plan|sheet)\//,
    from: /(timeline\S*\]?|timeline\.at\(-1\)|stepOf\([^)]*\)|\bstep|stirred)(\??\.)law\b/,
    to: "$1$2basis",
  },
  { in: /^tests\/plan\/vessel-shape/, from: "mass = Number.NaN, law }", to: "mass = Number.NaN, basis }" },
  { in: /^tests\/plan\/vessel-shape/, from: "throw new Error(law)", to: "throw new Error(basis)" },
  {
    in: /^tests\/plan\/stirring\.test/,
    from: "temperatureEnd = Number.NaN, law, stirring }",
    to: "temperatureEnd = Number.NaN, basis, stirring }",
  },
  { in: /^tests\/plan\/stirring\.test/, from: "expect(law).toContain", to: "expect(basis).toContain" },
  { in: /^src\/heat\/least-additions\.ts/, from: /temperatureLowest \};/, to: "temperatureLowest: coolest };" },
  {
    in: /^src\/plan\/(held|suspended)\.ts$/,
    from: 'PlanParticle["largestHeld"]',
    to: 'PlanParticle["largestSuspended"]',
  },
  { in: /^tests\/plan\/heat\.test/, from: "timeline[number - 1]?.law", to: "timeline[number - 1]?.basis" },
  { in: /^src\/mixing\//, from: 'positive(constant, "constant")', to: 'positive(constant, "laminarPowerConstant")' },
  {
    in: /^src\/mixing\//,
    from: /(?<=curve\.constant, `\$\{path\}\.)constant/,
    to: "laminarPowerConstant",
  },
  { in: /^src\/mixing\//, from: "@param input.constant", to: "@param input.laminarPowerConstant" },
  { in: /^tests\/plan\/jobs\/record\.ts$/, from: "({ law: _law, ...step })", to: "({ basis: _basis, ...step })" },
  {
    in: /^tests\/plan\/jobs\/record\.ts$/,
    from: "The law of a step is a sentence",
    to: "The basis of a step is a sentence",
  },
  { in: /^(src|tests)\/heat\/(evaporation|valid)/, from: "not more than before (", to: "not more than massBefore (" },
  { in: /^tests\/mixing\/blending/, from: "const { flow, duration", to: "const { flowRate, duration" },
  { in: /^tests\/mixing\/blending/, from: "off(flow * duration", to: "off(flowRate * duration" },
  // lists of faults are sorted by their paths
  {
    in: /^tests\/plan\/cold\.test/,
    from: /^( *"bench\.coldRoute\.ceiling",\n)( *"bench\.coldRoute\.gelFormerIndex\.at",\n)( *"bench\.coldRoute\.shares\[1\]\.oil",\n)( *"bench\.coldRoute\.surfactant\.material",\n)( *"bench\.coldRoute\.uptake\[0\]\.time",\n)/m,
    to: "$3$2$5$4$1",
  },
  {
    in: /^tests\/plan\/cold\.test/,
    from: /^( *"process\.steps\[3\]\.phase",\n)( *"process\.steps\[3\]\.readTo",\n)/m,
    to: "$2$1",
  },
  {
    in: /^tests\/plan\/strength\.test/,
    from: /^( *"bench\.strengthTrials\.trials\[1\]\.strength",\n)( *"bench\.strengthTrials\.wanted",\n)/m,
    to: "$2$1",
  },
  // the keys of the wall's correlations are the kinds of stirrer of a document
  {
    in: /^src\/heat\/stirred-correlations\.ts$|^tests\/heat|^docs|^src\/heat/,
    from: /\.(helicalRibbon)\b/,
    to: '["helical ribbon"]',
  },
  {
    in: /^src\/heat|^tests\/heat|^docs|^src\/plan/,
    from: /stirredCorrelations\.discTurbine\b/,
    to: 'stirredCorrelations["disc turbine"]',
  },
  {
    in: /^src\/heat|^tests\/heat|^docs|^src\/plan/,
    from: /stirredCorrelations\.flatBladeTurbine\b/,
    to: 'stirredCorrelations["flat-blade turbine"]',
  },
  {
    in: /^src\/heat|^tests\/heat|^docs|^src\/plan/,
    from: /stirredCorrelations\.pitchedBladeTurbine\b/,
    to: 'stirredCorrelations["pitched-blade turbine"]',
  },
  {
    in: /^src\/heat\/stirred-correlations\.ts$|^tests/,
    from: /"helicalRibbon"|\bhelicalRibbon(?=:)/,
    to: '"helical ribbon"',
  },
  {
    in: /^src\/heat\/stirred-correlations\.ts$|^tests/,
    from: /"discTurbine"|\bdiscTurbine(?=:)/,
    to: '"disc turbine"',
  },
  {
    in: /^src\/heat\/stirred-correlations\.ts$|^tests/,
    from: /"flatBladeTurbine"|\bflatBladeTurbine(?=:)/,
    to: '"flat-blade turbine"',
  },
  {
    in: /^src\/heat\/stirred-correlations\.ts$|^tests/,
    from: /"pitchedBladeTurbine"|\bpitchedBladeTurbine(?=:)/,
    to: '"pitched-blade turbine"',
  },
  { in: /^src\/plan\/inside\.ts$/, from: '"helicalRibbon"', to: '"helical ribbon"' },
  { in: /^src\/plan\/inside\.ts$/, from: '"discTurbine"', to: '"disc turbine"' },
  { in: /^src\/plan\/inside\.ts$/, from: '"flatBladeTurbine"', to: '"flat-blade turbine"' },
  { in: /^src\/plan\/inside\.ts$/, from: '"pitchedBladeTurbine"', to: '"pitched-blade turbine"' },
  { in: /^bench\/sizes\.ts$/, from: /\b(of|room) leg"/, to: '$1 transient"' },
];
