/** The library's version, which every sheet carries; a test holds it equal to the package's. */
export const version = "0.1.0";
