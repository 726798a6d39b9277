/** The stylesheet of a script that comes late: nothing of the script is shown before its look is here. */

/**
 * Puts a stylesheet behind those that are here and waits for it; one that does not come is taken out again, so that the next try
 * asks for it anew. `before` is there for one that later sheets may override.
 */
export function sheet(address: string, before?: string): Promise<void> {
  const here = (of: string) => document.querySelector<HTMLLinkElement>(`link[rel=stylesheet][href="${of}"]`);
  if (here(address)) return Promise.resolve();
  const link = document.createElement("link");
  link.rel = "stylesheet";
  link.href = address;
  return new Promise((come, stays) => {
    link.onload = () => come();
    link.onerror = () => {
      link.remove();
      stays(new Error(`${address} did not come`));
    };
    document.head.insertBefore(link, before ? here(before) : null);
  });
}
