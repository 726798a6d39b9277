/** The kinds that the dictionaries must cover, so that a new one on the wire fails to compile here. */
import type { components } from "../wire.gen";

type Schemas = components["schemas"];
export type AnsweredKind = Schemas["Answered"];
export type CantReason = Schemas["CantReason"];
export type Care = Schemas["Care"];
export type Compass = Schemas["Compass"];
export type CutsLabel = "hand_dig" | "face_not_inspected";
export type AlsoAsks = Schemas["Asks"];
export type StruckDo = Schemas["StruckDo"];
export type DepthRule = Schemas["DepthRule"];
export type DepthState = Schemas["DepthState"];
export type Due = Schemas["Due"];
export type LaneKind = Schemas["LaneOf"]["kind"];
export type LaneSpanKind = Exclude<Schemas["LaneWhat"]["kind"], "does" | "asks_in" | "in">;
export type NotedKind = Schemas["NotedKind"];
export type ScreenKind = Schemas["ScreenCard"]["kind"];
export type Ending = Schemas["Ending"];
export type HandSignal = Schemas["HandSignal"];
export type HeldSpot =
  | "face_left"
  | "daylight_over"
  | "not_located"
  | "ticket_lapsed"
  | "paint_gone"
  | "line_struck"
  | "crossing_too_near";
export type InspectionWhy = Schemas["InspectionWhy"];
export type LoweredBy = Schemas["Lowered"];
export type Material = Schemas["Material"];
export type PinState = Schemas["PinState"];
export type QuickWord = Schemas["QuickWord"];
export type Role = Schemas["Role"];
export type Ruling = Schemas["Ruling"];
export type Sight = Schemas["Sight"];
export type SoilClass = Schemas["SoilClass"];
export type SpotReason = Schemas["SpotReason"];
export type StartCheck = Schemas["StartCheck"];
export type Standing = Schemas["Standing"];
export type Thumb = Schemas["Thumb"];
export type UtilityKind = Schemas["UtilityKind"];
export type { Way } from "../grade";
export type CloseMissingKind = Schemas["CloseMissing"]["kind"];
export type InspectionResult = Schemas["InspectionResult"];
export type CostKind = Schemas["CostOf"]["kind"];
export type Damp = Schemas["Damp"];
export type Doing = Schemas["Doing"];
export type PatchStep = Schemas["PatchStep"];
export type Restored = Schemas["Restored"];
export type Table = Schemas["Table"];
export type Verdict = Schemas["Verdict"];
export type TestStanding = Schemas["TestStanding"];
export type WaitCause = Schemas["WaitCause"];
export type WayOfLoad = Schemas["Way"];
export type Zone = Schemas["Zone"];
