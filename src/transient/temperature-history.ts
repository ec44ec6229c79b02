/** How a temperature went on over time, read with a thermometer or computed. */
export interface TemperatureHistory {
  /** Times [s], rising. */
  readonly times: readonly number[];
  /** Temperatures at those times [°C]: all falling or all rising, and level where nothing changes. */
  readonly temperatures: readonly number[];
}
