/** A plot as plain data: computed where the library runs, drawn where there is a page. */
export interface Panel {
  readonly title: string;
  /** What somebody who cannot see it should know: figures, not looks. */
  readonly description: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly lines?: readonly PanelLine[];
  /** Stretches of x and y that are marked, such as a window for adding. */
  readonly areas?: readonly PanelArea[];
  /** Values of y that are marked by a line across. */
  readonly levels?: readonly Level[];
  readonly dots?: readonly Dot[];
  /** Upright bars from the bottom. */
  readonly bars?: readonly Bar[];
}

export interface Axis {
  /** With the unit. */
  readonly label: string;
  readonly log?: boolean;
  /** Whether it begins at 0. */
  readonly zero?: boolean;
  /** Names in place of numbers, in their order. */
  readonly names?: readonly string[];
}

export interface PanelLine {
  readonly name?: string;
  /** Lines are told apart by dashes and words, never by colour. */
  readonly dashed?: boolean;
  /** `null` leaves a gap. */
  readonly points: readonly (readonly [x: number, y: number | null])[];
}

export interface PanelArea {
  readonly name: string;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

export interface Level {
  readonly name: string;
  readonly y: number;
}

export interface Dot {
  readonly name: string;
  readonly x: number | string;
  readonly y: number;
}

export interface Bar {
  readonly x: readonly [number, number];
  readonly y: number;
}
