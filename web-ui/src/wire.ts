/** Short names for what goes over the wire: the shapes themselves are the hub's own, generated. */
import type { components, operations } from "./wire.gen";

type Schemas = components["schemas"];
export type AccountView = Schemas["AccountView"];
export type AimSeen = Schemas["AimSeen"];
export type Advice = Schemas["Advice"];
export type Answer = Schemas["Answer"];
export type ArrivalCard = Schemas["ArrivalCard"];
export type CostOf = Schemas["CostOf"];
export type GroundAccount = Schemas["GroundAccountView"];
export type LaserTest = Schemas["LaserTest"];
export type LandingCard = Schemas["LandingCard"];
export type LoadCard = Schemas["LoadCard"];
export type Answered = Schemas["Answered"];
export type Table = Schemas["Table"];
export type LoadLimit = Schemas["LoadLimit"];
export type MaterialCard = Schemas["MaterialCard"];
export type PatchCard = Schemas["PatchCard"];
export type Prices = Schemas["Prices"];
export type TestCard = Schemas["TestCard"];
export type VisitCard = Schemas["VisitCard"];
export type VoidCause = Schemas["VoidCause"];
export type WaterNow = Schemas["WaterNow"];
export type CabPage = Schemas["CabPage"];
export type CabScreen = Schemas["CabScreen"];
export type CallText = Schemas["CallText"];
export type CallView = Schemas["CallView"];
export type CantReason = Schemas["CantReason"];
export type Care = Schemas["Care"];
export type Compass = Schemas["Compass"];
export type Crossing = Schemas["Crossing"];
export type CutsCard = Schemas["CutsCard"];
export type DepthWarning = Schemas["DepthWarning"];
export type DesignPiece = Schemas["DesignPiece"];
export type Drawn = Schemas["Drawn"];
export type DigTo = Schemas["DigTo"];
export type DraftFault = Schemas["DraftFault"];
export type Ending = Schemas["Ending"];
export type Evidence = Schemas["Evidence"];
export type ExceptionKind = Schemas["ExceptionKind"];
export type FaceCard = Schemas["FaceCard"];
export type FaceStrip = Schemas["FaceStrip"];
export type FormField = Schemas["FormField"];
export type GoingMark = Schemas["GoingMark"];
export type Ground = Schemas["GroundView"];
export type HandSignal = Schemas["HandSignal"];
export type HeldBy = Schemas["HeldBy"];
export type ImportPoint = Schemas["ImportPoint"];
export type ImportPreview = Schemas["ImportPreview"];
export type Language = Schemas["Language"];
export type LaserSlope = Schemas["LaserSlope"];
export type Lane = Schemas["Lane"];
export type LaneWhat = Schemas["LaneWhat"];
export type Line = Schemas["Line"];
export type MachineCard = Schemas["MachineCard"];
export type MachineShape = Schemas["MachineShape"];
export type MarkCard = Schemas["MarkCard"];
export type MarkHistory = Schemas["MarkHistory"];
export type MachineThen = Schemas["MachineThen"];
export type Message = Schemas["Message"];
export type Mode = Schemas["Mode"];
export type Moment = Schemas["Moment"];
export type Near = Schemas["Near"];
export type NearMissCard = Schemas["NearMissCard"];
export type Nearness = Schemas["Nearness"];
export type Lasts = Schemas["Lasts"];
export type StandCard = Schemas["StandCard"];
export type Operator = Schemas["OperatorView"];
export type OverheadLine = Schemas["OverheadLine"];
export type Pile = Schemas["SitePile"];
export type Outcome = Schemas["Outcome"];
export type Paint = Schemas["Paint"];
export type Perhaps = Schemas["Perhaps"];
export type PocketRow = Schemas["PocketRow"];
export type PocketSheets = Schemas["PocketSheets"];
export type Point = Schemas["Point"];
export type Question = Schemas["Question"];
export type QuickWord = Schemas["QuickWord"];
export type CloseMissing = Schemas["CloseMissing"];
export type InspectedCard = Schemas["InspectedCard"];
export type InspectionResult = Schemas["InspectionResult"];
export type PhotoCard = Schemas["PhotoCard"];
export type QueryCard = Schemas["QueryCard"];
export type RecordCard = Schemas["RecordCard"];
export type Signature = Schemas["Signature"];
export type Visitor = Schemas["VisitorView"];
export type VisitorRun = Schemas["VisitorRun"];
export type VisitorCard = Schemas["VisitorCard"];
export type RainNow = Schemas["RainNow"];
export type Reminder = Schemas["Reminder"];
export type Rod = Schemas["Rod"];
export type Review = Schemas["ReviewView"];
export type Role = Schemas["Role"];
export type Ruling = Schemas["Ruling"];
export type Run = Schemas["Run"];
export type SumDone = Schemas["SumDone"];
export type ScreenUnit = Schemas["ScreenUnit"];
export type Sentence = Schemas["Sentence"];
export type SetUpCard = Schemas["SetUpCard"];
export type SetUpHistory = Schemas["SetUpHistory"];
export type Sheet = Schemas["SheetView"];
export type ProfilePoint = Schemas["ProfilePoint"];
export type SectionPoint = Schemas["SectionPoint"];
export type Shot = Schemas["Shot"];
export type StopCard = Schemas["StopCard"];
export type UnkeptStop = Schemas["UnkeptStop"];
export type SheetMark = Schemas["SheetMark"];
export type SheetFace = Schemas["SheetFace"];
export type Sight = Schemas["Sight"];
export type SiteDifference = Schemas["SiteDifference"];
export type StruckCard = Schemas["StruckCard"];
export type TouchedMark = Schemas["TouchedMark"];
export type Undone = Schemas["Undone"];
export type SiteDrafted = Schemas["SiteDrafted"];
export type SiteForm = Schemas["SiteForm"];
export type SiteFormOf = Schemas["FormOf"];
export type SiteSheet = Schemas["SiteSheet"];
export type Side = Schemas["Side"];
export type Where = Schemas["Where"];
export type SiteTarget = Schemas["SiteTarget"];
export type SlewCard = Schemas["SlewCard"];
export type Slip = Schemas["Slip"];
export type SoilClass = Schemas["SoilClass"];
export type SpotterCard = Schemas["SpotterCard"];
export type StartCard = Schemas["StartCard"];
export type TopicWord = Schemas["TopicWord"];
export type StartCheck = Schemas["StartCheck"];
export type StartCheckCard = Schemas["StartCheckCard"];
export type StepSide = Schemas["StepSide"];
export type SuspectCard = Schemas["SuspectCard"];
export type Supervisor = Schemas["SupervisorView"];
export type TicketCard = Schemas["TicketCard"];
export type EntryCard = Schemas["EntryCard"];
export type WayInCard = Schemas["WayInCard"];
export type ToldDays = Schemas["ToldDays"];
export type ToldPage = Schemas["ToldPage"];
export type Tolerance = Schemas["Tolerance"];
export type ToldOutCard = Schemas["ToldOutCard"];
export type Utility = Schemas["Utility"];
export type UtilityCard = Schemas["UtilityCard"];
export type Touched = Schemas["Touched"];
export type Verdict = Schemas["Verdict"];
export type WouldChange = Schemas["WouldChange"];

/** Who this phone is. */
export type Me = Schemas["Me"];

/** What a page says: a misspelt kind or field does not compile. */
export type Command = Schemas["Command"];
/** What a page says, of one kind. */
export type CommandOf<K extends Command["kind"]> = Extract<Command, { kind: K }>;
export type TakeReading = CommandOf<"take_reading">;

/** One request, kept until the hub has answered for its key. */
export type Asked = Schemas["Saying"];

/** Why not, and what to do, in every language; which refusal it was, as far as the hub has a name for it. */
export interface Refused extends Omit<Schemas["Problem"], "refusal"> {
  kind: string;
}

/** What the hub sends over the socket. */
export type FromHub = Schemas["FromHub"];
export type ByeReason = Schemas["Why"];

/** What a page sends over the socket. */
export type ToHub = Schemas["FromPhone"];

/** Where a code leads. */
export type JoinOffer = Schemas["Invitation"];

/** A page of the log, and a line of it. */
export type Restored = Schemas["Restored"];
export type LogEntry = Schemas["LogEntry"];
export type LogPage = Schemas["LogPage"];
export type LogLine = Schemas["LogLine"];
/** What is looked for in the log. */
export type LogQuery = NonNullable<operations["log_page"]["parameters"]["query"]>;
/** How a file of somebody else's is to be read. */
export type HowToRead = NonNullable<operations["import_preview"]["parameters"]["query"]>;

/** The codes for the tailgate. */
export type Codes = Schemas["Codes"];

/** What is typed of a thing of the site: texts, yes or no, lists and tables, as the site file has them. */
export type Typed = boolean | string | Typed[] | TypedTable;
export interface TypedTable {
  [key: string]: Typed;
}

/** Things as they are typed, and things that are to go. */
export interface SiteDraft extends Omit<Schemas["SiteDraft"], "put"> {
  put: (Omit<Schemas["Draft"], "typed"> & { typed: Typed })[];
}
