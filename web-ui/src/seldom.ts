/** What a phone in the cut shows seldom or never, in one script that comes after its first page. */
export { ControlPanel } from "./pages/control/control";
export { CheckPanel } from "./pages/ground/check";
export { LevelPanel } from "./pages/ground/level_again";
export { MorePanel } from "./pages/ground/more";
export { PaintPanel } from "./pages/ground/paint";
export { PipesPanel } from "./pages/ground/pipes";
export { SetUpPanel } from "./pages/ground/set_up";
export { SumsPanel } from "./pages/ground/sums";
export { TiesPanel } from "./pages/ground/ties";
export { WorkPage } from "./pages/ground/work/work";
export { WhoPage } from "./pages/join/who";
export { LeftPanel } from "./pages/left/left";
export { StandPanel } from "./pages/operator/stand_panel";
export { VisitorPage } from "./pages/visitor/visitor";
export { InspectPanel } from "./parts/inspect";
export { PhotoPanel } from "./photo/panel";
