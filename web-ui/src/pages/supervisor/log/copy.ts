/** Puts a text where it can be pasted from. On the truck's plain http the modern way is shut; the older one works there. */

/** Whether the browser took it. */
export async function copied(text: string): Promise<boolean> {
  try {
    if (navigator.clipboard) {
      await navigator.clipboard.writeText(text);
      return true;
    }
  } catch {
    // The older way is tried.
  }
  const before = document.activeElement;
  const field = document.createElement("textarea");
  field.value = text;
  field.className = "unseen";
  field.setAttribute("aria-hidden", "true");
  document.body.append(field);
  field.select();
  let took = false;
  try {
    took = document.execCommand("copy");
  } catch {
    took = false;
  }
  field.remove();
  if (before instanceof HTMLElement) before.focus();
  return took;
}
