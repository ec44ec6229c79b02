/** Puts a text into the clipboard; false where the browser does not let a page do so. */
export async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Hands a text over as a file. */
export function download(file: string, type: string, text: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = file;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** A name as that of a file. */
export function fileName(name: string): string {
  return (
    name
      .toLowerCase()
      .replaceAll(/[^\p{L}\p{N}]+/gu, "-")
      .replaceAll(/^-|-$/g, "") || "job"
  );
}
