/** Starts the pages: asks who this phone is and shows the page of its role. */
import { effect, signal } from "@preact/signals";
import { render } from "preact";
import { useState } from "preact/hooks";
import { connect, reach, turnAway, whoAmI } from "./hub";
import { keptWords } from "./kept";
import { seldom, seldomComesFrom } from "./late";
import lateLook from "./late.css?url";
import { sheet } from "./late_sheet";
import { GroundPage } from "./pages/ground/ground";
import { codeIn, JoinPage } from "./pages/join/join";
import { NoHubPage } from "./pages/join/no_hub";
import { OperatorPage } from "./pages/operator/operator";
import { SupervisorLate, supervisorScript } from "./pages/supervisor/late";
import { StopNotTaken } from "./parts/kept";
import { LatePage } from "./parts/late_page";
import { showReplayed } from "./replayed";
import { bye, hasView, linked, me, replays } from "./state";
import { t, wordsHere } from "./words";
import "./style.css";
import "./parts/keys.css";
import "./parts/figures.css";
import "./parts/frame.css";
import "./parts/parts.css";
import "./pages/join/join.css";
import "./pages/ground/ground.css";
import "./pages/ground/read.css";
import "./pages/ground/sent.css";
import "./pages/ground/way_in.css";
import "./pages/ground/on_its_side.css";
import "./pages/operator/ground_strips.css";
import "./pages/operator/operator.css";
import "./pages/operator/silence.css";
import "./pages/operator/section.css";
import "./pages/operator/stop.css";
import "./pages/operator/on_its_side.css";

seldomComesFrom(async () => {
  const [script] = await Promise.all([import("./seldom"), sheet(lateLook)]);
  return script;
});

/** Between two questions who this phone is, while the hub does not answer, ms. */
const PAUSE = 2_000;

function App() {
  const who = me.value;
  const code = codeIn(location.pathname);
  if (code || who === null || bye.value === "removed" || bye.value === "day_over") {
    return <JoinPage code={code} />;
  }
  if (!who) return hubAway.value ? <NoHubPage /> : <p class="empty">{t().loading}</p>;
  if (who.asks_who) return <LatePage>{(script) => <script.WhoPage />}</LatePage>;
  if (who.roles.includes("operator")) return <OperatorPage />;
  const ground = who.roles.includes("ground");
  const supervisor = who.roles.includes("supervisor");
  if (ground && supervisor) return <Both />;
  if (supervisor) return <SupervisorLate />;
  return ground ? <GroundPage /> : <LatePage>{(script) => <script.VisitorPage />}</LatePage>;
}

/** One phone may be the ground person's and the supervisor's at once. */
function Both() {
  // An address that names one of the supervisor's pages leads there.
  const [board, setBoard] = useState(location.hash !== "");
  return board ? (
    <SupervisorLate onGround={() => setBoard(false)} />
  ) : (
    <GroundPage onBoard={() => setBoard(true)} />
  );
}

/** A hub that says nothing for so long is not waited for in silence, ms. */
const PATIENCE = 1_500;
/** No hub has answered since this page was loaded. */
const hubAway = signal(false);

async function start(): Promise<void> {
  const late = setTimeout(() => {
    hubAway.value = true;
    void keptWords();
  }, PATIENCE);
  const who = await whoAmI();
  clearTimeout(late);
  hubAway.value = who === undefined;
  if (who === undefined && me.value === undefined) {
    void keptWords();
    setTimeout(() => void start(), PAUSE);
    return;
  }
  // Somebody may have come in by the form meanwhile.
  if (me.value == null && who !== undefined) me.value = who;
  if (!me.value) turnAway();
}

effect(() => {
  if (me.value?.roles.includes("supervisor")) supervisorScript.ask();
});

// After the first page is painted, then at once: what it brings must be here when the link is gone. It brings the photos that an
// earlier page left, too.
effect(() => {
  if (linked.value && hasView.value) requestAnimationFrame(() => setTimeout(seldom.ask));
});

effect(() => {
  if (me.value && !replays && !codeIn(location.pathname)) connect();
});

// While the words are on their way: who this phone is, and its socket.
if (replays) showReplayed();
else {
  if (!codeIn(location.pathname)) reach();
  void start();
}

wordsHere.then(() => {
  const root = document.getElementById("app");
  if (root) {
    render(
      <>
        <StopNotTaken />
        <App />
      </>,
      root,
    );
  }
});
