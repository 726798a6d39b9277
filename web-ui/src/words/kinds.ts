/** The kinds that the dictionaries must cover, so that a new one on the wire fails to compile here. */
import type { components } from "../wire.gen";

type Schemas = components["schemas"];
export type CantReason = Schemas["CantReason"];
export type Care = Schemas["Care"];
export type Due = Schemas["Due"];
export type Ending = Schemas["Ending"];
export type QuickWord = Schemas["QuickWord"];
export type Role = Schemas["Role"];
export type Ruling = Schemas["Ruling"];
export type SpotReason = Schemas["SpotReason"];
export type Standing = Schemas["Standing"];
export type { Way } from "../grade";
