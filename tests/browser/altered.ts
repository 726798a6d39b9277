/** A cab's page with a view of the test's own: the hub is real, its link beats, and what it says of this one screen is altered on the wire. */
import type { Page, WebSocketRoute } from "@playwright/test";
import type { Crew } from "./crew.ts";

// biome-ignore lint/suspicious/noExplicitAny: the wire is checked where it is made.
type View = Record<string, any>;

export class Altered {
  private socket: WebSocketRoute | null = null;
  /** The view as the hub tells it. */
  private told: View = {};
  private shown: View | null = null;

  private constructor(readonly page: Page) {}

  /** A cab that comes in and then shows what it is handed. */
  static async cab(crew: Crew, viewport: { width: number; height: number }): Promise<Altered> {
    const { page } = await crew.scans("OPERATOR", "EX-1", { viewport });
    const altered = new Altered(page);
    await page.routeWebSocket(/\/api\/live/, (socket) => altered.carry(socket));
    await page.getByLabel("Name or initials").fill("OW");
    await page.getByRole("button", { name: "IN", exact: true }).click();
    await page.locator(".cab .side, .cab .plate-screen").first().waitFor();
    return altered;
  }

  private carry(socket: WebSocketRoute): void {
    const hub = socket.connectToServer();
    this.socket = socket;
    hub.onMessage((message) => {
      const said = JSON.parse(String(message));
      if (said.kind !== "view" || said.topic !== "operator") {
        socket.send(message);
        return;
      }
      this.told = said.whole ? said.view : { ...this.told, ...said.view };
      this.say();
    });
  }

  /** What is not named stays as the hub tells it. */
  async show(view: View): Promise<void> {
    this.shown = view;
    this.say();
    // A link that a slow machine has let go comes back by itself.
    await this.page.locator(`.cab.shows-${view.screen.kind}`).waitFor();
    // Painted once more than it takes to lay it out.
    await this.page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(null)))),
    );
  }

  private say(): void {
    this.socket?.send(
      JSON.stringify({ kind: "view", topic: "operator", whole: true, view: { ...this.told, ...this.shown } }),
    );
  }
}
