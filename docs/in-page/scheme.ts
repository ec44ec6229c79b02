/** Takes the light or dark scheme that was chosen on the other pages, if the browser lets a page remember. */
export function followScheme(): void {
  let chosen: string | null = null;
  try {
    chosen = localStorage.getItem("tsd-theme");
  } catch {
    // A page that may remember nothing follows the system.
  }
  document.documentElement.dataset["theme"] = chosen ?? "os";
}
