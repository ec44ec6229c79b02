/** Puts a text into the clipboard; false where the browser does not let a page do so. */
async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Copies a text and says on the button, for two seconds, what came of it. */
export async function copyWith(button: HTMLButtonElement, text: string): Promise<void> {
  const before = button.dataset["words"] ?? button.textContent ?? "";
  button.dataset["words"] = before;
  button.textContent = (await copy(text)) ? "Copied" : "The browser does not allow it";
  setTimeout(() => {
    button.textContent = before;
  }, 2000);
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
