/** How far a table of the law can be trusted. */
export type LegalGrade =
  /** Every row was read in the act itself, or in an official text of it. */
  | "first-hand"
  /** Some rows were read in somebody's restatement only. */
  | "second-hand"
  /** Not looked up: compare it with the act before you use it. */
  | "from memory";

/** Where a table of the law holds, and where it was read. Law differs by place and date: pass the table of yours. */
export interface LegalSource {
  /** Where it holds. */
  readonly jurisdiction: string;
  /** The act or handbook, with clause or table. */
  readonly act: string;
  /** Of the version that was read: a year, or a day as year-month-day. */
  readonly date: string;
  readonly grade: LegalGrade;
  /** Key of the bibliography; free text in a table of the caller's. */
  readonly source: string;
}
