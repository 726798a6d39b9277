/** What a phone in the cut shows seldom or never, in one script that comes after its first page. */
export { ControlPanel } from "./pages/control/control";
export { MorePanel } from "./pages/ground/more";
export { SumsPanel } from "./pages/ground/sums";
export { WorkPage } from "./pages/ground/work/work";
export { WhoPage } from "./pages/join/who";
export { VisitorPage } from "./pages/visitor/visitor";
export { PhotoPanel } from "./photo/panel";
