/** Standard atmosphere [Pa], exact by definition. */
export const atmosphere = 101_325;
