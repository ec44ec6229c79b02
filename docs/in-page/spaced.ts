/** The name of a field as words: `flashPointMargin` as "flash point margin". */
export function spaced(name: string): string {
  return name.replaceAll(/(?<=[a-z])(?=[A-Z])/g, " ").toLowerCase();
}
