/** A stylesheet that comes with a late script: behind all others, and fetched anew after the link was lost on the way. */
export function lateSheet(address: string): Promise<void> {
  return new Promise((done, broken) => {
    if (document.querySelector(`link[href="${address}"]`)) return done();
    const sheet = document.createElement("link");
    sheet.rel = "stylesheet";
    sheet.href = address;
    sheet.onload = () => done();
    sheet.onerror = () => {
      sheet.remove();
      broken(new Error(`${address} does not come`));
    };
    document.head.append(sheet);
  });
}
