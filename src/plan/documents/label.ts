import type { ExposureGrade, ExposureRow, ExposureTable, IngredientLimit, LimitTable } from "../../exposure/index.js";
import { readDate } from "../../formula/dated-table.js";
import { type Draft, type Findings, join } from "../../formula/document.js";
import { type Entry, fields, listOf, maybe, named, plain, quantity, text, whole, word } from "../../formula/entry.js";
import type { Read } from "../../formula/read-type.js";
import type {
  AllergenTable,
  CertifiedTable,
  CertifiedThreshold,
  ClaimBasis,
  ListedAllergen,
  OrderRule,
  ParticleRestriction,
  ParticleTable,
  ProductUse,
} from "../../labelling/index.js";
import type { Quantity } from "../../units/index.js";

/** What the label is drafted for. Law differs by place and date: every table is the caller's, and what has none is not asked. */
export interface LabelDocument {
  /** As the tables name it. */
  readonly productType: string;
  readonly use: ProductUse;
  /** Day on which it is to be sold, as `"2027-10-17"`, for restrictions that begin later. */
  readonly date?: string;
  /** By which rule ingredients follow one another; default the EU's. */
  readonly order?: OrderRule;
  /** Fragrance allergens that are to be named. */
  readonly allergens?: AllergenTable;
  /** Restrictions of particles. */
  readonly particles?: ParticleTable;
  /** Thresholds of a certification standard. */
  readonly certified?: CertifiedTable;
  /** Figures to be claimed, by the indices of the materials. */
  readonly claims?: readonly {
    readonly of: ClaimedIndex;
    readonly basis: ClaimBasis;
    /** Default none. */
    readonly decimals?: number;
  }[];
}

/** Of which index of ISO 16128 a claim speaks. */
export type ClaimedIndex = "natural" | "naturalOrigin" | "organic" | "organicOrigin";

/** What a qualified assessor asks about exposure. */
export interface ExposureDocument {
  /** A row of the table. */
  readonly productType: string;
  /** Daily exposures; default those of the room `exposure`, read in a restatement. */
  readonly table?: ExposureTable;
  /** Of which materials the systemic exposure is asked. */
  readonly materials?: readonly AssessedDocument[];
  /** The largest shares of ingredients by type of product, where and when they hold. */
  readonly limits?: LimitTable;
}

/** One material that is assessed, with what the assessor has chosen. */
export interface AssessedDocument {
  /** Its key. */
  readonly material: string;
  /** Part that the skin takes up. */
  readonly dermalAbsorption: Quantity<"massFraction">;
  /** Dose of the study [mg/(kg·d)], and the part of it that the body took up [above 0 to 1]. */
  readonly study?: { readonly pointOfDeparture: number; readonly bioavailability: number };
  /** Margin that the assessor wants: the largest share for it is then given. */
  readonly marginMin?: number;
}

const above = { above: 0 } as const;
const dated = { jurisdiction: text, date: text };

/** Reads what a label is drafted for. */
export const label: Entry<LabelDocument> = fields<LabelDocument>({
  productType: text,
  use: word<ProductUse>("leave-on", "rinse-off"),
  date: maybe("wish", text),
  order: maybe("property", fields<OrderRule>({ ...dated, orderedAbove: text, exactly: word("ordered", "any order") })),
  allergens: maybe(
    "property",
    fields<AllergenTable>({
      ...dated,
      substances: listOf(fields<ListedAllergen>({ name: text, members: maybe("property", listOf(text)) }), 1),
      thresholds: maybe(
        "property",
        fields<NonNullable<AllergenTable["thresholds"]>>({ "leave-on": text, "rinse-off": text }),
      ),
    }),
  ),
  particles: maybe(
    "property",
    fields<ParticleTable>({
      ...dated,
      rows: listOf(fields<ParticleRestriction>({ productType: text, from: text, amountMin: text })),
    }),
  ),
  certified: maybe(
    "property",
    fields<CertifiedTable>({
      ...dated,
      rows: listOf(
        fields<CertifiedThreshold>({
          productType: text,
          figure: word<CertifiedThreshold["figure"]>(
            "organic of product",
            "organic of physically processed",
            "organic of agro-ingredients",
            "natural origin of product",
            "petrochemical moieties of product",
            "other of product",
          ),
          min: maybe("property", text),
          max: maybe("property", text),
        }),
        1,
      ),
    }),
  ),
  claims: maybe(
    "wish",
    listOf(
      fields<NonNullable<LabelDocument["claims"]>[number]>({
        of: word<ClaimedIndex>("natural", "naturalOrigin", "organic", "organicOrigin"),
        basis: word<ClaimBasis>("whole product", "without water", "without water and salt"),
        decimals: maybe("wish", whole(0)),
      }),
    ),
  ),
});

const amount = plain({ min: 0 });

/** Reads what an assessor asks about exposure. */
export const exposure: Entry<ExposureDocument> = fields<ExposureDocument>({
  productType: text,
  table: maybe(
    "property",
    fields<ExposureTable>({
      ...dated,
      edition: text,
      rows: named(
        fields<ExposureRow>({
          amountPerDay: amount,
          amountPerBodyWeight: maybe("property", amount),
          retention: plain({ min: 0, max: 1 }),
          exposurePerDay: amount,
          exposurePerBodyWeight: amount,
          grade: word<ExposureGrade>("first-hand", "second-hand", "from memory"),
        }),
      ),
    }),
  ),
  materials: maybe(
    "wish",
    listOf(
      fields<AssessedDocument>({
        material: text,
        dermalAbsorption: quantity("massFraction", { min: 0, max: 1 }),
        study: maybe(
          "property",
          fields<NonNullable<AssessedDocument["study"]>>({
            pointOfDeparture: plain(above),
            bioavailability: plain({ above: 0, max: 1 }),
          }),
        ),
        marginMin: maybe("wish", plain(above)),
      }),
    ),
  ),
  limits: maybe(
    "property",
    fields<LimitTable>({
      ...dated,
      rows: listOf(fields<IngredientLimit>({ name: text, productType: text, max: text })),
    }),
  ),
});

/** What of a label needs several fields. */
export function checkLabel({ date }: Draft<Read<LabelDocument>>, findings: Findings): void {
  const at = join("label", "date");
  if (date !== undefined) findings.attempt(() => readDate(date, at), at);
}

/** What of an exposure needs several fields: the materials that it names. */
export function checkExposure(
  { materials = [] }: Draft<Read<ExposureDocument>>,
  keys: readonly string[],
  findings: Findings,
): void {
  materials.forEach((one, i) => {
    if (one?.material !== undefined && !keys.includes(one.material))
      findings.unknownName(
        ["materials", i, "material"].reduce<string>(join, "exposure"),
        one.material,
        keys,
        "the key of a material of the formula",
        ["formula.materials"],
      );
  });
}
