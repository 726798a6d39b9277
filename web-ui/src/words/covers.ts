/** Which groups of words have a word for each name on the wire and for no other: a name that the hub adds does not compile here. */
import type { Way } from "../grade";
import type { components } from "../wire.gen";
import type { LogWords, OfficeWords, VisitWords, WorkWords } from "../words.gen/shape";
import type { Words } from "../words_later";

type Schemas = components["schemas"];

/** The words of a group, which must have each of these names and no other. */
export type Covers<
  Kind extends string,
  Group extends { [Key in Kind | keyof Group]: Key extends Kind ? unknown : never },
> = Group;

/** File names that the hub gives out, as the words name them: as-built.csv is as_built_csv. */
type Snake<Name extends string> = Parted<Parted<Name, "-">, ".">;
type Parted<Name extends string, By extends string> = Name extends `${infer Before}${By}${infer After}`
  ? `${Before}_${Parted<After, By>}`
  : Name;

/** The word's name for a name of the wire. */
export function snake<Name extends string>(name: Name): Snake<Name> {
  return name.replace(/[-.]/g, "_") as Snake<Name>;
}

type Cuts = Words["cuts"];
type Crew = Words["crew"];
type Review = OfficeWords["review"];
type LaneSpan = Exclude<Schemas["LaneWhat"]["kind"], "does" | "asks_in" | "in">;

/** Every group that the pages read by a name of the wire. */
export type Covered = [
  Covers<Schemas["Role"], Words["roles"]>,
  Covers<Schemas["Label"], Words["labels"]>,
  Covers<Schemas["StruckDo"], Words["struck"]["asks"]>,
  Covers<Schemas["Ending"], Words["endings"]>,
  Covers<Schemas["Ending"], Words["ended"]>,
  Covers<Schemas["QuickWord"], Words["quick"]>,
  Covers<Way, Words["ways"]>,
  Covers<Schemas["CantReason"], Words["cant"]>,
  Covers<Schemas["Care"], Words["care"]>,
  Covers<Schemas["SpotReason"], Words["spot"]>,
  Covers<Schemas["Due"], Words["due"]>,
  Covers<Schemas["Standing"], Words["standings"]>,
  Covers<Schemas["Way"], Words["account"]["way"]>,
  Covers<Schemas["TestStanding"], Words["account"]["standing"]>,
  Covers<Schemas["PatchStep"], Words["account"]["step"]>,
  Covers<Schemas["WaitCause"], Words["account"]["wait"]>,
  Covers<Schemas["Asks"], Cuts["also"]>,
  Covers<Schemas["SoilClass"], Cuts["classes"]>,
  Covers<Schemas["Lowered"], Cuts["lowered"]>,
  Covers<Schemas["InspectionWhy"], Cuts["dueWhy"]>,
  Covers<Schemas["PinState"], Cuts["pinStates"]>,
  Covers<Schemas["Sight"], Cuts["seenAt"]>,
  Covers<Schemas["Thumb"], Cuts["thumbs"]>,
  Covers<Schemas["Material"], Cuts["materials"]>,
  Covers<Schemas["UtilityKind"], Cuts["kinds"]>,
  Covers<Schemas["DepthRule"], Cuts["depthRules"]>,
  Covers<Schemas["DepthState"], Cuts["depthStates"]>,
  Covers<Schemas["StartCheck"], Crew["start"]["checks"]>,
  Covers<Schemas["StartCheck"], Crew["start"]["asks"]>,
  Covers<Schemas["HandSignal"], Crew["start"]["signals"]>,
  Covers<Schemas["Zone"], Crew["zones"]>,
  Covers<Schemas["Compass"], Crew["compass"]>,
  Covers<Schemas["Damp"], WorkWords["damp"]>,
  Covers<Schemas["TestStanding"], VisitWords["standing"]>,
  Covers<Schemas["InspectionResult"], VisitWords["results"]>,
  Covers<Schemas["Ruling"], OfficeWords["rulings"]>,
  Covers<Schemas["Verdict"], OfficeWords["verdicts"]>,
  Covers<Schemas["Answered"], OfficeWords["cuts"]["answers"]>,
  Covers<Schemas["Doing"], OfficeWords["account"]["doing"]>,
  Covers<Schemas["CostOf"]["kind"], OfficeWords["account"]["costOf"]>,
  Covers<Schemas["LoadLimit"], OfficeWords["account"]["limit"]>,
  Covers<Schemas["CloseMissing"]["kind"], OfficeWords["record"]["missingKind"]>,
  Covers<Schemas["InspectionResult"], OfficeWords["record"]["results"]>,
  Covers<Snake<Schemas["Table"]>, Review["tableNames"]>,
  Covers<Schemas["NotedKind"], Review["kinds"]>,
  Covers<Schemas["LaneOf"]["kind"], Review["laneOf"]>,
  Covers<LaneSpan, Review["spans"]>,
  Covers<Schemas["ScreenCard"]["kind"], Review["screens"]>,
  Covers<Schemas["Body"]["kind"], LogWords["kinds"]>,
  Covers<Schemas["Verdict"], LogWords["verdicts"]>,
];
