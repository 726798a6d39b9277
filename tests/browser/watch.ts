/** Looks at a page from outside, as an eye does: frames as they are painted, whatever the page's script is doing. */
import type { CDPSession, Page } from "@playwright/test";

export class Watch {
  private constructor(private readonly session: CDPSession) {}

  static async on(page: Page): Promise<Watch> {
    return new Watch(await page.context().newCDPSession(page));
  }

  /**
   * What is painted now, a PNG in base 64. Each look asks anew for the frame that stands: a stream of frames leaves some out,
   * and when nothing moves any more the last that it sent may be one from before.
   */
  async look(): Promise<string> {
    const frame = new Promise<string>((resolve) =>
      this.session.once("Page.screencastFrame", ({ data }) => resolve(data)),
    );
    await this.session.send("Page.startScreencast", { format: "png" });
    const seen = await frame;
    await this.session.send("Page.stopScreencast");
    return seen;
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
