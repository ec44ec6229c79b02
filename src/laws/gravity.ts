/** Standard gravity [m/s²], exact by definition. */
export const gravity = 9.80665;
