import type { Words } from "gelwright/sheet";

const memory = "aus dem Gedächtnis";
const secondHand = "aus zweiter Hand";
const noSource = "übliche Praxis, keine Quelle";

/** Jedes Gesetz mit Namen und, wo es eine gibt, der Quelle. */
const table: { readonly [Law in keyof Words["laws"]]: readonly [name: string, source?: string] } = {
  "mass-balance": ["Massenbilanz über das Eingewogene und die angegebenen Zuschläge"],
  "iso-16128-2": [
    "Anteil natürlichen Ursprungs mit Formulierungswasser",
    `ISO 16128-2 (2017, ${memory}), Indizes nach der Rezeptur`,
  ],
  "mixing-temperature": ["Mischtemperatur durch Kalorimetrie", "OpenStax University Physics 2, Abschnitt 1.4"],
  "heat-balance": ["Wärmebilanz des Kessels", `Bergman und andere 2011, Abschnitt 5.3, ${memory}`],
  "heater-power": ["gleichbleibende Heizleistung"],
  "heater-limited-by-its-temperature": ["durch die eigene Temperatur begrenzte Heizung"],
  "newton-cooling": ["Newtonsches Abkühlungsgesetz", "OpenStax Calculus 2, Abschnitt 4.3"],
  "convection-and-radiation": [
    "freie Konvektion und Strahlung von Seite und Oberseite",
    `Churchill und Chu 1975, Lloyd und Moran 1974, ${secondHand}`,
  ],
  jacket: ["Wärmestrom durch den Mantel", `Perry's Chemical Engineers' Handbook 2008, Abschnitt 11, ${memory}`],
  "held-as-stated": ["auf der Temperatur des Verfahrens gehalten"],
  "held-by-the-heater": ["durch die Heizung auf Temperatur gehalten"],
  "stirred-wall": [
    "Korrelation für eine vom Rührer bestrichene Wand",
    `Penney 2004; Coker 2001 für ein Blatt; ${secondHand}`,
  ],
  "wall-temperature": ["Temperatur der beheizten Wand aus Heizleistung und Wärmeübergangskoeffizient"],
  "heat-of-stirring": ["Rührwärme aus der Wellenleistung"],
  "power-number": [
    "Leistungskennzahl des Rührers",
    `Furukawa und andere 2012, ${secondHand}; Scherrate nach Metzner und Otto 1957, Zusammenfassung gelesen; Konstanten einer Bauart zwischen abweichenden Quellen`,
  ],
  "motor-margin": ["ein Viertel mehr Leistung und Drehmoment als nötig", noSource],
  "blend-time": [
    "Mischzeit nach Grenville und Nienow",
    `Bereiche nach Grenville 1992; Handbook of Industrial Mixing 2004, ${secondHand}; mit Strombrechern gemessen`,
  ],
  "revolutions-to-blend": ["Umdrehungen zum Mischen, wie für den Rührer angegeben"],
  cavern: ["vom Rührer bewegte Kaverne", `Elson und andere 1986, ${memory}`],
  vortex: [
    "obere Schranke der Trombe",
    `erzwungener in freiem Wirbel, ohne Strombrecher, Nagata 1975, ${memory}; keine Trombe unter Re 300, Ludwig 1995`,
  ],
  level: ["Füllstand aus Volumen und Form des Kessels"],
  "setting-line": ["zwischen Messwerten je nach Anteil", `Form nach Eldridge und Ferry 1954, ${memory}`],
  "ideal-solubility": ["ideale Löslichkeit", `Schröder 1893, ${memory}`],
  viscosity: ["Viskosität zwischen Messwerten"],
  "temperature-at-viscosity": ["Temperatur, bei der die gemessenen Viskositäten die verlangte erreichen"],
  "flow-curve-along-oil": ["Fließkurve zwischen Messwerten über dem Ölanteil", noSource],
  "suspension-viscosity": ["Viskosität einer Suspension", `Krieger und Dougherty 1959, ${memory}`],
  "flow-curve-fit": [
    "an Rheometerpunkte angepasste Fließkurve",
    `kleinste Quadrate; das Modell nach seinem Informationskriterium, Burnham und Anderson 2002, ${memory}`,
  ],
  "dose-response": ["Festigkeit als Potenz des Anteils über einer Schwelle, an Versuche angepasst", noSource],
  "sphere-drag": ["Widerstand einer Kugel", `Cheng 2009, ${secondHand}`],
  "grain-drag": ["Widerstand eines Korns", `Ganser 1993, ${secondHand}`],
  "flake-drag": ["Widerstand eines dünnen Plättchens, das hochkant sinkt", `Happel und Brenner 1965, ${memory}`],
  settling: [
    "behindertes Sinken während der Abkühlung von Kessel und Packung",
    `Richardson und Zaki 1954, ${secondHand}`,
  ],
  "window-for-adding": [
    "behindertes Sinken während der Abkühlung des Kessels",
    `Richardson und Zaki 1954, ${secondHand}`,
  ],
  "yield-stress-to-hold": [
    "Fließgrenze, die ein Partikel hält",
    `Beris und andere 1985, ${secondHand}, mit der Streuung veröffentlichter Versuche, ${memory}; für ein Plättchen Scherung an beiden Flächen`,
  ],
  "bubble-rise": [
    "Blasenaufstieg",
    `Stokes 1851; Hadamard 1911 und Rybczyński 1911 für eine bewegliche Oberfläche; ${memory}`,
  ],
  "bubble-held": [
    "Fließgrenze, die eine Blase hält",
    `Beris und andere 1985, ${secondHand}, mit der Streuung veröffentlichter Versuche, ${memory}`,
  ],
  "foam-head": ["Gesetz von Boyle für den angegebenen Luftgehalt, keine Blase geplatzt"],
  boiling: ["Dampfdruck und Stoffmengenanteil", "Raoultsches Gesetz"],
  "pack-conduction": ["Wärmeleitung in der Packung", `Bergman und andere 2011, Abschnitte 5.5, 5.6 und 5.8, ${memory}`],
  "pack-lump": ["eigene Abkühlkurve der Packung"],
  shrinkage: ["Schwund nach der Dichte", "Massenerhaltung"],
  "drained-film": ["Ablaufen eines Films an senkrechter Wand", `Jeffreys 1930, ${memory}`],
  "film-that-stays": [
    "dickster Film, den die Fließgrenze an einer Wand hält",
    `Fox und andere 2011, Aufgabe 8.46, ${secondHand}`,
  ],
  "nozzle-flow": ["Strömung durch eine Düse", `Rabinowitsch 1929 nach Steffe 1996, ${memory}`],
  ohnesorge: ["Ohnesorge-Zahl", `Ohnesorge 1936, ${secondHand}`],
  evaporation: ["Verdunstung durch einen Luftfilm", `Bergman und andere 2011, Abschnitte 6.7 und 7, ${memory}`],
  "thermal-exposure": ["gleichwertige Zeit bei einer Bezugstemperatur nach der angegebenen Alterungskinetik"],
  oxidisability: ["Cox-Wert", `Fatemi und Hammond 1980, ${memory}`],
  "addition-schedule": ["Zugaben als Anteil vom Kesselinhalt, vom Labor übertragen"],
  "incorporation-time": ["Einarbeitungszeiten des Labors, auf diesen Kessel übertragen", noSource],
  "packed-droplets": ["gepackte Tröpfchen", `Princen und Kiss 1986 und 1989, ${memory}`],
  "droplets-in-shear": [
    "Zerteilen von Tröpfchen im Scherfeld",
    `Kurve nach Grace 1982, ${memory}; Konstanten nach de Bruijn 1989, ${secondHand}; Jansen und andere 2001, Zusammenfassung`,
  ],
  "surfactant-coverage": ["Tensid auf den Tröpfchen nach der bedeckten Fläche"],
  "refractive-index": [
    "Brechzahl der Mischung",
    `Glycerin und Wasser nach der Tabelle der Glycerine Producers' Association 1963, ${secondHand}; Mischungen nach Lorentz und Lorenz 1880, ${memory}`,
  ],
  "glycerin-for-index-match": [
    "Glycerinanteil, der zur Brechzahl des Öls passt",
    `Tabelle der Glycerine Producers' Association 1963, ${secondHand}`,
  ],
  "water-activity": [
    "Wasseraktivität von Glycerin und Wasser",
    `Zhang, Grace und Sun 2022, ${secondHand}; Band von 0,03 durch Formeln ${memory}`,
  ],
  "scale-up": ["Übertragungsregeln des Rührens", `Handbook of Industrial Mixing 2004, ${memory}`],
  "fill-mass": ["Masse nach der Dichte bei 20 °C", "Richtlinie 76/211/EWG, Anhang I 2.2, zur Temperatur"],
  "tolerable-error": ["zulässige Minusabweichung nach der Tabelle der Unterlagen"],
  "batch-test": ["Prüfung der Charge nach der Tabelle der Unterlagen"],
  "target-fill": [
    "mittlere Füllmenge, bei der der angegebene Anteil der Chargen durchfällt",
    "Packungen um das Mittel normalverteilt",
  ],
  expansion: ["Ausdehnung nach der Dichte", "Massenerhaltung"],
  "head-space": [
    "Raum, den das Produkt in der Packung lässt",
    `drei Standardabweichungen bis zur größten Füllung, ${noSource}`,
  ],
  "packs-from-batch": ["ganze Packungen der angestrebten Füllmenge"],
  "test-plan": ["Proben nach Entnahmen und Rückstellung"],
  "equivalent-storage": [
    "gleich stark alternde Zeit bei der Anwendungstemperatur, nach der angegebenen Kinetik",
    "nur chemische Veränderung, ein Mechanismus, gleiche Luft, gleiches Wasser und Licht",
  ],
  "ingredient-order": ["Reihenfolge nach dem Gewicht bei der Zugabe, nach der Regel der Unterlagen oder der EU"],
  "fragrance-allergens": ["Duftstoffallergene, über alle Rohstoffe summiert, nach der Liste der Unterlagen"],
  microplastics: ["Partikelbeschränkungen nach der Tabelle der Unterlagen"],
  "claim-figure": ["auszulobende Zahl, abgerundet"],
  "certified-shares": ["Anteile nach den Klassen der Zertifizierungsstandards"],
  "daily-exposure": ["tägliche Exposition nach der Art des Produkts"],
  "systemic-exposure": ["systemische Dosis und Abstand als Rechnung"],
  "ingredient-limits": ["Höchstanteile nach der Tabelle der Unterlagen"],
  "lot-order": ["Dauer der Schritte; ruhende Packungen brauchen keinen Bediener"],
  "gel-with-water": [
    "Wasser in einem Gel aus gepackten Tröpfchen",
    `Brechzahl nach der Tabelle der Glycerine Producers' Association 1963, ${secondHand}`,
  ],
  "film-runs-off": [
    "Festigkeit gepackter Tröpfchen gegen das Filmgewicht",
    `Princen und Kiss 1989, ${memory}; Mason und andere 1995, Zusammenfassung`,
  ],
  "capillary-reach": ["Kapillarzug gegen die Fließgrenze", "Bertola 2006, Zusammenfassung"],
  turbidity: ["Streuung an Tröpfchen in zwei Bildern", `Bohren und Huffman 1983, Debye und Bueche 1949, ${memory}`],
  "required-hlb": ["HLB-Wert nach der Masse des Gemischten", noSource],
  "induction-time": ["Induktionszeit bei anderer Temperatur", "Tan und andere 2001, Zusammenfassung gelesen"],
  "water-uptake": ["Diffusion von Wasserdampf durch ruhende Luft", "Bergman und andere 2011, Abschnitt 6.7"],
};

function each(write: (name: string, source: string | undefined) => string): Words["laws"] {
  return Object.fromEntries(
    Object.entries(table).map(([code, [name, source]]) => [code, write(name, source)]),
  ) as Words["laws"];
}

export const lawNames: Words["lawNames"] = each((name) => name);
export const laws: Words["laws"] = each((name, source) => (source === undefined ? name : `${name} (${source})`));
