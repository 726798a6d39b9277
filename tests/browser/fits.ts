/** Whether what a page shows has its room: no control lies on another, no word is cut off. For the pages of the desk. */
import type { Page } from "@playwright/test";

/** A laptop's screens. */
export const DESKS = [
  { width: 1024, height: 768 },
  { width: 1366, height: 768 },
  { width: 1920, height: 1080 },
];

/** A laptop under a pointer. */
export const LAPTOP = { viewport: { width: 1366, height: 768 }, hasTouch: false };

/** What lies on something else or is cut off, in words; of what is in sight below `root`. */
export async function crowded(page: Page, root: string): Promise<string[]> {
  return page.evaluate((of) => {
    const found: string[] = [];
    const base = document.querySelector(of);
    if (!base) return [`there is no ${of}`];
    /** What of it is in sight: each box that scrolls or hides cuts it. */
    const inSight = (one: Element) => {
      let { left, top, right, bottom } = one.getBoundingClientRect();
      for (let at = one.parentElement; at; at = at.parentElement) {
        const style = getComputedStyle(at);
        if (style.overflowX === "visible" && style.overflowY === "visible") continue;
        const room = at.getBoundingClientRect();
        left = Math.max(left, room.left);
        top = Math.max(top, room.top);
        right = Math.min(right, room.right);
        bottom = Math.min(bottom, room.bottom);
      }
      return { left, top, right: Math.min(right, innerWidth), bottom: Math.min(bottom, innerHeight) };
    };
    const named = (one: Element) =>
      `${one.tagName} ${(one.getAttribute("aria-label") ?? one.textContent ?? "").trim().slice(0, 40)}`;
    const seen = [...base.querySelectorAll(".key, button, input, select, a[href], summary, h2, h3, output, label > span")]
      // Rows go under the heads of their table.
      .filter((one) => !one.closest("tbody") && getComputedStyle(one).visibility !== "hidden")
      .map((one) => ({ one, box: inSight(one) }))
      .filter(({ box }) => box.right - box.left > 1 && box.bottom - box.top > 1);
    for (const [i, { one, box }] of seen.entries()) {
      for (const other of seen.slice(i + 1)) {
        if (one.contains(other.one) || other.one.contains(one)) continue;
        const wide = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
        const high = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
        if (wide > 1 && high > 1) found.push(`${named(one)} lies on ${named(other.one)}`);
      }
    }
    for (const one of base.querySelectorAll<HTMLElement>(".key, button, th, td, dt, dd, p, h2, h3, output, label, figcaption")) {
      if (one.closest(".unseen") || one.clientWidth < 2) continue;
      if (one.scrollWidth > one.clientWidth + 1) found.push(`cut off: ${named(one)}`);
    }
    const pen = document.createElement("canvas").getContext("2d");
    for (const list of base.querySelectorAll("select")) {
      const style = getComputedStyle(list);
      const chosen = list.selectedOptions[0]?.text ?? "";
      if (!pen || list.clientWidth === 0) continue;
      pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      const arrow = 20;
      const room = list.clientWidth - Number.parseFloat(style.paddingLeft) - Number.parseFloat(style.paddingRight) - arrow;
      if (pen.measureText(chosen).width > room + 1) found.push(`cut off: ${chosen}`);
    }
    const wide = document.documentElement.scrollWidth - innerWidth;
    if (wide > 0) found.push(`the page is ${wide} px too wide`);
    return found;
  }, root);
}
