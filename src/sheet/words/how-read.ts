/** How the figures of a table were had: "read first-hand", or "from memory", where nothing was read. */
export const howRead = (grade: string): string => (grade === "from memory" ? grade : `read ${grade}`);
