/** The temperature to which a nominal volume refers, whatever that of filling [°C]. */
export const temperatureNominal = 20;
