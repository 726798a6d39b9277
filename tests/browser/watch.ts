/** Looks at a page from outside, as an eye does: frames as they are painted, whatever the page's script is doing. */
import type { Page } from "@playwright/test";

export class Watch {
  /** The newest frame, a PNG in base 64. */
  newest = "";

  static async on(page: Page): Promise<Watch> {
    const session = await page.context().newCDPSession(page);
    const watch = new Watch();
    const first = new Promise<void>((resolve) => {
      session.on("Page.screencastFrame", ({ data, sessionId }) => {
        watch.newest = data;
        // A page that is closing no longer listens.
        void session.send("Page.screencastFrameAck", { sessionId }).catch(() => undefined);
        resolve();
      });
    });
    await session.send("Page.startScreencast", { format: "png" });
    await first;
    return watch;
  }
}

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** How far two frames differ within a box of the page: the share of points whose lightness is another, 0 to 1. */
export async function inkOf(page: Page, one: string, other: string, box: Box): Promise<number> {
  return page.evaluate(
    async ([a, b, at]) => {
      const points = async (png: string) => {
        const picture = new Image();
        picture.src = `data:image/png;base64,${png}`;
        await picture.decode();
        const canvas = new OffscreenCanvas(at.width, at.height);
        const pen = canvas.getContext("2d");
        if (!pen) throw new Error("No canvas");
        pen.drawImage(picture, -at.x, -at.y);
        return pen.getImageData(0, 0, at.width, at.height).data;
      };
      const [first, second] = [await points(a), await points(b)];
      let differ = 0;
      for (let i = 0; i < first.length; i += 4) {
        if (Math.abs((first[i] ?? 0) - (second[i] ?? 0)) > 96) differ++;
      }
      return differ / (first.length / 4);
    },
    [one, other, { x: box.x, y: box.y, width: Math.floor(box.width), height: Math.floor(box.height) }] as const,
  );
}
