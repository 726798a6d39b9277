/** The wire as the hub describes it. Generated from hub/server/openapi.json by `npm run types`; never edited. */
export interface paths {
    "/api/address": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes another of the laptop's addresses into the codes. */
        post: operations["choose_address"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/codes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The codes of the day. */
        get: operations["day_codes"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/compute": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Works out a sum. Nothing is entered in the log: what is decided by it is said as a reading, a mark or an edge. */
        post: operations["compute"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/day/next": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Opens the next day. Every phone is out and joins anew, but for those of people who may be within a keep-out and the cab there,
         *     which stay until out and released; the asker's is let in again by the cookie in the answer.
         */
        post: operations["open_next_day"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/days": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The days of the log, oldest first. */
        get: operations["day_names"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/export": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The whole log as JSON Lines, its photos behind it: proves itself, and can be imported. */
        get: operations["whole_log"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/import/preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** What a table of points or a `LandXML` file would give on this site, with what was not understood. */
        post: operations["import_preview"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/join": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Comes in. The cookie in the answer is the phone's from now on. */
        post: operations["come_in"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/join/{code}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What a code lets in, before anybody has come in with it. */
        get: operations["invitation"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/live": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The socket of one screen. */
        get: operations["live"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/log": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of the log. */
        get: operations["log_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/log.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The log as a table. */
        get: operations["log_table"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/log/{seq}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One entry with its proof. */
        get: operations["log_entry"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/me": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who this phone is. */
        get: operations["who_am_i"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/openapi.json": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** This document; for everyone. */
        get: operations["document"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/photos/{photo}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /** Brings the bytes of a photo that was promised by `promise_photo`. The same again is answered in the same way. */
        put: operations["bring_photo"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/photos/{sha256}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A photo, by the hash of its bytes. The crew sees all, a visitor those of the runs that were chosen for them. */
        get: operations["photo_file"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/pocket-sheet": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What the rod must read at every mark, from each set-up that stands; for the ground and the supervisor. */
        get: operations["pocket_sheet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/replay": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What every screen showed at a moment, from the log alone. */
        get: operations["replay"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/report/who-told": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The same as a sheet that prints. */
        get: operations["who_told_sheet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/report/{kind}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A sheet that prints: the day, as built, or each run for the next crew. */
        get: operations["report_sheet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/review": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A day afterwards. */
        get: operations["review_of_day"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/say": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Says something. Kept on the phone and sent again until this has been answered. From a phone that was in on this day or the
         *     day before and is out, STOP alone is taken.
         */
        post: operations["take_saying"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/site/change": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Puts a draft in force, with its reason. The same key again gets the same answer. */
        post: operations["site_change"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/site/draft": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** What a draft would do: its faults beside their fields, what differs, what it touches. Nothing is changed. */
        post: operations["site_draft"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/site/file/{name}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One of the site's files: `site.toml`, `surfaces.xml`, `marks.csv`. Read again, they give the same site. */
        get: operations["site_export_file"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/site/form": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The forms of a site, and what is written in them now. */
        get: operations["site_form"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/table/{name}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A day as a table, or its as-built points as `LandXML`. */
        get: operations["day_table"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/try-restore": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Tries whether everything would come back: exported, taken into a scratch folder, proven there, every sheet compared. */
        post: operations["try_restore"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/who-told": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who told a machine to dig near a place, on each day that the question touches. */
        get: operations["who_told"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/healthz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether the hub is up; for everyone. */
        get: operations["healthz"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        /** @description A mark that was accepted is to be looked at and shot again. */
        AcceptanceVoided: {
            /** @description The mark. */
            mark: string;
            /**
             * Format: int64
             * @description The reading by which it was accepted.
             */
            reading: number;
            /** @description Why. */
            why: components["schemas"]["VoidCause"];
        };
        /** @description The supervisor's account of the day and the job. */
        AccountView: {
            /** @description When each bottom arrives. */
            arrivals: components["schemas"]["ArrivalCard"][];
            /** @description What it costs. */
            cost: components["schemas"]["CostCard"];
            gravel?: components["schemas"]["GravelCard"] | null;
            /** @description What each machine did. */
            hours: components["schemas"]["MachineHours"][];
            /** @description Where finish passes land, and where to aim. */
            landings: components["schemas"]["LandingCard"][];
            /** @description Lifts rammed. */
            lifts: components["schemas"]["LiftCard"][];
            /** @description Loads of the day, newest first. */
            loads: components["schemas"]["LoadCard"][];
            /** @description Loads by material and way. */
            materials: components["schemas"]["MaterialCard"][];
            /** @description Patches of the job. */
            patches: components["schemas"]["PatchCard"][];
            prices?: components["schemas"]["Prices"] | null;
            /** @description Rock. */
            rock: components["schemas"]["RockCard"];
            /** @description Soil still to be removed, by target. */
            soil_left: components["schemas"]["SoilLeft"][];
            /** @description Soil tests of the job. */
            tests: components["schemas"]["TestCard"][];
            /** @description Undercuts that wait for a supervisor. */
            undercuts: components["schemas"]["UndercutCard"][];
            /** @description Who is needed, in the order that costs least. */
            visits: components["schemas"]["VisitCard"][];
        };
        /** @description A supervisor takes a levelled point as a benchmark. */
        AddBenchmark: {
            /** @description The benchmark's name. */
            id: string;
            /**
             * Format: int64
             * @description The entry of the line.
             */
            levels: number;
            /** @description What it looks like, so that it can be found. */
            note: string;
            place?: components["schemas"]["Point"] | null;
            /** @description The point of it. */
            point: string;
        };
        /** @description Somebody writes a note. */
        AddNote: {
            /**
             * Format: int64
             * @description The entry that they are about.
             */
            entry?: number | null;
            /** @description The mark that they are about. */
            mark?: string | null;
            /** @description The words. */
            words: string;
        };
        /** @description A low spot is measured. */
        AddPatch: {
            depth?: components["schemas"]["Length"] | null;
            /** @description How long. */
            length: components["schemas"]["Length"];
            /** @description The mark in it. */
            mark: string;
            /** @description How wide. */
            width: components["schemas"]["Length"];
        };
        /** @description The hub has a photo's bytes on its disk. */
        AddPhoto: {
            /**
             * Format: int64
             * @description How many bytes.
             */
            bytes: number;
            /** @description Its name. */
            photo: string;
            /** @description SHA-256 of its bytes, in hex: the name of its file. */
            sha256: string;
        };
        /** @description The paper of a load that was counted. */
        AddTicket: {
            /**
             * Format: int64
             * @description The load's entry.
             */
            load: number;
            /**
             * Format: double
             * @description Loose cubic yards on it.
             */
            loose_cy?: number | null;
            /** @description The ticket's number. */
            ticket: string;
            /**
             * Format: double
             * @description Tons on it.
             */
            tons?: number | null;
        };
        /** @description Where phones reach the hub. */
        Address: {
            /** @description The host. */
            host: string;
            /**
             * Format: int32
             * @description The port.
             */
            port: number;
        };
        /** @description Where to aim, with what it rests on. */
        Advice: {
            /** @description The aim to set: where the mean should land, less where it lands by itself. */
            aim: components["schemas"]["Length"];
            /**
             * Format: double
             * @description What a spot costs there.
             */
            cost: number;
            /**
             * Format: double
             * @description What a spot costs with the mean on the target.
             */
            cost_on_target: number;
            /** @description The cost along the means that are allowed, to the hundredth. */
            curve: components["schemas"]["AimPoint"][];
            /** @description The aim lies between here … */
            from: components["schemas"]["Length"];
            /** @description Where the mean should land. */
            mean: components["schemas"]["Length"];
            /** @description … and here, eight times in ten, by what so few landings can tell. */
            to: components["schemas"]["Length"];
        };
        /** @description Where to aim, or why that can't be said. */
        AdviceCard: {
            /** @description With its curve. */
            advice: components["schemas"]["Advice"];
            /** @enum {string} */
            kind: "aim";
        } | {
            /** @enum {string} */
            kind: "no_prices";
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "none";
        });
        /** @description A supervisor proposes which side each of two machines keeps out of. */
        AgreeSlew: {
            /** @description A word about it, such as from where to where it holds. */
            note?: string;
            /** @description The two machines. */
            sides: components["schemas"]["SlewSide"][];
        };
        /** @description An aim in force. */
        AimCard: {
            /** @description The aim. */
            aim: components["schemas"]["Length"];
            /** @description The mark or target. */
            on: string;
        };
        /** @description A point of the curve. */
        AimPoint: {
            /** @description Where the mean lands, relative to the target. */
            at: components["schemas"]["Length"];
            /**
             * Format: double
             * @description What a spot then costs.
             */
            cost: number;
        };
        /** @description What a spot off the target costs. */
        AimPrices: {
            /**
             * Format: double
             * @description A shallow spot in soil.
             */
            shallow: number;
            /**
             * Format: double
             * @description A shallow spot in rock or old concrete.
             */
            shallow_in_rock: number;
            /**
             * Format: double
             * @description The area that one reading stands for, in square feet.
             */
            spot_sf: number;
            /**
             * Format: double
             * @description A spot below the low limit.
             */
            too_deep: number;
        };
        /** @description What stood where an aim is set. */
        AimSeen: {
            /** @description The aim that was set there; zero without one. */
            aim: components["schemas"]["Length"];
            /** @description The mark or target. */
            on: string;
            /**
             * Format: int32
             * @description The revision of the target.
             */
            revision: number;
        };
        /** @description An aim was set. */
        AimSet: {
            /** @description The aim. */
            aim: components["schemas"]["Length"];
            /** @description Marks or targets. */
            on: string[];
            /** @description Why. */
            why: string;
        };
        /** @description A face that was left. */
        Alarm: {
            /**
             * Format: int64
             * @description The entry of the newest alarm: what an inspection names that brings people back.
             */
            alarm?: number;
            /** @description Who said what led to it. */
            by: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why. */
            why: components["schemas"]["AlarmWhy"];
        };
        /** @description Why a face is left. */
        AlarmWhy: {
            /** @enum {string} */
            kind: "pins";
            /** @description Which pins. */
            pins: string;
        } | {
            /** @enum {string} */
            kind: "slough";
        } | {
            /** @enum {string} */
            kind: "said";
        };
        /** @description A supervisor lets work go on. */
        AllowDig: {
            /** @description What holds it back. */
            held: components["schemas"]["HeldBy"];
            /** @description Why it goes on, and on whose word. */
            why: string;
        };
        /** @description A footing, drive or ditch along a line, with grades, vertical curves and steps. */
        Along: {
            /** @description The line on the plan. */
            axis: components["schemas"]["Axis"];
            /** @description Where its grades meet, up-station. */
            corners: components["schemas"]["Corner"][];
            /** @description Width to the left, looking up-station. */
            left: components["schemas"]["Length"];
            /** @description Width to the right, looking up-station. */
            right: components["schemas"]["Length"];
            /** @description Its steps, up-station. */
            steps?: components["schemas"]["ProfileStep"][];
        };
        /** @description A supervisor amends a signed day. */
        AmendDay: {
            /**
             * Format: int64
             * @description The entry that is amended.
             */
            entry: number;
            /** @description The second signature. */
            signature: components["schemas"]["Signature"];
            /** @description What is to be read with it. */
            words: string;
        };
        /** @description An amendment. */
        AmendedCard: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description The day whose entry it is. */
            day: string;
            /**
             * Format: int64
             * @description The entry that is amended.
             */
            entry: number;
            /** @description Whose signature it has. */
            name: string;
            /** @description What is to be read with it. */
            words: string;
        };
        /** @description How much, as it is called. */
        Amount: {
            /**
             * Format: int32
             * @description Halves of a tenth of a foot: 7 is 3½ tenths.
             */
            half_tenths: number;
        } | {
            /**
             * Format: int32
             * @description Tenths of a foot, said in feet: 12 is 1.2 FEET.
             */
            tenths_of_feet: number;
        } | {
            /**
             * Format: int32
             * @description Hundredths of a foot, said in feet where tenths are too coarse for the tolerance: 12 is 0.12 FEET, 0 is less
             *     than 0.01 FEET.
             */
            hundredths_of_feet: number;
        };
        /** @description What a request came to. */
        Answer: {
            /**
             * Format: int64
             * @description The first entry made for it; 0 when there was nothing left to do.
             */
            first: number;
            /**
             * Format: int64
             * @description The last entry made for it; 0 when there was nothing left to do.
             */
            last: number;
            /** @description What came of it. */
            outcome: components["schemas"]["Outcome"];
        };
        /** @description The engineer's answer, as a supervisor has it. */
        AnswerQuery: {
            /** @description The answer. */
            answer: string;
            /** @description Who answered, and where it is written. */
            answered_by: string;
            /** @description Which. */
            query: string;
            /** @description The target whose revision in force carries it out. */
            target?: string | null;
        };
        /**
         * @description An answer of an owner.
         * @enum {string}
         */
        Answered: "marked" | "none_here" | "silent";
        /** @description The revision of a target that carries an answer out. */
        AnsweringRevision: {
            /**
             * Format: int32
             * @description Its revision.
             */
            revision: number;
            /** @description The target. */
            target: string;
        };
        /** @description When a bottom arrives. */
        ArrivalCard: {
            /** @description When it is at grade, if it digs on. */
            at: components["schemas"]["Time"];
            /** @description The pace is from other marks of today: this one has a single reading. */
            borrowed: boolean;
            /** @description When that reading was made. */
            from: components["schemas"]["Time"];
            /** @description It does not dig now: the moments wait with it. */
            held: boolean;
            latest?: components["schemas"]["Time"] | null;
            /** @description What was left at the last reading, to where it is aimed. */
            left: components["schemas"]["Length"];
            /** @description When somebody must look. */
            look: components["schemas"]["Time"];
            /** @description The machine. */
            machine: string;
            /** @description The mark that it digs at. */
            mark: string;
            /** @description How fast it goes down. */
            pace: components["schemas"]["Pace"];
            /** @description What was left at the last reading to the low limit. */
            room: components["schemas"]["Length"];
            /** @description At the fast pace. */
            soonest: components["schemas"]["Time"];
        };
        /** @description Somebody on foot asks to come in. The same visit once more asks again. */
        AskIn: {
            /** @description The machine whose keep-out it is. */
            machine: string;
            /** @description Where to, when it is a mark. */
            mark?: string | null;
            /**
             * Format: int32
             * @description How many come along, whom the asker leads in and out.
             */
            others?: number | null;
            /** @description The visit: a name that the phone makes, 8 to 64 letters, digits, `-`, `_`, `.` or `:`, used for one stay alone. */
            visit: string;
        };
        /** @description A supervisor asks for an inspection. */
        AskInspection: {
            /** @description Who is asked: an office or a name. */
            of: string;
            /** @description The targets that it is about. */
            targets?: string[];
            /** @description What is to be inspected, such as `footing trench`. */
            what: string;
        };
        /** @description Somebody asks the engineer. */
        AskQuery: {
            /** @description Who is asked. */
            of: string;
            /** @description The marks and targets that it is about. */
            on: string[];
            /** @description A photo with it, by the name that the phone gave. */
            photo?: string | null;
            /** @description The question. */
            question: string;
            /** @description Calls there wait for the answer; else work carries on elsewhere and there. */
            stop: boolean;
        };
        /** @description Nobody has answered: it is asked again, louder. */
        AskRepeated: {
            /** @description The machine. */
            machine: string;
            /** @description Who asks. */
            person: string;
            /** @description The visit. */
            visit: string;
        };
        /** @description Whoever asked is not coming in. */
        AskWithdrawn: {
            /** @description The machine. */
            machine: string;
            /** @description Who. */
            person: string;
            /** @description The visit. */
            visit: string;
        };
        /** @description What the tester has dug out. */
        AskedUndercut: {
            /** @description Below the dig-to. */
            depth: components["schemas"]["Length"];
            from?: components["schemas"]["Length"] | null;
            /**
             * Format: int32
             * @description In how many lifts.
             */
            lifts: number;
            /** @description What fills it again. */
            material: string;
            to?: components["schemas"]["Length"] | null;
            /** @description How wide, half to each side. */
            width: components["schemas"]["Length"];
        };
        /**
         * @description What a rule asks of a cut that no reading shows.
         * @enum {string}
         */
        Asks: "falling_loads" | "mobile_equipment" | "atmosphere" | "water" | "edge";
        /** @description Something at a face. */
        AtFace: {
            /** @enum {string} */
            what: "water";
        } | {
            /** @enum {string} */
            what: "crack";
        } | {
            /** @enum {string} */
            what: "rain";
        } | {
            /** @enum {string} */
            what: "vibration";
        } | {
            /** @description From the crest. */
            back: components["schemas"]["Length"];
            /** @enum {string} */
            what: "load";
        } | {
            /** @enum {string} */
            what: "trimmed";
        } | {
            /** @description Back from the face. */
            back: components["schemas"]["Length"];
            /** @description Up. */
            height: components["schemas"]["Length"];
            /** @description Along the face. */
            length: components["schemas"]["Length"];
            /** @enum {string} */
            what: "slough";
        };
        /** @description A line on the plan: where it starts, and its pieces. */
        Axis: {
            /** @description The station there. */
            first: components["schemas"]["Length"];
            /** @description Straights and arcs, each from where the one before it ends. */
            pieces: components["schemas"]["Piece"][];
            /** @description Where it starts. */
            start: components["schemas"]["Point"];
        };
        /**
         * @description What brings a mark back once its paint is gone.
         * @enum {string}
         */
        Back: "laid" | "ties" | "nothing" | "not_said";
        /** @description What a set-up's height rests on. */
        Basis: {
            /** @description The rod value. */
            backsight: components["schemas"]["Length"];
            /** @description The benchmark of the backsight. */
            benchmark: string;
            /** @description Height of instrument: benchmark + backsight; of a sloped laser, its plane's height over the laser itself. */
            height: components["schemas"]["Length"];
            /** @description The rod. */
            rod: string;
            /** @description The rod value as typed. */
            text: string;
        };
        /** @description What was said of the battery of a cab's phone. */
        BatterySaid: {
            /** @description About to go out; else charging. */
            low: boolean;
            /** @description The machine. */
            machine: string;
            /**
             * Format: int32
             * @description In percent, when said.
             */
            percent?: number | null;
        };
        /** @description A ground person spots for a machine, in the place of whoever did. */
        BeSpotter: {
            /** @description Which. */
            machine: string;
        };
        /**
         * @description What became of a reading.
         * @enum {string}
         */
        Became: "taken" | "asked" | "late";
        /** @description A bed of gravel under a target. */
        Bed: {
            /**
             * Format: double
             * @description Its area, in square feet.
             */
            area_sf: number;
            /** @description The target whose stack has the layer. */
            target: string;
        };
        /** @description A bench. */
        BenchCard: {
            /** @description Up. */
            rise: components["schemas"]["Length"];
            /** @description The tread behind it. */
            tread: components["schemas"]["Length"];
        };
        /** @description How high the verticals of benches may be. */
        BenchRule: {
            /** @description Cohesive soil alone. */
            cohesive_alone: boolean;
            /** @description The lowest. */
            first: components["schemas"]["Length"];
            /** @description Each of the others. */
            other: components["schemas"]["Length"];
            /** @description The rule. */
            section: string;
        };
        /** @description Benches by class; none where the rules draw none. */
        Benches: {
            a?: components["schemas"]["BenchRule"] | null;
            b?: components["schemas"]["BenchRule"] | null;
        };
        /** @description A point of known elevation. */
        Benchmark: {
            /** @description One standard deviation of its elevation. */
            doubt: components["schemas"]["Length"];
            /** @description Elevation on the site's datum. */
            elevation: components["schemas"]["Length"];
            /** @description Its name on the ground. */
            id: string;
            /** @description What it looks like, so that it can be found. */
            note?: string;
            place?: components["schemas"]["Point"] | null;
        };
        /** @description A benchmark was added. */
        BenchmarkAdded: {
            /** @description The benchmark. */
            benchmark: components["schemas"]["Benchmark"];
            /**
             * Format: int64
             * @description The entry of the line that it comes from.
             */
            levels: number;
        };
        /**
         * @description Which cuts a rule binds.
         * @enum {string}
         */
        Binds: "every_cut" | "trenches";
        /** @description Two shots of one mark, the second blind. */
        BlindPair: {
            /** @description The second elevation less the first. */
            difference: components["schemas"]["Length"];
            /**
             * Format: int64
             * @description The entry of the first.
             */
            first: number;
            /** @description The mark. */
            mark: string;
            /** @description Who shot, and with which rod: the first, then the blind one. */
            shots: components["schemas"]["ReadBy"][];
        };
        /** @description What happened, in the past tense. Old kinds are lifted, never changed. */
        Body: (components["schemas"]["DayOpened"] & {
            /** @enum {string} */
            kind: "day_opened";
        }) | (components["schemas"]["SiteTaken"] & {
            /** @enum {string} */
            kind: "site_taken";
        }) | (components["schemas"]["SiteChangeFound"] & {
            /** @enum {string} */
            kind: "site_change_found";
        }) | (components["schemas"]["SiteRevised"] & {
            /** @enum {string} */
            kind: "site_revised";
        }) | (components["schemas"]["Joined"] & {
            /** @enum {string} */
            kind: "joined";
        }) | (components["schemas"]["ScreenChanged"] & {
            /** @enum {string} */
            kind: "screen_changed";
        }) | (components["schemas"]["PhoneRemoved"] & {
            /** @enum {string} */
            kind: "phone_removed";
        }) | (components["schemas"]["CodesRenewed"] & {
            /** @enum {string} */
            kind: "codes_renewed";
        }) | (components["schemas"]["CodesLast"] & {
            /** @enum {string} */
            kind: "codes_last";
        }) | (components["schemas"]["CabGiven"] & {
            /** @enum {string} */
            kind: "cab_given";
        }) | (components["schemas"]["PersonConfirmed"] & {
            /** @enum {string} */
            kind: "person_confirmed";
        }) | (components["schemas"]["PhoneStays"] & {
            /** @enum {string} */
            kind: "phone_stays";
        }) | (components["schemas"]["WhoSaid"] & {
            /** @enum {string} */
            kind: "who_said";
        }) | (components["schemas"]["LaserSetUp"] & {
            /** @enum {string} */
            kind: "laser_set_up";
        }) | (components["schemas"]["SetUpRestated"] & {
            /** @enum {string} */
            kind: "set_up_restated";
        }) | (components["schemas"]["SetUpProven"] & {
            /** @enum {string} */
            kind: "set_up_proven";
        }) | (components["schemas"]["SetUpClosed"] & {
            /** @enum {string} */
            kind: "set_up_closed";
        }) | (components["schemas"]["CheckShot"] & {
            /** @enum {string} */
            kind: "check_shot";
        }) | (components["schemas"]["SetUpDoubted"] & {
            /** @enum {string} */
            kind: "set_up_doubted";
        }) | (components["schemas"]["LaserTested"] & {
            /** @enum {string} */
            kind: "laser_tested";
        }) | (components["schemas"]["LevelsRun"] & {
            /** @enum {string} */
            kind: "levels_run";
        }) | (components["schemas"]["BenchmarkAdded"] & {
            /** @enum {string} */
            kind: "benchmark_added";
        }) | (components["schemas"]["SetUpsCompared"] & {
            /** @enum {string} */
            kind: "set_ups_compared";
        }) | (components["schemas"]["BlindPair"] & {
            /** @enum {string} */
            kind: "blind_pair";
        }) | (components["schemas"]["CheckFellDue"] & {
            /** @enum {string} */
            kind: "check_fell_due";
        }) | (components["schemas"]["SuspectWindow"] & {
            /** @enum {string} */
            kind: "suspect_window";
        }) | (components["schemas"]["MarkRepeated"] & {
            /** @enum {string} */
            kind: "mark_repeated";
        }) | (components["schemas"]["QuestionSettled"] & {
            /** @enum {string} */
            kind: "question_settled";
        }) | (components["schemas"]["ReadingTaken"] & {
            /** @enum {string} */
            kind: "reading_taken";
        }) | (components["schemas"]["ReadingAsked"] & {
            /** @enum {string} */
            kind: "reading_asked";
        }) | (components["schemas"]["ReadingLate"] & {
            /** @enum {string} */
            kind: "reading_late";
        }) | (components["schemas"]["ReadingCalledWrong"] & {
            /** @enum {string} */
            kind: "reading_called_wrong";
        }) | (components["schemas"]["UnsentDropped"] & {
            /** @enum {string} */
            kind: "unsent_dropped";
        }) | (components["schemas"]["MarksLaid"] & {
            /** @enum {string} */
            kind: "marks_laid";
        }) | (components["schemas"]["MarksChecked"] & {
            /** @enum {string} */
            kind: "marks_checked";
        }) | (components["schemas"]["MarksScraped"] & {
            /** @enum {string} */
            kind: "marks_scraped";
        }) | (components["schemas"]["TiesTaken"] & {
            /** @enum {string} */
            kind: "ties_taken";
        }) | (components["schemas"]["DiagonalsMeasured"] & {
            /** @enum {string} */
            kind: "diagonals_measured";
        }) | (components["schemas"]["EdgeRead"] & {
            /** @enum {string} */
            kind: "edge_read";
        }) | (components["schemas"]["CallSent"] & {
            /** @enum {string} */
            kind: "call_sent";
        }) | (components["schemas"]["CallDelivered"] & {
            /** @enum {string} */
            kind: "call_delivered";
        }) | (components["schemas"]["CallShown"] & {
            /** @enum {string} */
            kind: "call_shown";
        }) | (components["schemas"]["CallGot"] & {
            /** @enum {string} */
            kind: "call_got";
        }) | (components["schemas"]["CallEnded"] & {
            /** @enum {string} */
            kind: "call_ended";
        }) | (components["schemas"]["LookAsked"] & {
            /** @enum {string} */
            kind: "look_asked";
        }) | (components["schemas"]["CantSaid"] & {
            /** @enum {string} */
            kind: "cant_said";
        }) | (components["schemas"]["ScreenNoticed"] & {
            /** @enum {string} */
            kind: "screen_noticed";
        }) | (components["schemas"]["Stopped"] & {
            /** @enum {string} */
            kind: "stopped";
        }) | (components["schemas"]["StopLifted"] & {
            /** @enum {string} */
            kind: "stop_lifted";
        }) | (components["schemas"]["StartCheckSaid"] & {
            /** @enum {string} */
            kind: "start_check_said";
        }) | (components["schemas"]["DayReady"] & {
            /** @enum {string} */
            kind: "day_ready";
        }) | (components["schemas"]["NearFound"] & {
            /** @enum {string} */
            kind: "near_found";
        }) | (components["schemas"]["SlewProposed"] & {
            /** @enum {string} */
            kind: "slew_proposed";
        }) | (components["schemas"]["SlewAgreed"] & {
            /** @enum {string} */
            kind: "slew_agreed";
        }) | (components["schemas"]["SlewVoided"] & {
            /** @enum {string} */
            kind: "slew_voided";
        }) | (components["schemas"]["SpotterSet"] & {
            /** @enum {string} */
            kind: "spotter_set";
        }) | (components["schemas"]["SpotterGone"] & {
            /** @enum {string} */
            kind: "spotter_gone";
        }) | (components["schemas"]["BatterySaid"] & {
            /** @enum {string} */
            kind: "battery_said";
        }) | (components["schemas"]["NearMissOpened"] & {
            /** @enum {string} */
            kind: "near_miss_opened";
        }) | (components["schemas"]["NearMissTold"] & {
            /** @enum {string} */
            kind: "near_miss_told";
        }) | (components["schemas"]["AimSet"] & {
            /** @enum {string} */
            kind: "aim_set";
        }) | (components["schemas"]["SiteChanged"] & {
            /** @enum {string} */
            kind: "site_changed";
        }) | (components["schemas"]["TargetRevised"] & {
            /** @enum {string} */
            kind: "target_revised";
        }) | (components["schemas"]["TargetTyped"] & {
            /** @enum {string} */
            kind: "target_typed";
        }) | (components["schemas"]["TargetSeen"] & {
            /** @enum {string} */
            kind: "target_seen";
        }) | (components["schemas"]["Ruled"] & {
            /** @enum {string} */
            kind: "ruled";
        }) | (components["schemas"]["MachinePlaced"] & {
            /** @enum {string} */
            kind: "machine_placed";
        }) | (components["schemas"]["MachineMoved"] & {
            /** @enum {string} */
            kind: "machine_moved";
        }) | (components["schemas"]["LoadCounted"] & {
            /** @enum {string} */
            kind: "load_counted";
        }) | (components["schemas"]["TicketAdded"] & {
            /** @enum {string} */
            kind: "ticket_added";
        }) | (components["schemas"]["LoadTakenBack"] & {
            /** @enum {string} */
            kind: "load_taken_back";
        }) | (components["schemas"]["SoilMeasured"] & {
            /** @enum {string} */
            kind: "soil_measured";
        }) | (components["schemas"]["GravelOrdered"] & {
            /** @enum {string} */
            kind: "gravel_ordered";
        }) | (components["schemas"]["GravelShort"] & {
            /** @enum {string} */
            kind: "gravel_short";
        }) | (components["schemas"]["PatchNeeded"] & {
            /** @enum {string} */
            kind: "patch_needed";
        }) | (components["schemas"]["PatchMoved"] & {
            /** @enum {string} */
            kind: "patch_moved";
        }) | (components["schemas"]["Compacted"] & {
            /** @enum {string} */
            kind: "compacted";
        }) | (components["schemas"]["SoilTested"] & {
            /** @enum {string} */
            kind: "soil_tested";
        }) | (components["schemas"]["TestVoided"] & {
            /** @enum {string} */
            kind: "test_voided";
        }) | (components["schemas"]["UndercutProposed"] & {
            /** @enum {string} */
            kind: "undercut_proposed";
        }) | (components["schemas"]["UndercutConfirmed"] & {
            /** @enum {string} */
            kind: "undercut_confirmed";
        }) | (components["schemas"]["RockPointed"] & {
            /** @enum {string} */
            kind: "rock_pointed";
        }) | (components["schemas"]["PricesSet"] & {
            /** @enum {string} */
            kind: "prices_set";
        }) | (components["schemas"]["WaitingSaid"] & {
            /** @enum {string} */
            kind: "waiting_said";
        }) | (components["schemas"]["WorkedAgain"] & {
            /** @enum {string} */
            kind: "worked_again";
        }) | (components["schemas"]["FaceInspected"] & {
            /** @enum {string} */
            kind: "face_inspected";
        }) | (components["schemas"]["SoilRetyped"] & {
            /** @enum {string} */
            kind: "soil_retyped";
        }) | (components["schemas"]["FaceRevised"] & {
            /** @enum {string} */
            kind: "face_revised";
        }) | (components["schemas"]["DaylightFound"] & {
            /** @enum {string} */
            kind: "daylight_found";
        }) | (components["schemas"]["SeenAtFace"] & {
            /** @enum {string} */
            kind: "seen_at_face";
        }) | (components["schemas"]["RainBegan"] & {
            /** @enum {string} */
            kind: "rain_began";
        }) | (components["schemas"]["RainStopped"] & {
            /** @enum {string} */
            kind: "rain_stopped";
        }) | (components["schemas"]["WaterPumped"] & {
            /** @enum {string} */
            kind: "water_pumped";
        }) | (components["schemas"]["SloughSeen"] & {
            /** @enum {string} */
            kind: "slough_seen";
        }) | (components["schemas"]["PinsRead"] & {
            /** @enum {string} */
            kind: "pins_read";
        }) | (components["schemas"]["FaceAlarmed"] & {
            /** @enum {string} */
            kind: "face_alarmed";
        }) | (components["schemas"]["FaceLeft"] & {
            /** @enum {string} */
            kind: "face_left";
        }) | (components["schemas"]["UnderLeftFace"] & {
            /** @enum {string} */
            kind: "under_left_face";
        }) | (components["schemas"]["TargetOwes"] & {
            /** @enum {string} */
            kind: "depth_owed";
        }) | (components["schemas"]["TicketChecked"] & {
            /** @enum {string} */
            kind: "ticket_checked";
        }) | (components["schemas"]["PaintSaid"] & {
            /** @enum {string} */
            kind: "paint_said";
        }) | (components["schemas"]["LineStruck"] & {
            /** @enum {string} */
            kind: "line_struck";
        }) | (components["schemas"]["PotholeDug"] & {
            /** @enum {string} */
            kind: "pothole_dug";
        }) | (components["schemas"]["DigAllowed"] & {
            /** @enum {string} */
            kind: "dig_allowed";
        }) | (components["schemas"]["DayClosed"] & {
            /** @enum {string} */
            kind: "day_closed";
        }) | (components["schemas"]["DaySigned"] & {
            /** @enum {string} */
            kind: "day_signed";
        }) | (components["schemas"]["DayAmended"] & {
            /** @enum {string} */
            kind: "day_amended";
        }) | (components["schemas"]["NoteAdded"] & {
            /** @enum {string} */
            kind: "note_added";
        }) | (components["schemas"]["VisitorNoticed"] & {
            /** @enum {string} */
            kind: "visitor_noticed";
        }) | (components["schemas"]["RunsShown"] & {
            /** @enum {string} */
            kind: "runs_shown";
        }) | (components["schemas"]["InspectionAsked"] & {
            /** @enum {string} */
            kind: "inspection_asked";
        }) | (components["schemas"]["Inspected"] & {
            /** @enum {string} */
            kind: "inspected";
        }) | (components["schemas"]["InspectionSigned"] & {
            /** @enum {string} */
            kind: "inspection_signed";
        }) | (components["schemas"]["InspectionVoided"] & {
            /** @enum {string} */
            kind: "inspection_voided";
        }) | (components["schemas"]["AcceptanceVoided"] & {
            /** @enum {string} */
            kind: "acceptance_voided";
        }) | (components["schemas"]["QueryOpened"] & {
            /** @enum {string} */
            kind: "query_opened";
        }) | (components["schemas"]["QueryAnswered"] & {
            /** @enum {string} */
            kind: "query_answered";
        }) | (components["schemas"]["PhotoPromised"] & {
            /** @enum {string} */
            kind: "photo_promised";
        }) | (components["schemas"]["PhotoAdded"] & {
            /** @enum {string} */
            kind: "photo_added";
        }) | (components["schemas"]["PhotoGivenUp"] & {
            /** @enum {string} */
            kind: "photo_given_up";
        }) | (components["schemas"]["HeadMismatch"] & {
            /** @enum {string} */
            kind: "head_mismatch";
        }) | (components["schemas"]["EntryAsked"] & {
            /** @enum {string} */
            kind: "entry_asked";
        }) | (components["schemas"]["AskRepeated"] & {
            /** @enum {string} */
            kind: "ask_repeated";
        }) | (components["schemas"]["AskWithdrawn"] & {
            /** @enum {string} */
            kind: "ask_withdrawn";
        }) | (components["schemas"]["EntryDelayed"] & {
            /** @enum {string} */
            kind: "entry_delayed";
        }) | (components["schemas"]["EntryRefused"] & {
            /** @enum {string} */
            kind: "entry_refused";
        }) | (components["schemas"]["BucketIsDown"] & {
            /** @enum {string} */
            kind: "bucket_is_down";
        }) | (components["schemas"]["PersonIn"] & {
            /** @enum {string} */
            kind: "person_in";
        }) | (components["schemas"]["PersonOut"] & {
            /** @enum {string} */
            kind: "person_out";
        }) | (components["schemas"]["OutSeen"] & {
            /** @enum {string} */
            kind: "out_seen";
        }) | (components["schemas"]["ReleaseRefused"] & {
            /** @enum {string} */
            kind: "release_refused";
        }) | (components["schemas"]["Released"] & {
            /** @enum {string} */
            kind: "released";
        }) | (components["schemas"]["LinkNoticed"] & {
            /** @enum {string} */
            kind: "link_noticed";
        });
        /** @description The operator has held BUCKET DOWN · LEVER LOCKED for a second. */
        BucketDown: {
            /** @description The visits that the screen named while it was held: no other is answered. */
            answers?: string[];
        };
        /** @description The operator held BUCKET DOWN · LEVER LOCKED. */
        BucketIsDown: {
            /** @description The visits that it answers: those that the operator's screen named. */
            answers: string[];
            /** @description The machine. */
            machine: string;
            /** @description Who held it. */
            operator: string;
            /** @description Their people. */
            people: string[];
        };
        /** @description A mark as it was last measured. */
        BuiltMark: components["schemas"]["Text"] & {
            /** @description When the last shot was made. */
            at: components["schemas"]["Time"];
            /** @description Who made it. */
            by: string;
            /** @description What is asked there has changed since: the difference is against the target of then. */
            changed?: boolean;
            /** @description The day of the last shot. */
            day: string;
            dev?: components["schemas"]["Length"] | null;
            dig_to?: components["schemas"]["Length"] | null;
            /** @description What a laser in doubt has to do with it. */
            doubt: components["schemas"]["LaserDoubt"];
            /** @description Measured by the last shot. */
            elevation: components["schemas"]["Length"];
            /** @description Its soil failed a test, and no later one took its place. */
            failed?: boolean;
            guard?: components["schemas"]["Length"] | null;
            if_moved?: components["schemas"]["Length"] | null;
            /** @description The mark. */
            mark: string;
            mean?: components["schemas"]["Length"] | null;
            /** @description Booked on paper, and typed in afterwards. */
            paper?: boolean;
            /** @description The gravel patch over it. */
            patch?: string | null;
            place?: components["schemas"]["Point"] | null;
            /** @description On grade, on the target as it is now, from a laser that was found good afterwards or whose fault changes nothing. */
            proven: boolean;
            /**
             * Format: int64
             * @description The entry of the last reading.
             */
            reading: number;
            /**
             * Format: int32
             * @description Readings of the mark that count, this one with them.
             */
            readings: number;
            /**
             * Format: int32
             * @description That target's revision.
             */
            revision?: number | null;
            ruling?: components["schemas"]["Ruling"] | null;
            /** @description The paint is gone. */
            scraped: boolean;
            /** @description On which set-up. */
            set_up: string;
            side?: components["schemas"]["StepSide"] | null;
            /** @description The surface that was read, when it is not the ground to dig to. */
            surface?: string | null;
            /** @description The target that it was judged against; none for a spot elevation. */
            target?: string | null;
            verdict?: components["schemas"]["Verdict"] | null;
            void?: components["schemas"]["VoidCause"] | null;
        };
        /** @description Who asks, or who said an entry. */
        By: {
            /** @description The phone or laptop; `hub` for the hub itself. */
            device: string;
            /** @description The machine whose cab this device sits in. */
            machine?: string | null;
            /** @description Name or initials, as given at joining. */
            person: string;
            /** @description What this device may do. */
            roles: components["schemas"]["Role"][];
        };
        /** @description A cab waits for another phone. */
        CabGiven: {
            /** @description Which machine's. */
            machine: string;
        };
        /** @description What an operator's page says of itself: what a live link and a visible page do not tell. */
        CabPage: {
            /**
             * @description A panel or the plan lies over the number.
             * @default false
             */
            covered?: boolean;
            /**
             * @description Nobody has tapped it since it was loaded: it can make no sound.
             * @default false
             */
            mute?: boolean;
        };
        /** @description What fills the cab's screen. Anything but a live call shows no number. */
        CabScreen: {
            /** @description Every machine, not this one alone. */
            all: boolean;
            /** @description Who pressed. */
            by: string;
            /** @enum {string} */
            kind: "stop";
            /**
             * Format: int64
             * @description The entry of the newest press: what sounds again.
             */
            press: number;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why, in the words of the one who pressed; may be empty. */
            why: string;
        } | {
            /**
             * Format: int64
             * @description The alarm that I AM AWAY names.
             */
            alarm: number;
            /** @enum {string} */
            kind: "leave_face";
            /** @description The name that people read. */
            name: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why. */
            why: components["schemas"]["AlarmWhy"];
            /** @description Which. */
            zone: string;
        } | {
            /** @enum {string} */
            kind: "way_in";
        } | {
            /** @enum {string} */
            kind: "pause";
            /** @description Which set-up. */
            set_up: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why. */
            why: components["schemas"]["DoubtReason"];
        } | {
            /** @enum {string} */
            kind: "new_target";
            /** @description Its name. */
            name: string;
            /**
             * Format: int32
             * @description Its revision.
             */
            revision: number;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Its id, for the SEEN press. */
            target: string;
        } | {
            /** @description The call. */
            call: components["schemas"]["CallView"];
            /** @enum {string} */
            kind: "call";
        } | {
            held?: components["schemas"]["Text"] | null;
            /** @enum {string} */
            kind: "old";
            /** @description The mark it was about. */
            mark?: string | null;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why. */
            why: components["schemas"]["Ending"];
        } | {
            /** @enum {string} */
            kind: "off_site";
        } | {
            /** @enum {string} */
            kind: "no_call";
        };
        /** @description A call reached the operator's phone. */
        CallDelivered: {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
            /** @description Which phone. */
            device: string;
            /** @description The machine that it is for. */
            machine: string;
            /** @description The mark that it is about. */
            mark?: string | null;
        };
        /** @description A call is no longer live. */
        CallEnded: {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
            held?: components["schemas"]["HeldBy"] | null;
            /** @description How. */
            how: components["schemas"]["Ending"];
            /** @description The machine that it is for. */
            machine: string;
            /** @description The mark that it is about. */
            mark?: string | null;
        };
        /** @description A call was acknowledged. */
        CallGot: {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
            /** @description The machine that it is for. */
            machine: string;
            /** @description The mark that it is about. */
            mark?: string | null;
            /** @description Who saw the nod, when it was not pressed in the cab. */
            witness?: string | null;
        };
        /** @description A call's way. */
        CallHistory: components["schemas"]["Text"] & {
            /** @description Who sent it. */
            by: string;
            /**
             * Format: int64
             * @description Its number: the entry that sent it.
             */
            call: number;
            delivered_at?: components["schemas"]["Time"] | null;
            ended_at?: components["schemas"]["Time"] | null;
            got_at?: components["schemas"]["Time"] | null;
            how?: components["schemas"]["Ending"] | null;
            /** @description The machine that it was for. */
            machine: string;
            /** @description When the reading was made. */
            made_at: components["schemas"]["Time"];
            /** @description The mark that it was about. */
            mark?: string | null;
            /** @description The entries of the readings behind it. */
            readings: number[];
            /**
             * Format: int32
             * @description Its revision.
             */
            revision?: number | null;
            /** @description When the hub sent it. */
            sent_at: components["schemas"]["Time"];
            /** @description The set-up that it rests on. */
            set_up?: string | null;
            shown_at?: components["schemas"]["Time"] | null;
            /** @description The exact line that was painted, in the screen's language. */
            shown_text?: string | null;
            /** @description The target. */
            target?: string | null;
            /** @description Who saw the nod, when it was acknowledged by a witness. */
            witness?: string | null;
        };
        /** @description A call went out. Its number is the sequence number of this entry. */
        CallSent: components["schemas"]["Text"] & {
            /** @description The aim in force. */
            aim: components["schemas"]["Length"];
            checked_at?: components["schemas"]["Time"] | null;
            /** @description What to know about it. */
            labels: components["schemas"]["Label"][];
            line?: components["schemas"]["LineSide"] | null;
            /** @description The machine. */
            machine: string;
            /** @description The mark. */
            mark?: string | null;
            /** @description What is told. */
            message: components["schemas"]["Message"];
            /** @description The entries of the readings behind it. */
            readings: number[];
            reminder?: components["schemas"]["Reminder"] | null;
            /**
             * Format: int32
             * @description The target's revision.
             */
            revision?: number | null;
            /** @description The set-up that it rests on. */
            set_up?: string | null;
            /** @description When it will be too old. */
            stale_at: components["schemas"]["Time"];
            /** @description The target. */
            target?: string | null;
            /** @description Rules of depth that are near. */
            warnings?: components["schemas"]["DepthWarning"][];
        };
        /** @description A call was painted on a visible page: not the same as seen by a person. */
        CallShown: {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
            /** @description Which phone. */
            device: string;
            /** @description The machine that it is for. */
            machine: string;
            /** @description The mark that it is about. */
            mark?: string | null;
            /** @description The exact line that was shown. */
            text: string;
        };
        /** @description Where a call is in its life. */
        CallState: {
            /** @enum {string} */
            kind: "sent";
        } | {
            /** @enum {string} */
            kind: "delivered";
        } | {
            /** @enum {string} */
            kind: "shown";
        } | {
            /** @enum {string} */
            kind: "got";
        } | {
            /** @description How. */
            how: components["schemas"]["Ending"];
            /** @enum {string} */
            kind: "ended";
        };
        /** @description Everything a screen shows for one call. */
        CallText: {
            /** @description The amount: `3½`; empty when there is none. */
            amount: string;
            /** @description The exact amount in all units, the reader's first: `0.34 ft = 4 1/8 in = 104 mm`. */
            exact: string;
            /** @description The language. */
            language: components["schemas"]["Language"];
            /** @description One line for the log and for lists: `DOWN 3½`. */
            line: string;
            /** @description What a voice says. */
            spoken: string;
            /** @description What it counts in. */
            unit: components["schemas"]["ScreenUnit"];
            /** @description What the amount counts, `TENTHS`, or `BY EYE` on a quick call; empty when there is none. */
            unit_word: string;
            /** @description As large as the word: `TOO DEEP – DON'T FILL`; empty when there is none. */
            warning: string;
            /** @description The word: `DOWN`. */
            word: string;
        };
        /** @description The call that was live at a stop. */
        CallThen: components["schemas"]["Text"] & {
            /**
             * Format: int64
             * @description Its number.
             */
            call: number;
            /** @description The mark. */
            mark?: string | null;
        };
        /** @description A call as the screens show it. */
        CallView: {
            /** @description Who sent it. */
            by: string;
            checked_at?: components["schemas"]["Time"] | null;
            delivered_at?: components["schemas"]["Time"] | null;
            got_at?: components["schemas"]["Time"] | null;
            /**
             * Format: int64
             * @description Its number: the sequence number of the entry that sent it.
             */
            id: number;
            /** @description What to know about it. */
            labels: components["schemas"]["Label"][];
            line?: components["schemas"]["LineSide"] | null;
            /** @description The machine it is for. */
            machine: string;
            /** @description When the reading was made. */
            made_at: components["schemas"]["Time"];
            /** @description The mark it is about; none for a word by eye without a place. */
            mark?: string | null;
            /** @description What is told. */
            message: components["schemas"]["Message"];
            reminder?: components["schemas"]["Reminder"] | null;
            /** @description When the hub sent it. */
            sent_at: components["schemas"]["Time"];
            shown_at?: components["schemas"]["Time"] | null;
            /** @description When it will be too old, as far as is known now. */
            stale_at: components["schemas"]["Time"];
            /** @description Where it is in its life. */
            state: components["schemas"]["CallState"];
            /** @description The name of the target that it was judged against. */
            target?: string | null;
            /** @description The text in each language and unit that a screen of the day has; a screen picks its own. */
            texts: components["schemas"]["CallText"][];
            /** @description Rules of depth that are near. */
            warnings: components["schemas"]["DepthWarning"][];
            /** @description Who saw the nod, when a witness acknowledged it. */
            witness?: string | null;
        };
        /** @description An address that phones may be able to reach. */
        Candidate: {
            /** @description The address. */
            host: string;
            /** @description Whose it is. */
            interface: string;
            /** @description Why it may be the one, or not. */
            why: string;
        };
        /** @description What the operator can't do. */
        CantCard: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description The mark of the call, if any. */
            mark?: string | null;
            /** @description Why. */
            why: components["schemas"]["CantReason"];
        };
        /**
         * @description Why the operator can't.
         * @enum {string}
         */
        CantReason: "hard_ground" | "water" | "pipe" | "line" | "face" | "other";
        /** @description The operator can't. */
        CantSaid: {
            /**
             * Format: int64
             * @description The call that was live.
             */
            call?: number | null;
            /** @description The machine. */
            machine: string;
            /** @description Its mark. */
            mark?: string | null;
            /** @description Why. */
            why: components["schemas"]["CantReason"];
        };
        /** @description How well a tolerance holds what a machine lands. */
        Capability: {
            /**
             * Format: double
             * @description The tolerance by six standard deviations, Cp.
             */
            cp: number;
            /**
             * Format: double
             * @description The nearer limit by three standard deviations, Cpk.
             */
            cpk: number;
            /**
             * Format: double
             * @description The share that lands within, by the normal law.
             */
            within: number;
        };
        /**
         * @description How the rod was read.
         * @enum {string}
         */
        Care: "fine" | "coarse" | "by_eye" | "muddy";
        /** @description The end of the chain as it stood: what is signed. */
        ChainHead: {
            /** @description Its hash, in hex. */
            hash: string;
            /**
             * Format: int64
             * @description The last entry before the signature.
             */
            seq: number;
        };
        /** @description Language and unit of the asker's own screen. */
        ChangeScreen: {
            /** @description The language. */
            language: components["schemas"]["Language"];
            /** @description The unit. */
            unit: components["schemas"]["ScreenUnit"];
        };
        /** @description A supervisor changes the site. */
        ChangeSite: {
            /** @description What is added or takes the place of what was. */
            put: components["schemas"]["SiteThing"][];
            /** @description What goes. */
            retire: components["schemas"]["Retired"][];
            /** @description The digest of the differences as they were shown, so that nothing else is put in force. */
            seen?: string | null;
            /** @description Why, and on whose word. */
            why: string;
        };
        /**
         * @description What a check shot says.
         * @enum {string}
         */
        Check: "good" | "again" | "failed";
        /** @description A check shot. */
        CheckCard: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description On which benchmark. */
            benchmark: string;
            /** @description Good, again, failed. */
            check: components["schemas"]["Check"];
            /** @description (HI − rod) − benchmark. */
            residual: components["schemas"]["Length"];
        };
        /** @description What a check of the laser costs and saves: the interval between checks follows from it. */
        CheckCosts: {
            /**
             * Format: double
             * @description One check, in money.
             */
            check: number;
            /**
             * Format: double
             * @description A laser is disturbed about once in so many working hours.
             */
            hours_between_bumps: number;
            /**
             * Format: double
             * @description An hour of work with a disturbed laser, in the same money.
             */
            undetected_hour: number;
        };
        /** @description A check of a set-up is due; a graver reason takes the place of a lighter one until the check is good. */
        CheckFellDue: {
            /** @description Which set-up. */
            set_up: string;
            /** @description Why. */
            why: components["schemas"]["Due"];
        };
        /** @description How far a check shot may miss. */
        CheckLimits: {
            /** @description Up to and with this, the set-up holds. */
            good: components["schemas"]["Length"];
            /** @description Up to and with this, shoot again; beyond it, the check has failed. */
            warn: components["schemas"]["Length"];
        };
        /** @description A check shot. */
        CheckMade: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description On which benchmark. */
            benchmark: string;
            /** @description Who. */
            by: string;
            /** @description What came of it. */
            check: components["schemas"]["Check"];
            /** @description (HI − rod) − benchmark: positive when the laser's heights come out too high. */
            residual: components["schemas"]["Length"];
            /**
             * Format: int64
             * @description Its entry.
             */
            seq: number;
            /** @description The rod as typed. */
            text: string;
        };
        /** @description A second person has measured marks again. */
        CheckMarks: {
            /** @description How far the two measures are apart at most, as typed in feet or with a unit. */
            apart: string;
            /** @description Which. */
            marks: string[];
        };
        /** @description The operator wants somebody to look. */
        CheckMe: unknown;
        /** @description What was seen, by whom, when. */
        CheckSaid: {
            as_before?: components["schemas"]["Time"] | null;
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description By whom. */
            by: string;
            /** @description The signals that were agreed. */
            signals: components["schemas"]["HandSignal"][];
            /** @description What. */
            value: string;
        };
        /** @description A check shot was made. */
        CheckShot: {
            /** @description The benchmark. */
            benchmark: string;
            /** @description Good, again, failed. */
            check: components["schemas"]["Check"];
            /** @description The rod value. */
            foresight: components["schemas"]["Length"];
            /** @description (HI − rod) − benchmark: positive when the tool reads high. */
            residual: components["schemas"]["Length"];
            /** @description The rod. */
            rod: string;
            /** @description Which set-up. */
            set_up: string;
            /** @description Slips that would explain a failure, likeliest first: asked, never applied. */
            slips: components["schemas"]["Slip"][];
            /** @description As typed. */
            text: string;
            /** @description Whether the set-up could be used when the shot was made. */
            usable: boolean;
        };
        /** @description A supervisor looks at a ticket. */
        CheckTicket: {
            /** @description Who has answered what. */
            responses: components["schemas"]["Response"][];
            /** @description Its number. */
            ticket: string;
        };
        /** @description Another address for the codes. */
        Chosen: {
            /** @description One of the laptop's addresses. */
            host: string;
        };
        /** @description A supervisor closes the day. */
        CloseDay: {
            /** @description What is missing and closed over all the same, each with its reason. */
            overrides?: components["schemas"]["CloseOverride"][];
            /** @description A word about the day; may be empty. */
            words?: string;
        };
        /** @description Something that is missing before the day can be closed. */
        CloseMissing: {
            /** @enum {string} */
            kind: "people_in";
            /** @description At which machine. */
            machine: string;
            /** @description Who. */
            people: string[];
        } | {
            /** @enum {string} */
            kind: "closing_check";
            /** @description Which set-up. */
            set_up: string;
        } | {
            /** @enum {string} */
            kind: "shoot_again";
            /** @description Which. */
            mark: string;
        } | {
            /** @enum {string} */
            kind: "visitor_on_site";
            /** @description Who. */
            person: string;
        };
        /** @description Something missing that the day is closed over. */
        CloseOverride: {
            /** @description What. */
            missing: components["schemas"]["CloseMissing"];
            /** @description Why. */
            why: string;
        };
        /** @description The set-up is taken down. */
        CloseSetUp: {
            /** @description Which set-up. */
            set_up: string;
            /** @description Why. */
            why?: string;
        };
        /** @description How the day was closed. */
        ClosedCard: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description By whom. */
            by: string;
            /** @description How. */
            how: components["schemas"]["DayClosed"];
        };
        /** @description A set-up that was closed without a check. */
        ClosedUnproven: {
            /** @description Which. */
            set_up: string;
            since?: components["schemas"]["Time"] | null;
        };
        /** @description One code. */
        Code: {
            /** @description The machine, for an operator. */
            machine: string | null;
            /** @description The roles that it lets in. */
            roles: components["schemas"]["Role"][];
            /** @description Its drawing. */
            svg: string;
            /** @description The link in it. */
            url: string;
        };
        /** @description Everything that the tailgate shows. */
        Codes: {
            /** @description The address in the codes. */
            address: components["schemas"]["Address"];
            /** @description Every address that phones may be able to reach, the most likely first. */
            addresses: components["schemas"]["Candidate"][];
            /** @description True when the codes carried another address the day before. */
            changed_since_yesterday: boolean;
            /** @description A code for each role, and for each machine's cab. */
            codes: components["schemas"]["Code"][];
            wifi: components["schemas"]["WifiCode"] | null;
        };
        /** @description How long codes last was said. */
        CodesLast: {
            /** @description How long. */
            lasts: components["schemas"]["Lasts"];
        };
        /** @description The codes were made anew. */
        CodesRenewed: {
            /**
             * Format: int32
             * @description How often, since the day that they were first made for.
             */
            generation: number;
        };
        /** @description Somebody is out again. */
        ComeOut: {
            /**
             * Format: int32
             * @description Who leads a group: how many are out, the leader too. All of them, or nobody is.
             */
            all?: number | null;
            /** @description The machine. */
            machine: string;
            /** @description The visit. */
            visit: string;
        };
        /** @description Everything that can be asked, one line each; the files under `said/` hold the rest. */
        Command: (components["schemas"]["OpenDay"] & {
            /** @enum {string} */
            kind: "open_day";
        }) | (components["schemas"]["ReadSite"] & {
            /** @enum {string} */
            kind: "read_site";
        }) | (components["schemas"]["ConfirmSite"] & {
            /** @enum {string} */
            kind: "confirm_site";
        }) | (components["schemas"]["Join"] & {
            /** @enum {string} */
            kind: "join";
        }) | (components["schemas"]["ChangeScreen"] & {
            /** @enum {string} */
            kind: "change_screen";
        }) | (components["schemas"]["RemovePhone"] & {
            /** @enum {string} */
            kind: "remove_phone";
        }) | (components["schemas"]["RenewCodes"] & {
            /** @enum {string} */
            kind: "renew_codes";
        }) | (components["schemas"]["SetCodesLast"] & {
            /** @enum {string} */
            kind: "set_codes_last";
        }) | (components["schemas"]["GiveCab"] & {
            /** @enum {string} */
            kind: "give_cab";
        }) | (components["schemas"]["ConfirmPerson"] & {
            /** @enum {string} */
            kind: "confirm_person";
        }) | (components["schemas"]["LetStay"] & {
            /** @enum {string} */
            kind: "let_stay";
        }) | (components["schemas"]["SayWho"] & {
            /** @enum {string} */
            kind: "say_who";
        }) | (components["schemas"]["SetUpLaser"] & {
            /** @enum {string} */
            kind: "set_up_laser";
        }) | (components["schemas"]["RestateSetUp"] & {
            /** @enum {string} */
            kind: "restate_set_up";
        }) | (components["schemas"]["LevelAgain"] & {
            /** @enum {string} */
            kind: "level_again";
        }) | (components["schemas"]["UseOneBenchmark"] & {
            /** @enum {string} */
            kind: "use_one_benchmark";
        }) | (components["schemas"]["CloseSetUp"] & {
            /** @enum {string} */
            kind: "close_set_up";
        }) | (components["schemas"]["ShootCheck"] & {
            /** @enum {string} */
            kind: "shoot_check";
        }) | (components["schemas"]["SayBumped"] & {
            /** @enum {string} */
            kind: "say_bumped";
        }) | (components["schemas"]["TestLaser"] & {
            /** @enum {string} */
            kind: "test_laser";
        }) | (components["schemas"]["RunLevels"] & {
            /** @enum {string} */
            kind: "run_levels";
        }) | (components["schemas"]["AddBenchmark"] & {
            /** @enum {string} */
            kind: "add_benchmark";
        }) | (components["schemas"]["CompareSetUps"] & {
            /** @enum {string} */
            kind: "compare_set_ups";
        }) | (components["schemas"]["TakeReading"] & {
            /** @enum {string} */
            kind: "take_reading";
        }) | (components["schemas"]["LayMarks"] & {
            /** @enum {string} */
            kind: "lay_marks";
        }) | (components["schemas"]["CheckMarks"] & {
            /** @enum {string} */
            kind: "check_marks";
        }) | (components["schemas"]["ScrapeMarks"] & {
            /** @enum {string} */
            kind: "scrape_marks";
        }) | (components["schemas"]["TakeTies"] & {
            /** @enum {string} */
            kind: "take_ties";
        }) | (components["schemas"]["MeasureDiagonals"] & {
            /** @enum {string} */
            kind: "measure_diagonals";
        }) | (components["schemas"]["ReadEdge"] & {
            /** @enum {string} */
            kind: "read_edge";
        }) | (components["schemas"]["QuickCall"] & {
            /** @enum {string} */
            kind: "quick_call";
        }) | (components["schemas"]["WithdrawCall"] & {
            /** @enum {string} */
            kind: "withdraw_call";
        }) | (components["schemas"]["WrongNumber"] & {
            /** @enum {string} */
            kind: "wrong_number";
        }) | (components["schemas"]["DropUnsent"] & {
            /** @enum {string} */
            kind: "drop_unsent";
        }) | (components["schemas"]["GotIt"] & {
            /** @enum {string} */
            kind: "got_it";
        }) | (components["schemas"]["SawNod"] & {
            /** @enum {string} */
            kind: "saw_nod";
        }) | (components["schemas"]["CheckMe"] & {
            /** @enum {string} */
            kind: "check_me";
        }) | (components["schemas"]["SayCant"] & {
            /** @enum {string} */
            kind: "say_cant";
        }) | (components["schemas"]["Delivered"] & {
            /** @enum {string} */
            kind: "delivered";
        }) | (components["schemas"]["Shown"] & {
            /** @enum {string} */
            kind: "shown";
        }) | (components["schemas"]["NoticeScreen"] & {
            /** @enum {string} */
            kind: "notice_screen";
        }) | (components["schemas"]["StopAll"] & {
            /** @enum {string} */
            kind: "stop_all";
        }) | (components["schemas"]["LiftStop"] & {
            /** @enum {string} */
            kind: "lift_stop";
        }) | (components["schemas"]["SayStartCheck"] & {
            /** @enum {string} */
            kind: "say_start_check";
        }) | (components["schemas"]["ReadyDay"] & {
            /** @enum {string} */
            kind: "ready_day";
        }) | (components["schemas"]["AgreeSlew"] & {
            /** @enum {string} */
            kind: "agree_slew";
        }) | (components["schemas"]["SayAgreed"] & {
            /** @enum {string} */
            kind: "say_agreed";
        }) | (components["schemas"]["BeSpotter"] & {
            /** @enum {string} */
            kind: "be_spotter";
        }) | (components["schemas"]["EndSpotter"] & {
            /** @enum {string} */
            kind: "end_spotter";
        }) | (components["schemas"]["LowBattery"] & {
            /** @enum {string} */
            kind: "low_battery";
        }) | (components["schemas"]["TellNearMiss"] & {
            /** @enum {string} */
            kind: "tell_near_miss";
        }) | (components["schemas"]["SetAim"] & {
            /** @enum {string} */
            kind: "set_aim";
        }) | (components["schemas"]["ChangeSite"] & {
            /** @enum {string} */
            kind: "change_site";
        }) | (components["schemas"]["ReviseTarget"] & {
            /** @enum {string} */
            kind: "revise_target";
        }) | (components["schemas"]["ProveTarget"] & {
            /** @enum {string} */
            kind: "prove_target";
        }) | (components["schemas"]["SeeTarget"] & {
            /** @enum {string} */
            kind: "see_target";
        }) | (components["schemas"]["Rule"] & {
            /** @enum {string} */
            kind: "rule";
        }) | (components["schemas"]["PlaceMachine"] & {
            /** @enum {string} */
            kind: "place_machine";
        }) | (components["schemas"]["StandHere"] & {
            /** @enum {string} */
            kind: "stand_here";
        }) | (components["schemas"]["SayMoved"] & {
            /** @enum {string} */
            kind: "say_moved";
        }) | (components["schemas"]["CountLoad"] & {
            /** @enum {string} */
            kind: "count_load";
        }) | (components["schemas"]["AddTicket"] & {
            /** @enum {string} */
            kind: "add_ticket";
        }) | (components["schemas"]["TakeBackLoad"] & {
            /** @enum {string} */
            kind: "take_back_load";
        }) | (components["schemas"]["MeasureSoil"] & {
            /** @enum {string} */
            kind: "measure_soil";
        }) | (components["schemas"]["OrderGravel"] & {
            /** @enum {string} */
            kind: "order_gravel";
        }) | (components["schemas"]["AddPatch"] & {
            /** @enum {string} */
            kind: "add_patch";
        }) | (components["schemas"]["MovePatch"] & {
            /** @enum {string} */
            kind: "move_patch";
        }) | (components["schemas"]["Compact"] & {
            /** @enum {string} */
            kind: "compact";
        }) | (components["schemas"]["TestSoil"] & {
            /** @enum {string} */
            kind: "test_soil";
        }) | (components["schemas"]["VoidTest"] & {
            /** @enum {string} */
            kind: "void_test";
        }) | (components["schemas"]["ConfirmUndercut"] & {
            /** @enum {string} */
            kind: "confirm_undercut";
        }) | (components["schemas"]["PointRock"] & {
            /** @enum {string} */
            kind: "point_rock";
        }) | (components["schemas"]["SetPrices"] & {
            /** @enum {string} */
            kind: "set_prices";
        }) | (components["schemas"]["SayWaiting"] & {
            /** @enum {string} */
            kind: "say_waiting";
        }) | (components["schemas"]["WorkAgain"] & {
            /** @enum {string} */
            kind: "work_again";
        }) | (components["schemas"]["InspectFace"] & {
            /** @enum {string} */
            kind: "inspect_face";
        }) | (components["schemas"]["RetypeSoil"] & {
            /** @enum {string} */
            kind: "retype_soil";
        }) | (components["schemas"]["ReviseFace"] & {
            /** @enum {string} */
            kind: "revise_face";
        }) | (components["schemas"]["SeeAtFace"] & {
            /** @enum {string} */
            kind: "see_at_face";
        }) | (components["schemas"]["SayRain"] & {
            /** @enum {string} */
            kind: "say_rain";
        }) | (components["schemas"]["SayRainStopped"] & {
            /** @enum {string} */
            kind: "say_rain_stopped";
        }) | (components["schemas"]["SayPumped"] & {
            /** @enum {string} */
            kind: "say_pumped";
        }) | (components["schemas"]["SeeSlough"] & {
            /** @enum {string} */
            kind: "see_slough";
        }) | (components["schemas"]["SayCameDown"] & {
            /** @enum {string} */
            kind: "say_came_down";
        }) | (components["schemas"]["ReadPins"] & {
            /** @enum {string} */
            kind: "read_pins";
        }) | (components["schemas"]["LeaveFace"] & {
            /** @enum {string} */
            kind: "leave_face";
        }) | (components["schemas"]["CheckTicket"] & {
            /** @enum {string} */
            kind: "check_ticket";
        }) | (components["schemas"]["SayPaint"] & {
            /** @enum {string} */
            kind: "say_paint";
        }) | (components["schemas"]["SayStruck"] & {
            /** @enum {string} */
            kind: "say_struck";
        }) | (components["schemas"]["DigPothole"] & {
            /** @enum {string} */
            kind: "dig_pothole";
        }) | (components["schemas"]["AllowDig"] & {
            /** @enum {string} */
            kind: "allow_dig";
        }) | (components["schemas"]["CloseDay"] & {
            /** @enum {string} */
            kind: "close_day";
        }) | (components["schemas"]["SignDay"] & {
            /** @enum {string} */
            kind: "sign_day";
        }) | (components["schemas"]["AmendDay"] & {
            /** @enum {string} */
            kind: "amend_day";
        }) | (components["schemas"]["AddNote"] & {
            /** @enum {string} */
            kind: "add_note";
        }) | (components["schemas"]["Visit"] & {
            /** @enum {string} */
            kind: "visit";
        }) | (components["schemas"]["ShowRuns"] & {
            /** @enum {string} */
            kind: "show_runs";
        }) | (components["schemas"]["AskInspection"] & {
            /** @enum {string} */
            kind: "ask_inspection";
        }) | (components["schemas"]["Inspect"] & {
            /** @enum {string} */
            kind: "inspect";
        }) | (components["schemas"]["SignInspection"] & {
            /** @enum {string} */
            kind: "sign_inspection";
        }) | (components["schemas"]["AskQuery"] & {
            /** @enum {string} */
            kind: "ask_query";
        }) | (components["schemas"]["AnswerQuery"] & {
            /** @enum {string} */
            kind: "answer_query";
        }) | (components["schemas"]["PromisePhoto"] & {
            /** @enum {string} */
            kind: "promise_photo";
        }) | (components["schemas"]["AddPhoto"] & {
            /** @enum {string} */
            kind: "add_photo";
        }) | (components["schemas"]["GiveUpPhoto"] & {
            /** @enum {string} */
            kind: "give_up_photo";
        }) | (components["schemas"]["MissHead"] & {
            /** @enum {string} */
            kind: "miss_head";
        }) | (components["schemas"]["AskIn"] & {
            /** @enum {string} */
            kind: "ask_in";
        }) | (components["schemas"]["WithdrawAsk"] & {
            /** @enum {string} */
            kind: "withdraw_ask";
        }) | (components["schemas"]["BucketDown"] & {
            /** @enum {string} */
            kind: "bucket_down";
        }) | (components["schemas"]["SayWait"] & {
            /** @enum {string} */
            kind: "say_wait";
        }) | (components["schemas"]["RefuseEntry"] & {
            /** @enum {string} */
            kind: "refuse_entry";
        }) | (components["schemas"]["GoIn"] & {
            /** @enum {string} */
            kind: "go_in";
        }) | (components["schemas"]["ComeOut"] & {
            /** @enum {string} */
            kind: "come_out";
        }) | (components["schemas"]["OutByWitness"] & {
            /** @enum {string} */
            kind: "out_by_witness";
        }) | (components["schemas"]["SeeOut"] & {
            /** @enum {string} */
            kind: "see_out";
        }) | (components["schemas"]["Release"] & {
            /** @enum {string} */
            kind: "release";
        }) | (components["schemas"]["NoticeLink"] & {
            /** @enum {string} */
            kind: "notice_link";
        }) | (components["schemas"]["NoticeRestart"] & {
            /** @enum {string} */
            kind: "notice_restart";
        });
        /** @description A lift is rammed. */
        Compact: {
            /** @description How damp it was. */
            damp: components["schemas"]["Damp"];
            /**
             * Format: int32
             * @description Which lift, from 1 at the bottom.
             */
            lift: number;
            /** @description A patch, a mark or a target. */
            on: string;
            /**
             * Format: int32
             * @description Passes of the rammer or the plate.
             */
            passes: number;
            /** @description How thick it lies. */
            thickness: components["schemas"]["Length"];
        };
        /** @description A lift was rammed. */
        Compacted: {
            /** @description How damp it was. */
            damp: components["schemas"]["Damp"];
            /**
             * Format: int32
             * @description Which lift.
             */
            lift: number;
            /** @description A patch, a mark or a target. */
            on: string;
            /**
             * Format: int32
             * @description Passes.
             */
            passes: number;
            /** @description It lies in a patch; a mark may bear the name of one. */
            patch?: boolean;
            /** @description How thick it lies. */
            thickness: components["schemas"]["Length"];
            /** @description Thicker than a lift may be. */
            too_thick: boolean;
        };
        /** @description One turning point, shot from two lasers. */
        CompareSetUps: {
            /** @description The first set-up. */
            first: string;
            /** @description The rod value from the first, as typed. */
            from_first: string;
            /** @description The rod value from the second, as typed. */
            from_second: string;
            /** @description The rod. */
            rod: string;
            /** @description The second. */
            second: string;
        };
        /**
         * @description A side of the compass.
         * @enum {string}
         */
        Compass: "north" | "north_east" | "east" | "south_east" | "south" | "south_west" | "west" | "north_west";
        /** @description A supervisor has looked whose hands another phone is in, and says that it is the one that its name tells. */
        ConfirmPerson: {
            /** @description Which phone. */
            device: string;
            /** @description The name that the supervisor read beside it. */
            person: string;
        };
        /** @description A supervisor takes the changed file. */
        ConfirmSite: {
            /** @description The digest of the change as it was shown, so that nothing else is confirmed. */
            digest: string;
        };
        /** @description A supervisor takes a proposed undercut into the target. */
        ConfirmUndercut: {
            /**
             * Format: int64
             * @description The proposal's entry.
             */
            undercut: number;
            /** @description On whose word. */
            why: string;
        };
        /** @description A walked contour. */
        ContourCard: {
            most_off_arc?: components["schemas"]["Length"] | null;
            /** @description The one that stands farthest off level: measured − contour. */
            most_off_level: components["schemas"]["Length"];
            /** @description How many points of it were read. */
            points: number;
            radius?: components["schemas"]["Length"] | null;
            /** @description The target. */
            target: string;
            /** @description Whether every point lies within the target's band. */
            within_band: boolean;
        };
        /** @description Where two grades meet. */
        Corner: {
            /** @description The length of its vertical curve; zero for none. */
            curve?: components["schemas"]["Length"];
            /** @description Its elevation, on the straight grades and before any step. */
            elevation: components["schemas"]["Length"];
            /** @description Its station. */
            station: components["schemas"]["Length"];
        };
        /** @description Which corners move so that the figure is square; A and B, the base, stay. */
        CornerMove: {
            /** @enum {string} */
            kind: "none";
        } | {
            /** @description How far. */
            by: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "toward_a";
        } | {
            /** @description How far. */
            by: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "toward_b";
        };
        /** @description What to do. */
        Correction: {
            /** @description Dig. */
            down: components["schemas"]["Amount"];
        } | {
            /** @description Take a thin slice. */
            shave: components["schemas"]["Amount"];
        } | "grade" | {
            /** @description Too deep by so much; it is not filled with dug soil. */
            up: components["schemas"]["Amount"];
        } | "wait";
        /** @description What the day and the job cost, as far as rates are known. */
        CostCard: {
            /**
             * Format: double
             * @description The day.
             */
            day: number;
            /**
             * Format: double
             * @description The job so far, the day with it.
             */
            job: number;
            /** @description The day, line by line. */
            lines: components["schemas"]["CostLine"][];
            /**
             * Format: double
             * @description Of the day: waiting, in all.
             */
            waiting: number;
            /** @description Machines without a rate: their hours are not in the sum. */
            without_rate: string[];
        };
        /** @description A line of the cost. */
        CostLine: {
            /**
             * Format: double
             * @description How much.
             */
            cost: number;
            /** @description What for. */
            what: components["schemas"]["CostOf"];
        };
        /** @description What something costs money for. */
        CostOf: {
            /** @enum {string} */
            kind: "machine";
            /** @description Which. */
            machine: string;
        } | {
            /** @description What for. */
            cause: components["schemas"]["Doing"];
            /** @enum {string} */
            kind: "waiting";
        } | {
            /** @enum {string} */
            kind: "loads";
            /** @description What. */
            material: string;
        } | {
            /** @enum {string} */
            kind: "gravel";
            /**
             * Format: double
             * @description How much.
             */
            tons: number;
        } | {
            /**
             * Format: double
             * @description How much, in cubic yards.
             */
            cy: number;
            /** @enum {string} */
            kind: "patches";
        };
        /** @description A load is counted. */
        CountLoad: {
            /**
             * Format: double
             * @description Loose cubic yards of all of them; the price list's truck when left out.
             */
            loose_cy?: number | null;
            /** @description What is in it. */
            material: string;
            /** @description The ticket's number, when it is there already. */
            ticket?: string | null;
            /**
             * Format: double
             * @description Tons of all of them, when weighed.
             */
            tons?: number | null;
            /**
             * Format: int32
             * @description How many trucks alike.
             */
            trucks?: number;
            /** @description Which way. */
            way: components["schemas"]["Way"];
        };
        /** @description How a face stands at a crest mark. */
        CrestCard: {
            /** @description How far the crest must still go back, by the class and its slope. */
            back: components["schemas"]["Length"];
            /**
             * Format: double
             * @description In degrees from level.
             */
            degrees: number;
            /**
             * Format: double
             * @description What hangs over the line it should be cut to, cubic yards for each foot along it.
             */
            hanging_per_foot: number;
            /** @description The mark. */
            mark: string;
            /** @description From toe to crest, up. */
            rise: components["schemas"]["Length"];
            /** @description From toe to crest, level. */
            run: components["schemas"]["Length"];
            /**
             * Format: double
             * @description Run to one of rise.
             */
            run_per_rise: number;
        };
        /** @description A trench that crosses a buried line. */
        Crossing: {
            /** @description The middle of that stretch. */
            at: components["schemas"]["Point"];
            /** @description Dug by hand, by station along the trench's toe. */
            by_hand: components["schemas"]["Stretch"];
            clear?: components["schemas"]["Length"] | null;
            /** @description What runs in it. */
            kind: components["schemas"]["UtilityKind"];
            /** @description How clear they have to. */
            need: components["schemas"]["Length"];
            /** @description The target that is dug in it. */
            target?: string | null;
            /** @description The line. */
            utility: string;
            /** @description The trench. */
            zone: string;
        };
        /** @description A cut face laid back or benched: its toe's line, and the parts from the toe outward. */
        CutFace: {
            /** @description The toe on the plan. */
            axis: components["schemas"]["Axis"];
            /** @description The toe's elevations, up-station. */
            corners: components["schemas"]["Corner"][];
            /** @description From the toe outward. */
            faces: components["schemas"]["Face"][];
            /** @description The side to which it rises, looking up-station. */
            rises: components["schemas"]["Side"];
        };
        /**
         * @description What kind of cut.
         * @enum {string}
         */
        CutKind: "face" | "trench";
        /** @description Cuts and what is buried, as a page shows them. */
        CutsCard: {
            /** @description What a supervisor has let go on today. */
            allowed: components["schemas"]["HeldBy"][];
            /** @description The competent persons. */
            competent: string[];
            /** @description Trenches that cross them. */
            crossings: components["schemas"]["Crossing"][];
            /** @description Faces and trenches. */
            faces: components["schemas"]["FaceCard"][];
            /** @description Marks where no ticket covers the ground, for the supervisor, who may let it be dug with a reason. */
            not_located?: string[];
            /** @description The rules in force, by name; empty when the site has no cut. */
            rules: string;
            /** @description Lines that were struck or met, oldest first. */
            struck: components["schemas"]["StruckCard"][];
            /** @description Locate tickets. */
            tickets: components["schemas"]["TicketCard"][];
            /** @description Buried lines. */
            utilities: components["schemas"]["UtilityCard"][];
        };
        /**
         * @description How damp the lift was.
         * @enum {string}
         */
        Damp: "dry" | "right" | "wet";
        /** @description A signed day was amended. */
        DayAmended: {
            /** @description The day whose entry it is. */
            day: string;
            /**
             * Format: int64
             * @description The entry that is amended.
             */
            entry: number;
            /** @description The end of the chain as it stood. */
            head: components["schemas"]["ChainHead"];
            /** @description The signature. */
            signature: components["schemas"]["Signature"];
            /** @description What is to be read with it. */
            words: string;
        };
        /** @description The day was closed. */
        DayClosed: {
            /** @description Which. */
            day: string;
            /** @description Nothing was read and nothing was called on it. */
            empty: boolean;
            /** @description What stays open. */
            open: components["schemas"]["OpenItem"][];
            /** @description What was missing, each with its reason. */
            overrides: components["schemas"]["CloseOverride"][];
            /** @description Set-ups without a closing check: every reading on them since then is not proven. */
            unproven: components["schemas"]["ClosedUnproven"][];
            /** @description A word about it. */
            words: string;
        };
        /** @description A day began. */
        DayOpened: {
            /** @description Its name. */
            day: string;
            /** @description The day before was never closed. */
            not_closed?: boolean;
            /** @description What the day before left to be done. */
            open?: components["schemas"]["OpenItem"][];
            /** @description Set-ups that still stood on the day before: they count no more. */
            taken_down?: string[];
        };
        /** @description The day is READY. */
        DayReady: {
            /** @description Those that have none, with why. */
            overrides: components["schemas"]["StartOverride"][];
            /** @description Checks that have a value. */
            said: components["schemas"]["StartCheck"][];
        };
        /** @description The day was signed. What comes after is an amendment. */
        DaySigned: {
            /** @description Which. */
            day: string;
            /** @description Nothing was read and nothing was called on it: the signature is under an empty day. */
            empty: boolean;
            /** @description The end of the chain as it stood: everything up to there is signed. */
            head: components["schemas"]["ChainHead"];
            /** @description The signature. */
            signature: components["schemas"]["Signature"];
            /** @description It was closed without a check behind its last readings. */
            unproven: boolean;
            /** @description A word with it. */
            words: string;
        };
        /** @description A day's signature in short. */
        DaySignedBy: {
            /** @description That entry's hash. */
            hash: string;
            /** @description Who. */
            name: string;
            /**
             * Format: int64
             * @description The entry up to which.
             */
            seq: number;
        };
        /** @description Where a face comes to daylight, against what stands there. */
        DaylightFound: {
            /** @description The class that counts. */
            class: components["schemas"]["SoilClass"];
            /** @description By an engineer's own design, not by the tables. */
            designed: boolean;
            /** @description Higher than the tables go: an engineer designs it. */
            engineer: boolean;
            /** @description The highest place. */
            highest: components["schemas"]["Length"];
            /** @description Each line. */
            lines: components["schemas"]["LineFound"][];
            /**
             * Format: int32
             * @description Places that never come to daylight, or where the ground is not known.
             */
            missing: number;
            /** @description The pieces that it was worked out with. */
            pieces: components["schemas"]["DesignPiece"][];
            /** @description Places along the toe, in order. */
            places: components["schemas"]["Daylit"][];
            /** @description Each footing. */
            structures: components["schemas"]["StructureFound"][];
            /** @description The face. */
            zone: string;
        };
        /** @description One place of the daylight line. */
        Daylit: {
            /** @description Where it comes out. */
            at: components["schemas"]["Point"];
            /** @description From the toe, up. */
            height: components["schemas"]["Length"];
            /** @description From the toe, level. */
            run: components["schemas"]["Length"];
            /** @description Along the toe. */
            station: components["schemas"]["Length"];
            /** @description The toe. */
            toe: components["schemas"]["Point"];
        };
        /** @description The call has reached this operator's phone. */
        Delivered: {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
        };
        /** @description A density test, judged. */
        DensityJudged: {
            /**
             * Format: double
             * @description Dry density, in pounds per cubic foot.
             */
            dry_pcf: number;
            /** @description Where the moisture lies. */
            moisture: components["schemas"]["Moisture"];
            /** @description Both are in. */
            passes: boolean;
            /**
             * Format: double
             * @description Percent of the laboratory's greatest.
             */
            percent: number;
        };
        /** @description What the drawing asks of a compacted lift. */
        DensityWanted: {
            /**
             * Format: double
             * @description At least so many percent of it.
             */
            least_percent: number;
            /**
             * Format: double
             * @description The laboratory's greatest dry density, in pounds per cubic foot.
             */
            maximum_pcf: number;
            /**
             * Format: double
             * @description The laboratory's best moisture, in percent of dry weight; none when nobody asks.
             */
            optimum_percent?: number | null;
            /**
             * Format: double
             * @description So many points of moisture either way of it.
             */
            window_points?: number;
        };
        /** @description A mark that a rule of depth is owed at. */
        DepthOwed: {
            /** @description How deep it will be. */
            depth: components["schemas"]["Length"];
            /** @description The mark. */
            mark: string;
            /** @description The rule. */
            rule: components["schemas"]["DepthRule"];
            /** @description The face. */
            zone: string;
        };
        /**
         * @description A rule of depth.
         * @enum {string}
         */
        DepthRule: "egress" | "protection" | "engineer";
        /**
         * @description How near.
         * @enum {string}
         */
        DepthState: "ahead" | "next_tenth" | "owed";
        /** @description A rule of depth that is near. */
        DepthWarning: {
            /** @description How deep it is. */
            depth: components["schemas"]["Length"];
            /** @description What is left before it; nothing when it is owed. */
            left: components["schemas"]["Length"];
            /** @description The rule's depth. */
            limit: components["schemas"]["Length"];
            /** @description The rule. */
            rule: components["schemas"]["DepthRule"];
            /** @description The rule's section. */
            section: string;
            /** @description How near. */
            state: components["schemas"]["DepthState"];
            /** @description The face. */
            zone: string;
        };
        /** @description A piece of a face, from the toe up. */
        DesignPiece: {
            /**
             * Format: double
             * @description Run to one of rise.
             */
            run_per_rise: number;
            top?: components["schemas"]["Length"] | null;
        };
        /** @description A rectangle as it was taped. */
        Diagonals: {
            /** @description From A to C, as taped. */
            a_to_c: components["schemas"]["Length"];
            /** @description The side B–C, across. */
            across: components["schemas"]["Length"];
            /** @description From B to D, as taped. */
            b_to_d: components["schemas"]["Length"];
            /** @description The side A–B, the base that stays. */
            base: components["schemas"]["Length"];
        };
        /** @description A rectangle was taped. */
        DiagonalsMeasured: {
            /** @description What they say. */
            found: components["schemas"]["Squareness"];
            /** @description The tapes. */
            taped: components["schemas"]["Diagonals"];
            /** @description Which rectangle. */
            what: string;
        };
        /** @description One value that two people typed differently. */
        Differs: {
            /** @description As the site has it. */
            first: components["schemas"]["Length"];
            /** @description As the second person typed it. */
            second: components["schemas"]["Length"];
            /** @description Which value. */
            what: components["schemas"]["Text"];
        };
        /** @description Work was let go on, for this day. */
        DigAllowed: {
            /** @description What held it back. */
            held: components["schemas"]["HeldBy"];
            /** @description Why. */
            why: string;
        };
        /** @description A buried line is bared by hand. */
        DigPothole: {
            at?: components["schemas"]["Point"] | null;
            /** @description The mark next to it. */
            mark?: string | null;
            /** @description Its outside diameter, with its unit: `2 in`. */
            size: string;
            /** @description Elevation of its top, in feet as typed. */
            top: string;
            /** @description The line. */
            utility: string;
        };
        /** @description What to dig to at a place. */
        DigTo: {
            /** @description One elevation. */
            at: components["schemas"]["Length"];
        } | {
            /** @description Within half a foot of a step's face: say which side. */
            near_step: {
                /** @description The elevation after it. */
                after: components["schemas"]["Length"];
                /** @description The elevation before it. */
                before: components["schemas"]["Length"];
                /** @description The station of the face. */
                station: components["schemas"]["Length"];
            };
        };
        /** @description What signs of distress ask for. */
        Distress: {
            /**
             * Format: double
             * @description So much flatter, run to one of rise.
             */
            flatter: number;
            /** @description The rule. */
            section: string;
        };
        /**
         * @description What a machine does. Everything but digging is waiting, by its cause.
         * @enum {string}
         */
        Doing: "digging" | "look" | "stopped" | "laser_hold" | "target_hold" | "cant" | "truck" | "attachment" | "broken" | "parked" | "other_wait" | "screen_lost";
        /** @description How long a machine did something. */
        DoingSum: {
            /**
             * Format: double
             * @description What it costs; none without a rate.
             */
            cost?: number | null;
            /** @description What. */
            doing: components["schemas"]["Doing"];
            /**
             * Format: int64
             * @description Milliseconds of the day.
             */
            ms: number;
        };
        /** @description What is asked before the call is sent. */
        Doubt: {
            /** @enum {string} */
            kind: "which_way";
        } | {
            /** @description By how much. */
            by: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "ground_rose";
            /** @description What it may have been. */
            perhaps: components["schemas"]["Perhaps"][];
        } | {
            /** @description By how much: positive when it reads higher, negative when it reads lower. */
            by: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "repeat_off";
        } | {
            /** @enum {string} */
            kind: "other_mark";
            /** @description That mark. */
            perhaps: string;
        } | {
            /** @description By how much. */
            by: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "far_below";
            /** @description What it may have been. */
            perhaps: components["schemas"]["Perhaps"][];
        };
        /** @description The squares of what is known of a shot before anybody reads it, in square feet: of the set-up and of the ground. */
        DoubtParts: {
            /**
             * Format: double
             * @description Of the laser's plane over the backsight.
             */
            backsight: number;
            /**
             * Format: double
             * @description Of the benchmark.
             */
            benchmark: number;
            /**
             * Format: double
             * @description Of the laser's plane over the ground shot.
             */
            foresight: number;
            /**
             * Format: double
             * @description Of what the rod stands on.
             */
            surface: number;
        };
        /** @description Why a set-up is in doubt. */
        DoubtReason: {
            /** @description On which benchmark. */
            benchmark: string;
            /** @enum {string} */
            kind: "failed_check";
            /** @description (HI − rod) − benchmark. */
            residual: components["schemas"]["Length"];
        } | {
            /** @description Who. */
            by: string;
            /** @enum {string} */
            kind: "bumped";
        } | {
            /** @description Which. */
            benchmark: string;
            /** @description New − old. */
            by: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "benchmark_changed";
        };
        /** @description Who holds the bucket down, and since when. */
        Down: {
            /** @description The operator. */
            by: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
        };
        /** @description A thing as somebody has typed it. */
        Draft: {
            /** @description What it is. */
            of: components["schemas"]["FormOf"];
            /** @description What was typed, by the form's keys: texts, yes or no, lists and tables of them. */
            typed: unknown;
        };
        /** @description What is wrong with a draft, and where. */
        DraftFault: components["schemas"]["Text"] & {
            /** @description Which draft of those that were sent, from 0; none when it is about another thing of the site. */
            draft?: number | null;
            /** @description The field, as `run.steps.1.elevation`; empty when it is about the whole thing. */
            field: string;
            /** @description Odd, but it can be used. */
            warning: boolean;
        };
        /** @description A target as a page draws it. */
        Drawn: {
            /** @description Where it ends beside its line, or all around: a surface's outline and holes come back to where they begin. */
            edges?: components["schemas"]["Point"][][];
            /** @description Where its line runs: an arc in short straights. Empty when it has no line. */
            line: components["schemas"]["Point"][];
            /** @description What to dig to along its line, up-station; a step stands at one station twice. Of a face, its toe. */
            profile: components["schemas"]["ProfilePoint"][];
            /** @description Square to a face's toe, from the toe to the crest; empty when it is no face. */
            section?: components["schemas"]["SectionPoint"][];
        };
        /** @description A target's line, drawn. */
        DrawnTarget: {
            /** @description Its line and what to dig to along it. */
            drawn: components["schemas"]["Drawn"];
            /** @description The target. */
            id: string;
        };
        /**
         * @description What the sums say.
         * @enum {string}
         */
        DriftSign: "quiet" | "higher" | "lower";
        /** @description Somebody throws away what waited on the phone. */
        DropUnsent: {
            /** @description The kind of what was to be said, such as `take_reading`. */
            what: string;
            /** @description What was typed, on one line. */
            words: string;
        };
        /**
         * @description Why a check is due; the first that applies, gravest first.
         * @enum {string}
         */
        Due: "bumped" | "drift" | "overdue" | "time" | "readings" | "temperature" | "restart";
        /** @description A check of the laser that is due. The cab is never told. */
        DueCard: {
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why. */
            why: components["schemas"]["Due"];
        };
        /** @description An edge was taped. */
        EdgeRead: {
            /** @description The line. */
            line: string;
            /** @description The machine. */
            machine: string;
            /** @description The mark. */
            mark?: string | null;
            mark_doubt?: components["schemas"]["Length"] | null;
            /** @description How far, how sure, and where that stands. */
            shot: components["schemas"]["LineShot"];
            /** @description As typed. */
            text: string;
        };
        /** @description A tape from a line to the edge of the cut. */
        EdgeTaped: {
            /** @description The line. */
            line: string;
            /** @description The entry. */
            said: components["schemas"]["Sentence"];
            /** @description How far, how sure. */
            shot: components["schemas"]["LineShot"];
        };
        /** @description A way out of a trench. */
        Egress: {
            /** @description From which depth. */
            limit: components["schemas"]["Limit"];
            /** @description Nobody goes farther than this to reach it. */
            travel: components["schemas"]["Length"];
        };
        /** @description Nobody spots for a machine any more. */
        EndSpotter: {
            /** @description Which. */
            machine: string;
        };
        /**
         * @description How a call ended. What has ended never comes back.
         * @enum {string}
         */
        Ending: "superseded" | "done" | "stale_by_age" | "grade_ran_out" | "stale_by_laser" | "stale_by_target" | "stale_by_mark" | "restated" | "withdrawn" | "refused" | "new_screen" | "ruled" | "stale_by_face" | "query_asked" | "day_closed" | "held" | "machine_moved" | "given_away" | "off_site" | "clock_behind";
        /** @description For the engineer alone: textbooks' figures with what they assume. No permission. */
        EngineerCard: {
            /**
             * Format: double
             * @description Cohesion that was taken: half of the measured strength, pounds a square foot.
             */
            cohesion_psf?: number | null;
            /**
             * Format: double
             * @description The same when it has cracked down half of its height, feet.
             */
            cracked_height_ft?: number | null;
            /**
             * Format: double
             * @description Critical height of a dry vertical face in one soil by its measured strength, feet; none without a strength. The most
             *     hopeful one: the soil whole up to the top.
             */
            critical_height_ft?: number | null;
            forecast?: components["schemas"]["Time"] | null;
            /**
             * Format: double
             * @description The same when no tension is relied on, feet: the most cautious.
             */
            no_tension_height_ft?: number | null;
            /**
             * Format: double
             * @description The weight that was taken, pounds a cubic foot.
             */
            weight_pcf: number;
        };
        /** @description One line of the log. `prev` and `hash` belong to the chain and are kept beside it. */
        Entry: {
            /** @description When the hub took it. */
            at: components["schemas"]["Time"];
            /** @description What happened. */
            body: components["schemas"]["Body"];
            /** @description Who said it. */
            by: components["schemas"]["By"];
            /** @description The key of the request that it answers; the same for all entries of one request. */
            key: string;
            /** @description When it was made, by the maker's clock corrected to the hub's; never later than `at`. */
            made_at: components["schemas"]["Time"];
            /**
             * Format: int64
             * @description Counts up by one from 1, across days.
             */
            seq: number;
        };
        /** @description Somebody asked to come in. */
        EntryAsked: {
            /** @description On which phone. */
            device: string;
            /** @description The machine whose keep-out it is. */
            machine: string;
            /** @description Where to, when it is a mark. */
            mark?: string | null;
            /**
             * Format: int32
             * @description How many come along, whom this person leads.
             */
            others?: number;
            /** @description Who. */
            person: string;
            /** @description The visit, named by the person's phone. */
            visit: string;
        };
        /** @description One person at one machine. */
        EntryCard: {
            /** @description Other machines at which the same visit stands: whoever asked goes in on the word of all of them. */
            also?: string[];
            /** @description On which phone. */
            device: string;
            lost?: components["schemas"]["Time"] | null;
            /** @description Where to, when it is a mark. */
            mark?: string | null;
            /** @description Nobody has answered in time. */
            not_answered: boolean;
            /**
             * Format: int32
             * @description How many come along, whom this person leads.
             */
            others?: number;
            /** @description Who. */
            person: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Where it stands. */
            stage: components["schemas"]["Stage"];
            /** @description The visit, for the presses about it. */
            visit: string;
        };
        /** @description The operator says WAIT. */
        EntryDelayed: {
            /** @description The machine. */
            machine: string;
            /** @description Who waits. */
            person: string;
            /** @description The visit. */
            visit: string;
        };
        /** @description The operator says no. */
        EntryRefused: {
            /** @description The machine. */
            machine: string;
            /** @description Who stays out. */
            person: string;
            /** @description The visit. */
            visit: string;
            /** @description Why, when the operator said it. */
            why?: string;
        };
        /** @description What was found, by eye, by hand and by instrument. */
        Evidence: {
            /**
             * @description Fissures or cracks.
             * @default false
             */
            cracks?: boolean;
            /**
             * Format: double
             * @description Layers that dip into the cut, as run to one of rise.
             * @default null
             */
            dip_run?: number | null;
            /**
             * @description Dug or filled before.
             * @default false
             */
            disturbed?: boolean;
            /** @default null */
            material?: components["schemas"]["Material"] | null;
            /** @default null */
            strength?: components["schemas"]["Strength"] | null;
            /** @default null */
            thumb?: components["schemas"]["Thumb"] | null;
            /**
             * @description Heavy traffic, pile driving and the like.
             * @default false
             */
            vibration?: boolean;
            /**
             * @description Water seeps freely, or the soil stands in water.
             * @default false
             */
            water?: boolean;
        };
        /** @description Rules for cuts. */
        ExcavationRules: {
            /** @description What else is asked of a cut and no reading shows. */
            also?: components["schemas"]["RuleReminder"][];
            /** @description Benches. */
            benches: components["schemas"]["Benches"];
            /**
             * Format: double
             * @description Layers that dip into the cut as flat as this or steeper, run to one of rise.
             */
            dip_run: number;
            /** @description Signs of distress. */
            distress: components["schemas"]["Distress"];
            /** @description A ladder, stair or ramp. */
            egress: components["schemas"]["Egress"];
            /** @description Where the tables end. */
            engineer: components["schemas"]["Limit"];
            /** @description The rule that asks for inspections. */
            inspection: components["schemas"]["Section"];
            /** @description Unsupported verticals at the bottom, by depth from the shallowest. */
            lower: components["schemas"]["LowerPart"][];
            /** @description What they are called; printed wherever they are used. */
            name: string;
            /** @description Protection against a cave-in. */
            protection: components["schemas"]["Limit"];
            /** @description Shields around verticals. */
            shield: components["schemas"]["Shield"];
            short_term?: components["schemas"]["ShortTerm"] | null;
            /** @description The steepest slope of each class. */
            slopes: components["schemas"]["Slopes"];
            /** @description Where they come from. */
            source: string;
            /** @description Spoil and loads at the crest. */
            spoil: components["schemas"]["SetBack"];
            /** @description Strength of cohesive soil. */
            strength: components["schemas"]["StrengthLimits"];
        };
        /** @description One thing that needs somebody, with one action. */
        Exception: {
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description What. */
            what: components["schemas"]["ExceptionKind"];
        };
        /** @description What needs somebody. */
        ExceptionKind: {
            /** @description Who pressed. */
            by: string;
            /** @enum {string} */
            kind: "stopped";
            /** @description Which. */
            machine: string;
            /** @description Why. */
            why: string;
        } | {
            /** @enum {string} */
            kind: "laser_in_doubt";
            /** @description Which. */
            set_up: string;
        } | {
            /** @description The mean difference. */
            dev: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "needs_ruling";
            /** @description Which mark. */
            mark: string;
        } | {
            /** @enum {string} */
            kind: "cant";
            /** @description Which machine. */
            machine: string;
            /** @description The mark of the call, if any. */
            mark?: string | null;
            /** @description Why. */
            why: components["schemas"]["CantReason"];
        } | {
            /** @enum {string} */
            kind: "screen_not_showing";
            /** @description Which machine. */
            machine: string;
        } | {
            /** @enum {string} */
            kind: "site_changed";
        } | {
            /** @enum {string} */
            kind: "target_not_seen";
            /** @description Which machine. */
            machine: string;
            /** @description Which target. */
            target: string;
        } | {
            /** @description What differs, both as they are. */
            differs: components["schemas"]["Differs"][];
            /** @enum {string} */
            kind: "target_typed_apart";
            /** @description Which target. */
            target: string;
        } | {
            /** @enum {string} */
            kind: "face_left";
            /** @description Why. */
            why: components["schemas"]["AlarmWhy"];
            /** @description Which. */
            zone: string;
        } | {
            /** @enum {string} */
            kind: "inspection_due";
            /** @description Somebody was called to work there without one. */
            overdue: boolean;
            /** @description Why. */
            why: components["schemas"]["InspectionWhy"];
            /** @description Which. */
            zone: string;
        } | {
            /** @enum {string} */
            kind: "daylight_over";
            /** @description The least distance; below zero is over it. */
            least: components["schemas"]["Length"];
            /** @description Which line. */
            line: string;
            /** @description Nobody may cross it. */
            no_cross: boolean;
            /** @description Which face. */
            zone: string;
        } | {
            /** @description How far behind the crest its foot stands; below zero is within the slope. */
            back: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "pile_at_crest";
            /** @description How far it takes. */
            needs: components["schemas"]["Length"];
            /** @description Which pile. */
            pile: string;
            /** @description Which face. */
            zone: string;
        } | {
            /** @description How. */
            crossing: components["schemas"]["Crossing"];
            /** @enum {string} */
            kind: "crossing_too_near";
        } | {
            /** @enum {string} */
            kind: "line_struck";
            /** @description What everybody was told. */
            struck: components["schemas"]["StruckCard"];
        } | {
            /** @enum {string} */
            kind: "paint_gone";
            /** @description Which line. */
            utility: string;
        } | {
            /** @enum {string} */
            kind: "ticket_waits";
            /** @description The ticket. */
            ticket: components["schemas"]["TicketCard"];
        } | {
            /** @enum {string} */
            kind: "gravel_short";
            /**
             * Format: double
             * @description What is missing, in tons.
             */
            tons: number;
        } | {
            /** @enum {string} */
            kind: "undercut_waits";
            /** @description The mark whose test failed. */
            mark: string;
            /**
             * Format: int64
             * @description The proposal's entry.
             */
            undercut: number;
        } | {
            /** @enum {string} */
            kind: "retest_owed";
            /** @description The mark. */
            mark: string;
            /** @description It passed before and is void; else it failed. */
            void: boolean;
        } | {
            /** @enum {string} */
            kind: "unconfirmed_entry";
            /** @description Which machine. */
            machine: string;
            /** @description Who. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "in_without_link";
            /** @description Which machine. */
            machine: string;
            /** @description Who. */
            person: string;
            /** @description The visit. */
            visit: string;
        } | {
            /** @enum {string} */
            kind: "entry_not_answered";
            /** @description Which machine. */
            machine: string;
            /** @description Who. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "not_ready";
            /** @description Of how many. */
            of: number;
            /** @description How many have one. */
            said: number;
        } | {
            /** @description From middle to middle. */
            apart: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "can_meet";
            /** @description One of them. */
            machine: string;
            /** @description What it takes for them not to meet. */
            needs: components["schemas"]["Length"];
            /** @description The other. */
            other: string;
        } | {
            /** @enum {string} */
            kind: "spotter_needed";
            /** @description Which line. */
            line: string;
            /** @description Which machine. */
            machine: string;
        } | {
            /** @description How far inside. */
            inside: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "on_slope";
            /** @description Which machine. */
            machine: string;
            /** @description Which face. */
            zone: string;
        } | {
            /** @description Who pressed. */
            by: string;
            /** @enum {string} */
            kind: "near_miss";
            /**
             * Format: int32
             * @description Which: 1 for NM-1.
             */
            number: number;
            /** @description What was said with the press; may be empty. */
            why: string;
        } | {
            /** @enum {string} */
            kind: "ties_first";
            /** @description Which machine. */
            machine: string;
            /** @description Which marks. */
            marks: string[];
        } | {
            /**
             * Format: int64
             * @description The entry that it remembers.
             */
            entry: number;
            /** @enum {string} */
            kind: "log_cut";
            /** @description Whose. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "query_waits";
            /** @description The marks and targets. */
            on: string[];
            /** @description Which. */
            query: string;
        } | {
            /** @enum {string} */
            kind: "look_asked";
            /** @description Which machine. */
            machine: string;
        };
        /** @description One part of a face: a slope, a vertical (no run) or a bench's tread (no rise). */
        Face: {
            /** @description Up. */
            rise: components["schemas"]["Length"];
            /** @description Outward, level. */
            run: components["schemas"]["Length"];
        };
        /** @description A face is left. */
        FaceAlarmed: {
            /** @description The machines that may stand or dig under it, or whose place nobody knows. */
            must_leave: string[];
            /** @description Why. */
            why: components["schemas"]["AlarmWhy"];
            /** @description Which. */
            zone: string;
        };
        /** @description A face or a trench. */
        FaceCard: {
            alarm?: components["schemas"]["Alarm"] | null;
            /** @description What the rules ask of a cut so deep and no reading shows. */
            also: components["schemas"]["RuleReminder"][];
            /** @description Benches that its class allows instead of the slope, from the bottom; empty where none are drawn for its soil. */
            benches: components["schemas"]["BenchCard"][];
            /** @description The class that counts. */
            class: components["schemas"]["SoilClass"];
            /** @description How it stands at each crest mark that was read. */
            crests: components["schemas"]["CrestCard"][];
            daylight?: components["schemas"]["DaylightFound"] | null;
            engineer?: components["schemas"]["EngineerCard"] | null;
            /** @description The highest place, from toe to the ground before the cut. */
            height: components["schemas"]["Length"];
            /** @description Its name. */
            id: string;
            inspection?: components["schemas"]["InspectionCard"] | null;
            /** @description Face or trench. */
            kind: components["schemas"]["CutKind"];
            ladders?: components["schemas"]["LaddersCard"] | null;
            /** @description What lowered it. */
            lowered_by: components["schemas"]["Lowered"][];
            /** @description Machines whose operators have yet to leave it. */
            must_leave: string[];
            /** @description The name that people read. */
            name: string;
            picked?: components["schemas"]["SoilClass"] | null;
            /** @description Pins. */
            pins: components["schemas"]["PinCard"][];
            /** @description What was seen, oldest first. */
            seen: components["schemas"]["SeenNow"][];
            /** @description The strip at its toe that belongs to nobody while it is left: as wide as it is high. */
            strip: components["schemas"]["Length"];
            /**
             * Format: int64
             * @description The newest word that asks for an inspection made after it; zero without one. What `inspect_face` names.
             */
            word: number;
        };
        /** @description A face was inspected. */
        FaceInspected: {
            /** @description What the hand found. */
            by_hand?: string;
            /** @description The class that counts. */
            class: components["schemas"]["SoilClass"];
            /** @description What was found. */
            evidence: components["schemas"]["Evidence"];
            /** @description What lowered it. */
            lowered_by?: components["schemas"]["Lowered"][];
            /** @description The class picked. */
            picked: components["schemas"]["SoilClass"];
            /** @description Why work goes on under a face that was left. */
            release?: string;
            /** @description What the eye saw. */
            seen: string;
            /** @description The face. */
            zone: string;
        };
        /** @description An operator has left a face. */
        FaceLeft: {
            /** @description The machine. */
            machine: string;
            /** @description The face. */
            zone: string;
        };
        /** @description A face was designed. */
        FaceRevised: {
            /** @description Its pieces. */
            pieces: components["schemas"]["DesignPiece"][];
            /** @description Whose design. */
            why: string;
            /** @description The face. */
            zone: string;
        };
        /** @description A face that was left. */
        FaceStrip: {
            /** @description The name that people read. */
            name: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Nobody nearer to its toe than this. */
            strip: components["schemas"]["Length"];
            /** @description Why. */
            why: components["schemas"]["AlarmWhy"];
            /** @description Which. */
            zone: string;
        };
        /** @description The face nearest to a machine at a stop. */
        FaceThen: {
            /** @description From where the machine was said to stand to the toe. */
            away: components["schemas"]["Length"];
            /** @description Which. */
            zone: string;
        };
        /** @description A face or a trench that is watched. */
        FaceZone: {
            /** @description The hand on which the bank stands, going along the toe. */
            bank: components["schemas"]["Side"];
            /** @description Marks at its crest, whose readings say how it stands. */
            crest_marks?: string[];
            /** @description The ground before the cut, as a target without layers. */
            ground: components["schemas"]["Target"];
            /** @description Its name. */
            id: string;
            /** @description Face or trench. */
            kind: components["schemas"]["CutKind"];
            /** @description Layers from the bottom up; none when it is one soil. */
            layers?: components["schemas"]["SoilLayer"][];
            /** @description The name that people read. */
            name: string;
            /** @description Pairs of pins across cracks. */
            pins?: string[];
            pipe_crown?: components["schemas"]["Length"] | null;
            /** @description The target that is dug along it. */
            target?: string | null;
            /** @description Its toe, corner by corner. */
            toe: components["schemas"]["ToeCorner"][];
            /** @description Marks at its toe, whose readings say how deep it is. */
            toe_marks?: string[];
        };
        /** @description How a soil changes its volume. */
        Factors: {
            /**
             * Format: double
             * @description Compacted by bank, 0.5 to 1.5.
             */
            compacted: number;
            /**
             * Format: double
             * @description Loose by bank, 1 to 2.
             */
            swell: number;
        };
        /**
         * @description Which way the pipe is to flow.
         * @enum {string}
         */
        Flow: "up_station" | "down_station";
        /**
         * @description How planes meet.
         * @enum {string}
         */
        Fold: "crown" | "valley";
        /** @description One field. */
        FormField: {
            /** @description Its key in the draft. */
            key: string;
            /** @description What it is called. */
            name: components["schemas"]["Text"];
            /** @description Whether it may not be left out. */
            needed: boolean;
            /** @description What it takes. */
            takes: components["schemas"]["FormTakes"];
        };
        /**
         * @description What a form is of.
         * @enum {string}
         */
        FormOf: "target" | "mark" | "line" | "benchmark" | "machine" | "rod" | "laser" | "overhead" | "pile" | "face" | "structure" | "utility" | "ticket" | "rules" | "frame";
        /** @description What a field takes. */
        FormTakes: {
            /** @enum {string} */
            kind: "text";
        } | {
            /** @enum {string} */
            kind: "length";
        } | {
            /** @enum {string} */
            kind: "size";
        } | {
            /** @enum {string} */
            kind: "number";
        } | {
            /** @enum {string} */
            kind: "rise";
        } | {
            /** @enum {string} */
            kind: "flag";
        } | {
            /** @enum {string} */
            kind: "fixed";
        } | {
            /** @enum {string} */
            kind: "word";
            /** @description The list. */
            words: components["schemas"]["FormWord"][];
        } | {
            /** @enum {string} */
            kind: "point";
        } | {
            /** @enum {string} */
            kind: "points";
        } | {
            /** @enum {string} */
            kind: "corners";
        } | {
            /** @enum {string} */
            kind: "texts";
        } | {
            /** @enum {string} */
            kind: "some_words";
            /** @description The list. */
            words: components["schemas"]["FormWord"][];
        } | {
            /** @enum {string} */
            kind: "lengths";
        } | {
            /** @enum {string} */
            kind: "one";
            /** @description Of which kind. */
            of: components["schemas"]["FormOf"];
        } | {
            /** @enum {string} */
            kind: "several";
            /** @description Of which kind. */
            of: components["schemas"]["FormOf"];
        } | {
            /** @description The fields of each. */
            fields: components["schemas"]["FormField"][];
            /** @enum {string} */
            kind: "rows";
        } | {
            /** @description Its fields. */
            fields: components["schemas"]["FormField"][];
            /** @enum {string} */
            kind: "table";
        } | {
            /** @enum {string} */
            kind: "one_of";
            /** @description The tables. */
            tables: components["schemas"]["FormField"][];
        };
        /** @description A word of a list. */
        FormWord: {
            /** @description As it is written. */
            id: string;
            /** @description What it is called. */
            name: components["schemas"]["Text"];
        };
        /** @description The forms that the form crew has. */
        FormsAtHand: {
            /** @description What a filler makes up, either way. */
            filler?: components["schemas"]["Length"];
            /** @description How high one form is: a step is so many of them. */
            height: components["schemas"]["Length"];
            /** @description Their widths; empty when nobody has said. */
            widths?: components["schemas"]["Length"][];
        };
        /** @description A pin of the plan as it was found. */
        FoundPin: {
            /** @description Where it was measured on the site. */
            at: components["schemas"]["Point"];
            /** @description Its east on the plan, as written. */
            east: string;
            /** @description Its name. */
            id: string;
            /** @description Its north on the plan, as written. */
            north: string;
        };
        /** @description How the plan's coordinates come on to the site. */
        Frame: {
            /** @description The plan's east of the site's corner, as written. */
            east: string;
            /** @description The plan's north of the site's corner, as written. */
            north: string;
            /** @description Pins of the plan that were found and measured on the site. */
            pins?: components["schemas"]["FoundPin"][];
            /**
             * Format: double
             * @description How far the site's x axis is turned left of the plan's east, in degrees.
             */
            turn: number;
            /** @description What the plan counts in. */
            unit: components["schemas"]["PlanUnit"];
        };
        /** @description What the hub says on the socket. */
        FromHub: {
            /** @description The hub's clock. */
            at: components["schemas"]["Time"];
            /** @description The build of the pages that the hub serves: another build than the page's own means to load it anew. */
            build: string;
            /** @description The phone's own device name. */
            device: string;
            /** @enum {string} */
            kind: "hello";
            /** @description A name of this log that outlives its days: what a phone remembers of another log says nothing of this one. */
            log: string;
            /**
             * Format: double
             * @description Hub seconds in a second.
             */
            speed: number;
        } | {
            /** @description Cards of which some tables are new: by field, then by table. */
            cards?: {
                [key: string]: {
                    [key: string]: unknown;
                };
            };
            /** @description Items that the screen has and of which some fields are new: by field of the view, then by name, then by the item's own. */
            changed?: {
                [key: string]: {
                    [key: string]: {
                        [key: string]: unknown;
                    };
                };
            };
            /** @description Nothing of the view waits for a moment to spare. */
            even: boolean;
            /** @description Items of lists that are new: by field, then by name. */
            items?: {
                [key: string]: {
                    [key: string]: unknown;
                };
            };
            /** @enum {string} */
            kind: "view";
            /** @description Fields that the view has no more. */
            left_out?: string[];
            /** @description Lists in which an item came, went or moved: by field, the names of all items. */
            order?: {
                [key: string]: string[];
            };
            /**
             * Format: int64
             * @description The entry that it holds up to.
             */
            seq: number;
            /** @description Which. */
            topic: components["schemas"]["TopicWord"];
            /** @description Fields that are new, as the view of that topic has them. */
            view: {
                [key: string]: unknown;
            };
            /** @description All of the view: what the screen had before counts no more. */
            whole: boolean;
        } | {
            /** @description The hub's clock. */
            at: components["schemas"]["Time"];
            /** @description True when nothing is kept any more: no number may stand, use hand signals. */
            halted: boolean;
            /** @description Its hash: the phone keeps the newest that it has seen. */
            hash: string;
            /**
             * Format: int64
             * @description The last entry of the log.
             */
            head: number;
            /** @enum {string} */
            kind: "beat";
            /**
             * Format: double
             * @description Hub seconds in a second.
             */
            speed: number;
            stop?: components["schemas"]["UnkeptStop"] | null;
        } | {
            /** @description The hub's clock. */
            at: components["schemas"]["Time"];
            /** @enum {string} */
            kind: "clock";
            /**
             * Format: int64
             * @description The phone's own moment, given back.
             */
            t0: number;
        } | {
            /** @enum {string} */
            kind: "bye";
            /** @description Why. */
            why: components["schemas"]["Why"];
        };
        /** @description What a page says on the socket. */
        FromPhone: {
            /** @enum {string} */
            kind: "clock";
            /**
             * Format: int64
             * @description The phone's own moment, to be given back.
             */
            t0: number;
        } | {
            /** @enum {string} */
            kind: "visible";
            /** @description It can. */
            visible: boolean;
        } | {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
            /** @enum {string} */
            kind: "have";
        } | {
            /** @description Its hash. */
            hash: string;
            /** @enum {string} */
            kind: "saw";
            /**
             * Format: int64
             * @description The entry.
             */
            seq: number;
        } | {
            /** @enum {string} */
            kind: "alive";
            page?: components["schemas"]["CabPage"] | null;
        };
        /** @description Something that the log does not say. */
        Gap: components["schemas"]["Text"] & {
            from?: components["schemas"]["Time"] | null;
            to?: components["schemas"]["Time"] | null;
        };
        /** @description A mark's generation. */
        Generation: {
            /**
             * Format: int32
             * @description Its generation.
             */
            generation: number;
            /** @description The mark. */
            mark: string;
        };
        /** @description What a machine can do, as far as somebody has said it. */
        Geometry: {
            boom_height?: components["schemas"]["Length"] | null;
            /** @description The widths of its buckets. */
            buckets?: components["schemas"]["Length"][];
            /** @description Its class, as the crew says it: `14 t`. */
            class?: string;
            dig_depth?: components["schemas"]["Length"] | null;
            dump_height?: components["schemas"]["Length"] | null;
        };
        /** @description The cab is given to whichever phone scans its code next: by its own operator, or by a supervisor. */
        GiveCab: {
            /** @description Which machine's. */
            machine: string;
        };
        /** @description A supervisor does not wait for a photo any more: its phone is lost, or has forgotten it. */
        GiveUpPhoto: {
            /** @description Its name. */
            photo: string;
            /** @description Why it will not come. */
            why: string;
        };
        /** @description Somebody goes in now, or says afterwards that they did. */
        GoIn: {
            /** @description The machine whose keep-out it is. */
            machine: string;
            /** @description Where to, when it is a mark. */
            mark?: string | null;
            /**
             * Format: int32
             * @description How many come along; without it as many as were asked for.
             */
            others?: number | null;
            /** @description The visit that the operator answered; a new one when nobody was asked. */
            visit: string;
        };
        /** @description A mark that a machine is about to take. */
        GoingMark: {
            /** @description What brings it back. */
            back: components["schemas"]["Back"];
            /** @description The machine. */
            machine: string;
            /** @description The mark. */
            mark: string;
            take?: components["schemas"]["TiesToTake"] | null;
        };
        /** @description The operator has it. */
        GotIt: {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
        };
        /** @description Gravel: its price and where it goes. */
        Gravel: {
            /** @description Where it goes. */
            beds: components["schemas"]["Bed"][];
            /** @description No lift is thicker. */
            lift: components["schemas"]["Length"];
            /**
             * Format: double
             * @description What a truck brings, in tons.
             */
            load_tons: number;
            /** @description The layer's name in the targets' stacks, and the material's name on tickets. */
            name: string;
            /**
             * Format: double
             * @description Its weight rammed, in pounds per cubic foot.
             */
            pcf: number;
            /**
             * Format: double
             * @description A cubic foot, placed and rammed.
             */
            placed_cf: number;
            /**
             * Format: double
             * @description A ton, delivered.
             */
            ton: number;
        };
        /** @description How much gravel. */
        GravelCard: {
            /**
             * Format: double
             * @description Came so far.
             */
            came_tons: number;
            /**
             * Format: double
             * @description What is enough costs, delivered.
             */
            enough_cost: number;
            /**
             * Format: int32
             * @description Loads for what is enough.
             */
            enough_loads: number;
            /**
             * Format: double
             * @description Enough nine times in ten, in tons.
             */
            enough_tons: number;
            /**
             * Format: int32
             * @description How many finish passes the low spots rest on.
             */
            landings: number;
            /**
             * Format: double
             * @description What low spots are expected to take beyond it.
             */
            low_cy: number;
            /**
             * Format: double
             * @description What the mean costs, delivered.
             */
            mean_cost: number;
            /**
             * Format: double
             * @description All of it.
             */
            mean_cy: number;
            /**
             * Format: int32
             * @description Loads for the mean.
             */
            mean_loads: number;
            /**
             * Format: double
             * @description The mean, in tons.
             */
            mean_tons: number;
            /**
             * Format: double
             * @description As drawn, rammed, in cubic yards.
             */
            nominal_cy: number;
            /**
             * Format: double
             * @description Ordered so far.
             */
            ordered_tons: number;
            /**
             * Format: double
             * @description Patches and undercuts.
             */
            patches_cy: number;
            /**
             * Format: double
             * @description One standard deviation.
             */
            sd_cy: number;
            /**
             * Format: double
             * @description What the orders lack of enough; zero before the first order.
             */
            short_tons: number;
        };
        /** @description Gravel was ordered. */
        GravelOrdered: {
            /**
             * Format: double
             * @description What was enough nine times in ten then, in tons.
             */
            enough_tons?: number | null;
            /**
             * Format: double
             * @description What the mean was then, in tons; none without a price list.
             */
            mean_tons?: number | null;
            /** @description Where, and what was agreed. */
            note?: string;
            /**
             * Format: double
             * @description How much, in tons.
             */
            tons: number;
        };
        /** @description The orders do not cover what is needed any more. */
        GravelShort: {
            /**
             * Format: double
             * @description What is enough nine times in ten, in tons.
             */
            enough_tons: number;
            /**
             * Format: double
             * @description What is ordered, in tons.
             */
            ordered_tons: number;
            /**
             * Format: double
             * @description What is missing, in tons.
             */
            short_tons: number;
        };
        /** @description What the ground person works with. */
        GroundAccountView: {
            /** @description When each bottom arrives. */
            arrivals: components["schemas"]["ArrivalCard"][];
            /**
             * Format: double
             * @description The bearing that the drawing asks, in pounds per square foot.
             */
            bearing_psf?: number | null;
            /** @description Whether a density is asked. */
            density_asked: boolean;
            /** @description Loads of the day, newest first, as many as fit a hand. */
            loads: components["schemas"]["LoadCard"][];
            /** @description What is hauled. */
            materials: string[];
            /** @description Patches that are not done. */
            patches: components["schemas"]["PatchCard"][];
            /** @description Soil tests. */
            tests: components["schemas"]["TestCard"][];
            /** @description Who is needed, in the order that costs least. */
            visits: components["schemas"]["VisitCard"][];
        };
        /** @description What the ground phones show; the same for all of them. */
        GroundView: {
            /** @description Loads, patches, tests, who is needed next. */
            account: components["schemas"]["GroundAccountView"];
            closed?: components["schemas"]["Time"] | null;
            /** @description Cuts and what is buried. */
            cuts: components["schemas"]["CutsCard"];
            /** @description The day. */
            day: string;
            /** @description The marks that machines are about to take, and the ties to take first. */
            going: components["schemas"]["GoingMark"][];
            /** @description One card for each machine. */
            machines: components["schemas"]["MachineCard"][];
            /** @description The last reading on each mark that has one. */
            marks: components["schemas"]["MarkCard"][];
            /** @description How well people read whose blind pairs tell it. */
            own_doubts?: components["schemas"]["OwnDoubt"][];
            /** @description What was last said of the rain. */
            rain: components["schemas"]["RainNow"];
            /** @description The laser set-ups of the day that are not closed, newest last. */
            set_ups: components["schemas"]["SetUpCard"][];
            /** @description What a shot at each mark would take, for each usable set-up. */
            shots: components["schemas"]["Shot"][];
            /** @description The job. */
            site: string;
            /** @description The start of the day. */
            start: components["schemas"]["StartCard"];
            /** @description What a failed check or a bump put in doubt, while marks are still to be shot again or the laser is in doubt. */
            suspects: components["schemas"]["SuspectCard"][];
            /** @description What stays too close to call on the high side after two shots is trimmed. */
            trims: boolean;
            /** @description Water that stands, in the order of its newest words. */
            water?: components["schemas"]["WaterNow"][];
        };
        /**
         * @description A signal by hand (common practice; the crew's own sheet draws them).
         * @enum {string}
         */
        HandSignal: "stop" | "lower" | "raise" | "swing" | "travel" | "so_much" | "grade";
        /** @description What is hauled. */
        HauledMaterial: {
            /** @description How it changes its volume. */
            factors: components["schemas"]["Factors"];
            /**
             * Format: double
             * @description What a load of it costs to be rid of, or to have, without the truck.
             */
            load?: number | null;
            /**
             * Format: double
             * @description What it weighs in the truck, in pounds per cubic foot; none when nobody has said.
             */
            loose_pcf?: number | null;
            /** @description What the crew calls it. */
            name: string;
        };
        /** @description A phone remembers an end of the chain that the log does not hold: the log was cut or rewritten since. */
        HeadMismatch: {
            /** @description The hash that the log has under that number; none when it ended before. */
            has?: string | null;
            /**
             * Format: int64
             * @description Where the log ended when the phone came.
             */
            log_ends: number;
            /** @description Whose phone. */
            person: string;
            /** @description What it remembers. */
            remembered: components["schemas"]["ChainHead"];
        };
        /** @description Whether the hub is up. */
        Health: {
            /** @description The day. */
            day: string;
            /** @description True when nothing is kept any more. */
            halted: boolean;
            /**
             * Format: int64
             * @description The last entry of the log.
             */
            head: number;
            /** @description True while calls are taken. */
            ok: boolean;
            /** @description The job. */
            site: string;
            /** @description What to do, when something is wrong. */
            what_to_do?: string | null;
        };
        /** @description What holds a call back. */
        HeldBy: {
            /** @enum {string} */
            kind: "face_left";
            /** @description Which. */
            zone: string;
        } | {
            /** @enum {string} */
            kind: "line_struck";
            /** @description Which; none when it is not drawn. */
            line?: string | null;
        } | {
            /** @enum {string} */
            kind: "daylight";
            /** @description Which face. */
            zone: string;
        } | {
            /** @enum {string} */
            kind: "not_located";
            /** @description The mark there; entries from before it was asked for have none, and let go on everywhere. */
            mark?: string | null;
        } | {
            /** @enum {string} */
            kind: "ticket_lapsed";
            /** @description Which. */
            ticket: string;
        } | {
            /** @enum {string} */
            kind: "paint_gone";
            /** @description Which. */
            utility: string;
        } | {
            /** @enum {string} */
            kind: "too_near";
            /** @description The line. */
            utility: string;
            /** @description The trench. */
            zone: string;
        } | {
            /** @enum {string} */
            kind: "query";
            /** @description Which query. */
            query: string;
        };
        /** @description What may have happened to the numbers. */
        Hypothesis: components["schemas"]["Text"] & {
            /** @description So many of the stray points would then lie on the lot. */
            explains: number;
            /** @description Of so many that lie off it. */
            of: number;
            /** @description Which slip. */
            slip: components["schemas"]["PlanSlip"];
        };
        /** @description A point of the file, on the site. */
        ImportPoint: {
            /** @description Where it comes to lie. */
            at: components["schemas"]["Point"];
            elevation?: components["schemas"]["Length"] | null;
            /** @description Its name. */
            id: string;
            /** @description Its line. */
            line: number;
            /** @description What the file says about it. */
            note: string;
        };
        /** @description What a file would give. */
        ImportPreview: {
            /** @description How many points there are. */
            all_points: number;
            /** @description What may have happened to the numbers; never put right by itself. */
            hypotheses: components["schemas"]["Hypothesis"][];
            /** @description What was not understood, or is wrong, with its line. */
            not_understood: components["schemas"]["ImportRemark"][];
            /** @description The first points, on the site: no more can be taken at once. */
            points: components["schemas"]["ImportPoint"][];
            /** @description How many triangles the surface has; none when the file is no surface. */
            triangles?: number | null;
            /** @description What was understood, in words. */
            understood: components["schemas"]["Text"][];
            /** @description Whether it could be imported as it is. */
            usable: boolean;
        };
        /** @description A remark with its line. */
        ImportRemark: {
            /** @description Its row is left out, and the others can be taken. */
            left_out?: boolean;
            /** @description The line, from 1. */
            line: number;
            /** @description What is wrong or left aside, and what to do. */
            message: string;
            /** @description It keeps the file from being used. */
            wrong: boolean;
        };
        /** @description A machine's keep-out with somebody in, for the supervisor: also of a machine that the site has no more. */
        InsideCard: {
            /** @description The machine. */
            machine: string;
            /** @description Who may be in. */
            people: components["schemas"]["EntryCard"][];
        };
        /** @description An inspection was made; a supervisor writes down what came of it. */
        Inspect: {
            /**
             * Format: int64
             * @description The entry that asked for it; none when nobody had.
             */
            asked?: number | null;
            /** @description On which conditions; empty for none. */
            conditions?: string;
            /** @description Who inspected. */
            inspector: string;
            /** @description What was shown, and what was found of each. */
            items: components["schemas"]["InspectedItem"][];
            /** @description What came of it. */
            result: components["schemas"]["InspectionResult"];
            signature?: components["schemas"]["Signature"] | null;
            /** @description The targets that were looked at; as asked for when left out. It is void when the ground there changes. */
            targets?: string[];
            /** @description What was inspected; as asked for when left out. */
            what?: string;
            /** @description In the inspector's words. */
            words: string;
        };
        /** @description An inspection. */
        InspectFace: {
            /**
             * Format: int64
             * @description The alarm that the page showed, when the words bring people back: see [`Alarm::alarm`](crate::cuts::now::Alarm).
             */
            alarm?: number | null;
            /** @description What the hand found, in words; a strength or a thumb in the evidence does too. */
            by_hand?: string;
            /** @description The class picked. */
            class: components["schemas"]["SoilClass"];
            /** @description What was found; it can only lower the class. */
            evidence?: components["schemas"]["Evidence"];
            /** @description Tapes between pins. */
            pins?: components["schemas"]["PinTape"][];
            /** @description Why work goes on under a face that was left; empty leaves it left. */
            release?: string;
            /** @description What the eye saw, in words. */
            seen: string;
            /**
             * Format: int64
             * @description The newest word about the face that the form showed when it was opened, zero for none: see [`FaceNow::word`](crate::cuts::now::FaceNow). An
             *     inspection that names none is held against the time alone.
             */
            word?: number | null;
            /** @description The face. */
            zone: string;
        };
        /** @description An inspection was made. */
        Inspected: {
            arrived?: components["schemas"]["Time"] | null;
            /**
             * Format: int64
             * @description The entry that asked for it.
             */
            asked?: number | null;
            /** @description On which conditions. */
            conditions: string;
            /** @description Who inspected. */
            inspector: string;
            /** @description What was shown, and what was found of each. */
            items: components["schemas"]["InspectedItem"][];
            /** @description The marks of the targets that were looked at. */
            looked_at?: components["schemas"]["LookedAt"][];
            /** @description When it was made. */
            made_at: components["schemas"]["Time"];
            /** @description What came of it. */
            result: components["schemas"]["InspectionResult"];
            signature?: components["schemas"]["Signature"] | null;
            /** @description What was inspected. */
            what: string;
            /** @description In the inspector's words. */
            words: string;
        };
        /** @description An inspection. */
        InspectedCard: {
            asked?: components["schemas"]["InspectionAsked"] | null;
            asked_at?: components["schemas"]["Time"] | null;
            /**
             * Format: int64
             * @description Its number, for `inspect` and `sign_inspection`.
             */
            inspection: number;
            made?: components["schemas"]["Inspected"] | null;
            signed?: components["schemas"]["Signature"] | null;
            void?: components["schemas"]["VoidCard"] | null;
        };
        /** @description Something that was shown at an inspection. */
        InspectedItem: {
            /** @description What was found: a value or words. */
            found: string;
            /** @description What: a target, marks, a record. */
            what: string;
        };
        /** @description An inspection was asked for. */
        InspectionAsked: {
            /** @description Who is asked. */
            of: string;
            /** @description The targets that it is about. */
            targets: string[];
            /** @description What is to be inspected. */
            what: string;
        };
        /** @description How it stands with the inspection. */
        InspectionCard: {
            /** @enum {string} */
            kind: "signed";
            /** @description By whom, when. */
            signed: components["schemas"]["Signed"];
        } | {
            /** @enum {string} */
            kind: "due";
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why. */
            why: components["schemas"]["InspectionWhy"];
        } | {
            /** @enum {string} */
            kind: "overdue";
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why it was due. */
            why: components["schemas"]["InspectionWhy"];
            /** @description Since when somebody works there. */
            worked_at: components["schemas"]["Time"];
        };
        /**
         * @description What came of an inspection.
         * @enum {string}
         */
        InspectionResult: "passed" | "in_part" | "failed";
        /** @description An inspection was signed by whoever made it. */
        InspectionSigned: {
            /**
             * Format: int64
             * @description Which.
             */
            inspection: number;
            /** @description The signature. */
            signature: components["schemas"]["Signature"];
        };
        /** @description An inspection does not count any more. */
        InspectionVoided: {
            /**
             * Format: int64
             * @description Which: its number in the view.
             */
            inspection: number;
            /** @description The first mark that it does not hold for any more. */
            mark: string;
            /** @description What had been inspected. */
            what: string;
            /** @description Why. */
            why: components["schemas"]["VoidCause"];
        };
        /**
         * @description Why an inspection is due.
         * @enum {string}
         */
        InspectionWhy: "new_day" | "seen" | "rain" | "water" | "left";
        /** @description The invert at a station. */
        Invert: {
            /** @description The inside bottom of the pipe. */
            elevation: components["schemas"]["Length"];
            /** @description Its station. */
            station: components["schemas"]["Length"];
        };
        /** @description What a code lets in. */
        Invitation: {
            /** @description The day. */
            day: string;
            /** @description The machine, for an operator. */
            machine: string | null;
            /** @description The roles; pick one or more. */
            roles: components["schemas"]["Role"][];
            /** @description The job. */
            site: string;
        };
        /** @description The hub lets somebody in who showed a valid code. */
        Join: {
            /** @description The name that the hub gave the device. */
            device: string;
            /** @description The device that this same phone was until now, by the cookie that it showed. */
            handset?: string | null;
            /** @description The screen's language. */
            language: components["schemas"]["Language"];
            /** @description The machine, for an operator. */
            machine?: string | null;
            /** @description Name or initials. */
            person: string;
            /** @description Roles that the code allows. */
            roles: components["schemas"]["Role"][];
            /** @description Whoever joins has said: I am the same person as the one of that name, on another phone. */
            same_person?: boolean;
            /** @description SHA-256 of the device's cookie, in hex; the cookie itself is never written down. */
            token_digest: string;
            /** @description The screen's unit. */
            unit: components["schemas"]["ScreenUnit"];
        };
        /**
         * @description An earlier reading of a mark, as a next shot of the rod from a set-up would join it: enough for a phone to say the call
         *     before it is sent, as the hub then says it.
         */
        Joinable: {
            /** @description The differences that are averaged with the next, if all lie within `spread` of it; empty when none can be. */
            devs: components["schemas"]["Length"][];
            /**
             * Format: int64
             * @description Its entry; a reading that corrects this one looks at the one before.
             */
            reading: number;
            side?: components["schemas"]["StepSide"] | null;
            /** @description Shots that differ by more are not averaged. */
            spread: components["schemas"]["Length"];
            until?: components["schemas"]["Time"] | null;
        };
        /** @description A phone came in. */
        Joined: {
            /** @description The device. */
            device: string;
            /** @description The device that this same phone was until now. */
            handset?: string | null;
            /** @description Its language. */
            language: components["schemas"]["Language"];
            /** @description Its machine. */
            machine?: string | null;
            /** @description Name or initials. */
            person: string;
            /** @description The device that was this machine's screen until now. */
            retires?: string | null;
            /** @description Its roles. */
            roles: components["schemas"]["Role"][];
            /** @description The device of the same name; whoever joined said that they are that person. */
            same_as?: string | null;
            /** @description SHA-256 of its cookie, in hex. */
            token_digest: string;
            /** @description Its unit. */
            unit: components["schemas"]["ScreenUnit"];
        };
        /** @description Somebody comes in. */
        Joining: {
            /** @description The code. */
            code: string;
            /** @description The screen's language. */
            language: components["schemas"]["Language"];
            /** @description Name or initials. */
            person: string;
            /** @description The roles, among those of the code. */
            roles: components["schemas"]["Role"][];
            /** @description I am the person of that name who is here already, on another phone. */
            same_person?: boolean;
            /** @description The screen's unit. */
            unit: components["schemas"]["ScreenUnit"];
        };
        /** @description A reading judged against a target. */
        Judged: {
            /** @description Measured − dig-to of this shot, square to a cut face: positive is HIGH. */
            dev: components["schemas"]["Length"];
            /** @description The elevation of that surface. */
            dig_to: components["schemas"]["Length"];
            /** @description The guard band. */
            guard: components["schemas"]["Length"];
            /** @description Earlier shots that are averaged with this one. */
            joined: number[];
            /** @description The mean difference of all shots joined, rounded to the nearest count. */
            mean: components["schemas"]["Length"];
            /** @description Too close after two shots: the supervisor rules. */
            needs_ruling: boolean;
            /**
             * Format: int32
             * @description Its revision.
             */
            revision: number;
            /** @description Too close on the high side after two shots, trimmed by the site's rule. */
            settled_high: boolean;
            /** @description The surface that it was judged against; the ground to dig to when none. */
            surface?: string | null;
            /** @description The target. */
            target: string;
            /** @description High, on, low, or too close to call. */
            verdict: components["schemas"]["Verdict"];
        };
        /**
         * @description Something to know about a call, told beside it.
         * @enum {string}
         */
        Label: "one_benchmark" | "high_by_rule" | "by_ruling" | "confirmed" | "not_proved" | "not_checked" | "hand_dig" | "face_not_inspected";
        /** @description Ladders along a trench. */
        LaddersCard: {
            /**
             * Format: int32
             * @description How many.
             */
            many: number;
            /** @description Nobody goes farther than this to one. */
            travel: components["schemas"]["Length"];
        };
        /** @description What marks are laid from. */
        LaidFrom: {
            /** @enum {string} */
            kind: "control";
        } | {
            /** @enum {string} */
            kind: "hub";
        } | {
            /** @enum {string} */
            kind: "string";
        } | {
            /** @description Which. */
            id: string;
            /** @enum {string} */
            kind: "mark";
        } | {
            /** @enum {string} */
            kind: "ties";
        } | {
            /** @enum {string} */
            kind: "old_paint";
        };
        /** @description Mean and scatter of landings, in feet; positive is high. */
        Landing: {
            /**
             * Format: int32
             * @description How many.
             */
            count: number;
            /**
             * Format: double
             * @description Their mean.
             */
            mean_ft: number;
            /**
             * Format: double
             * @description Their standard deviation, with one degree of freedom spent on the mean.
             */
            sd_ft: number;
        };
        /** @description A group of landings. */
        LandingCard: {
            /** @description Where to aim in soil, or why that can't be said. */
            advice: components["schemas"]["AdviceCard"];
            capability?: components["schemas"]["Capability"] | null;
            /** @description Each landing, in order. */
            errors: components["schemas"]["Length"][];
            in_rock?: components["schemas"]["Advice"] | null;
            /** @description Mean and scatter. */
            landing: components["schemas"]["Landing"];
            /** @description The machine; none for all of them together. */
            machine?: string | null;
            surface?: components["schemas"]["Surface"] | null;
            /** @description The tightest tolerance among them. */
            tolerance: components["schemas"]["Tolerance"];
        };
        /** @description One lane. */
        Lane: {
            /** @description Of what. */
            of: components["schemas"]["LaneOf"];
            /** @description One span after another; where there is none, nothing was known. */
            spans: components["schemas"]["LaneSpan"][];
        };
        /** @description Whose lane it is. */
        LaneOf: {
            /** @enum {string} */
            kind: "machine";
            /** @description A machine, by what it did. */
            name: string;
        } | {
            /** @enum {string} */
            kind: "screen";
            /** @description The screen in a machine's cab. */
            name: string;
        } | {
            /** @enum {string} */
            kind: "laser";
            /** @description A laser set-up. */
            name: string;
        } | {
            /** @enum {string} */
            kind: "person";
            /** @description A person. */
            name: string;
        };
        /** @description A span of a lane. */
        LaneSpan: {
            /** @description From. */
            from: components["schemas"]["Time"];
            /** @description To. */
            to: components["schemas"]["Time"];
            /** @description What. */
            what: components["schemas"]["LaneWhat"];
        };
        /** @description What a lane shows. */
        LaneWhat: {
            /** @description What. */
            doing: components["schemas"]["Doing"];
            /** @enum {string} */
            kind: "does";
        } | {
            /** @enum {string} */
            kind: "showing";
        } | {
            /** @enum {string} */
            kind: "hidden";
        } | {
            /** @enum {string} */
            kind: "lost";
        } | {
            /** @enum {string} */
            kind: "unproven";
        } | {
            /** @enum {string} */
            kind: "proven";
        } | {
            /** @enum {string} */
            kind: "check_due";
        } | {
            /** @enum {string} */
            kind: "in_doubt";
        } | {
            /** @enum {string} */
            kind: "on_site";
        } | {
            /** @enum {string} */
            kind: "asks_in";
            /** @description Whose. */
            machine: string;
        } | {
            /** @enum {string} */
            kind: "in";
            /** @description Without a link. */
            lost: boolean;
            /** @description Whose. */
            machine: string;
            /** @description The operator had not answered. */
            unconfirmed: boolean;
        };
        /**
         * @description A language that a screen speaks. [`Language::ALL`], what each is called and which field of [`Text`] is its own are made by the
         *     build from `web-ui/src/languages.json`, which the pages read too.
         * @enum {string}
         */
        Language: "english" | "spanish" | "portuguese";
        /** @description A rotating laser. */
        Laser: {
            /** @description One standard deviation of its plane over 100 ft. */
            doubt_per_100_ft: components["schemas"]["Length"];
            /** @description Its name. */
            id: string;
        };
        /**
         * @description What a laser that was in doubt has to do with a mark's last reading.
         * @enum {string}
         */
        LaserDoubt: "nothing" | "open" | "settled";
        /** @description What stands behind a set-up while some calls rested on it. */
        LaserProof: {
            after?: components["schemas"]["CheckMade"] | null;
            before?: components["schemas"]["CheckMade"] | null;
            /** @description The benchmark of its backsight. */
            benchmark: string;
            /** @description What a failed check put in doubt of the marks that were called, judged both ways. */
            doubts: components["schemas"]["SuspectMark"][];
            /** @description The laser. */
            laser: string;
            /** @description The set-up. */
            set_up: string;
        };
        /** @description A laser was set up. */
        LaserSetUp: {
            /** @description What its height rests on. */
            basis: components["schemas"]["Basis"];
            /** @description The laser. */
            laser: string;
            place?: components["schemas"]["Point"] | null;
            /** @description Its name, given by the hub: S1, S2 and so on. */
            set_up: string;
            slope?: components["schemas"]["LaserSlope"] | null;
        };
        /** @description How a laser's plane is sloped, along the site's axes. */
        LaserSlope: {
            /**
             * Format: double
             * @description Rise to the east, in feet per foot; negative when it falls.
             */
            rise_east: number;
            /**
             * Format: double
             * @description Rise to the north, in feet per foot; negative when it falls.
             */
            rise_north: number;
        };
        /** @description What was read in a test; rod values as typed. */
        LaserTest: {
            /** @description From the laser to the rod; 100 ft or more shows most. */
            distance: components["schemas"]["Length"];
            /** @description The first axis toward the rod. */
            first: string;
            /** @description The first axis turned half round. */
            first_turned: string;
            /** @enum {string} */
            kind: "turned";
            /** @description The second axis toward the rod. */
            second: string;
            /** @description The second axis turned half round. */
            second_turned: string;
        } | {
            /** @description Peg B from near A. */
            far_b: string;
            /** @enum {string} */
            kind: "two_peg";
            /** @description Peg A from the middle. */
            middle_a: string;
            /** @description Peg B from the middle. */
            middle_b: string;
            /** @description Peg A from near A. */
            near_a: string;
            /** @description From the laser near A to peg A. */
            to_a: components["schemas"]["Length"];
            /** @description From the laser near A to peg B. */
            to_b: components["schemas"]["Length"];
        };
        /** @description A laser was tested. */
        LaserTested: {
            /** @description Which. */
            laser: string;
            /** @description The rod. */
            rod: string;
            /** @description Beyond 0.01 ft in 100 ft the laser goes to service. */
            service: boolean;
            /** @description The slant that was found, over 100 ft. */
            slant_per_100_ft: components["schemas"]["Length"];
            /** @description What was read. */
            test: components["schemas"]["LaserTest"];
        };
        /**
         * @description How long codes last.
         * @enum {string}
         */
        Lasts: "today" | "this_week" | "until_renewed";
        /** @description Why a reading is late. */
        LateReason: {
            /** @description Whose. */
            by: string;
            /** @enum {string} */
            kind: "newer_reading";
        } | {
            /** @enum {string} */
            kind: "too_old";
            /**
             * Format: int64
             * @description How many milliseconds.
             */
            ms: number;
        } | {
            /** @enum {string} */
            kind: "newer_call";
            /** @description Where. */
            mark: string;
        } | {
            /** @enum {string} */
            kind: "day_closed";
        };
        /** @description Marks are laid, or laid again. */
        LayMarks: {
            /** @description From what. */
            from: components["schemas"]["LaidFrom"];
            /** @description Which. */
            marks: string[];
            /** @description A word about it. */
            note?: string;
        };
        /** @description One layer. */
        Layer: {
            /** @description What it is, such as `gravel`. */
            name: string;
            /** @description Above 0 and up to 5 ft. */
            thickness: components["schemas"]["Length"];
        };
        /** @description The operator has left the face. */
        LeaveFace: {
            /**
             * Format: int64
             * @description The alarm that the cab showed: see [`MustLeave::alarm`](crate::cuts::now::MustLeave).
             */
            alarm?: number;
            /** @description Which. */
            zone: string;
        };
        /**
         * Format: int64
         * @description A length or an elevation: a whole number of tenth-micrometres (1e-7 m).
         *
         *     Sums beyond the end of the scale stay at its end; nothing from outside comes near it.
         */
        Length: number;
        /** @description A supervisor lets a phone stay in over the night, or not any more. */
        LetStay: {
            /** @description Which. */
            device: string;
            /** @description Whether it stays. */
            stays: boolean;
        };
        /** @description The only benchmark levelled again: a point shot before, the laser's height changed, benchmark and point shot again. */
        LevelAgain: {
            /** @description The rod on the benchmark, after. */
            benchmark_again: string;
            /** @description The rod on the same point, after. */
            point_again: string;
            /** @description The rod on a hard point, before the height was changed. */
            point_before: string;
            /** @description The rod. */
            rod: string;
            /** @description Which set-up. */
            set_up: string;
        };
        /** @description A point of a line that closes. */
        Levelled: {
            /** @description Its elevation as booked. */
            booked: components["schemas"]["Length"];
            /** @description One standard deviation: half the misclosure, or 0.005 ft times the root of the set-ups so far, whichever is larger. */
            doubt: components["schemas"]["Length"];
            /** @description Its elevation with its part of the misclosure taken off. */
            elevation: components["schemas"]["Length"];
            /** @description Its name. */
            point: string;
        };
        /** @description A line of levels that closes. */
        LevelsCard: {
            /**
             * Format: int64
             * @description Its entry, for `add_benchmark`.
             */
            entry: number;
            /** @description What was read and what came of it. */
            run: components["schemas"]["LevelsRun"];
        };
        /** @description A line of levels was run, and it closes. */
        LevelsRun: {
            /** @description How far it may miss. */
            allowed: components["schemas"]["Length"];
            /** @description Where it starts. */
            from: string;
            /** @description How far it misses: positive when it comes out too high. */
            misclosure: components["schemas"]["Length"];
            /** @description The points between, adjusted. */
            points: components["schemas"]["Levelled"][];
            /** @description The rod. */
            rod: string;
            /** @description Where it closes. */
            to: string;
            /** @description What was read. */
            turns: components["schemas"]["TurnRead"][];
        };
        /** @description A lift that was rammed. */
        LiftCard: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description How damp. */
            damp: components["schemas"]["Damp"];
            /**
             * Format: int32
             * @description Which lift.
             */
            lift: number;
            /** @description On which patch, mark or target. */
            on: string;
            /**
             * Format: int32
             * @description Passes.
             */
            passes: number;
            /** @description How thick. */
            thickness: components["schemas"]["Length"];
            /** @description Thicker than a lift may be. */
            too_thick: boolean;
        };
        /** @description A supervisor lifts a stop. */
        LiftStop: {
            /** @description Which machine; all when none is named. */
            machine?: string | null;
            /**
             * Format: int64
             * @description The newest press that the page showed: see [`StopCard::press`]. A stop that was pressed again since is not lifted.
             */
            press?: number;
            /** @description What was seen before it was lifted. */
            why: string;
        };
        /** @description A depth from which something is owed. */
        Limit: {
            binds?: components["schemas"]["Binds"] | null;
            /** @description The depth. */
            depth: components["schemas"]["Length"];
            /** @description At that depth already, else only beyond it. */
            or_more: boolean;
            /** @description The rule. */
            section: string;
        };
        /** @description A line on the plan. */
        Line: {
            /** @description One standard deviation of its place on the ground. */
            doubt: components["schemas"]["Length"];
            /** @description Its name. */
            id: string;
            /** @description The side on which the work stays, looking along the line. */
            keep: components["schemas"]["Side"];
            /** @description What kind of line it is. */
            kind: components["schemas"]["LineKind"];
            /** @description True when nobody may dig beyond it. */
            no_cross: boolean;
            /** @description A word about it. */
            note?: string;
            /** @description Its corners, in order. */
            points: components["schemas"]["Point"][];
        };
        /** @description The daylight line against a line. */
        LineFound: {
            /** @description The least distance, positive on the side to keep to. */
            least: components["schemas"]["Length"];
            /** @description Which. */
            line: string;
            /** @description Nobody may cross it. */
            no_cross: boolean;
            /** @description The stretches of the toe whose daylight touches or crosses it, a place farther each way. */
            over: components["schemas"]["Stretch"][];
            /** @description Where that stands. */
            standing: components["schemas"]["LineStanding"];
            /** @description The toe there. */
            toe: components["schemas"]["Point"];
        };
        /**
         * @description What a line stands for.
         * @enum {string}
         */
        LineKind: "property" | "easement" | "setback" | "limit_of_work";
        /** @description An edge against a line. */
        LineShot: {
            /** @description From the line to the edge: positive on the side to keep to, negative over the line. */
            distance: components["schemas"]["Length"];
            /** @description The doubt that is counted against the crew. */
            guard: components["schemas"]["Length"];
            /**
             * Format: int32
             * @description Half-tenths that are left before the line, rounded down; none when it is touched or crossed.
             */
            half_tenths: number;
            /** @description Where it stands. */
            standing: components["schemas"]["LineStanding"];
        };
        /** @description Which line an edge was taped from, and on which side it lies: what the cab reads before the number. */
        LineSide: {
            lies?: components["schemas"]["Compass"] | null;
            /** @description The line. */
            name: string;
        };
        /**
         * @description Where an edge stands against the line.
         * @enum {string}
         */
        LineStanding: "crossed" | "touch" | "near" | "ok";
        /** @description A line was struck, or may have been. */
        LineStruck: {
            at?: components["schemas"]["Point"] | null;
            /** @description Whom to call, as the ticket or the site file says. */
            call?: string;
            /** @description What runs in the gravest of them. */
            carries: components["schemas"]["UtilityKind"];
            /** @description The drawn lines that it may be; none when no drawn line runs there. */
            lines: string[];
            /** @description The machine that met it, when its cab said so. */
            machine?: string | null;
            /** @description It is in the way, as a cab says; that it was hit nobody has said. */
            met?: boolean;
        };
        /** @description The link of somebody who has asked or is in was lost, or came back. */
        LinkNoticed: {
            /** @description The phone. */
            device: string;
            /** @description Lost; else back. */
            lost: boolean;
            /** @description Whose. */
            person: string;
        };
        /**
         * @description The lists of a site whose things have names.
         * @enum {string}
         */
        Listed: "benchmark" | "line" | "target" | "mark" | "machine" | "rod" | "laser" | "overhead" | "pile" | "face" | "structure" | "utility" | "ticket";
        /** @description A load. */
        LoadCard: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description Who counted it. */
            by: string;
            /**
             * Format: int64
             * @description Its entry.
             */
            load: number;
            /**
             * Format: double
             * @description Loose cubic yards.
             */
            loose_cy?: number | null;
            /** @description What is in it. */
            material: string;
            /** @description It was counted by mistake. */
            taken_back: boolean;
            /** @description The ticket's number. */
            ticket?: string | null;
            /**
             * Format: double
             * @description Tons.
             */
            tons?: number | null;
            /**
             * Format: int32
             * @description How many trucks alike.
             */
            trucks: number;
            /** @description Which way. */
            way: components["schemas"]["Way"];
        };
        /** @description A load was counted. */
        LoadCounted: {
            /**
             * Format: double
             * @description Loose cubic yards of all of them.
             */
            loose_cy?: number | null;
            /** @description The machine that loaded it. */
            machine?: string | null;
            /** @description What is in it. */
            material: string;
            /** @description The ticket's number. */
            ticket?: string | null;
            /**
             * Format: double
             * @description Tons of all of them.
             */
            tons?: number | null;
            /**
             * Format: int32
             * @description How many trucks alike.
             */
            trucks: number;
            /** @description Which way. */
            way: components["schemas"]["Way"];
        };
        /**
         * @description What bounds a load.
         * @enum {string}
         */
        LoadLimit: "brim" | "weight" | "not_weighed";
        /** @description A load does not count: it was a mistake. */
        LoadTakenBack: {
            /**
             * Format: int64
             * @description The load's entry.
             */
            load: number;
        };
        /** @description One entry with its proof. */
        LogEntry: {
            /** @description The entry. */
            entry: components["schemas"]["Entry"];
            /** @description Its hash. */
            hash: string;
            /** @description The hash that it follows. */
            prev: string;
        };
        /** @description An entry as people read it. */
        LogLine: components["schemas"]["Text"] & {
            /** @description When the hub took it. */
            at: components["schemas"]["Time"];
            /** @description Who said it. */
            by: string;
            /** @description With which phone. */
            device: string;
            /** @description Its kind. */
            kind: string;
            /** @description The machine that it is about. */
            machine: string | null;
            /** @description When it was made. */
            made_at: components["schemas"]["Time"];
            /** @description The mark that it is about. */
            mark: string | null;
            /**
             * Format: int64
             * @description Its number.
             */
            seq: number;
            verdict: components["schemas"]["Verdict"] | null;
        };
        /** @description A page of the log. */
        LogPage: {
            /**
             * Format: int64
             * @description The last entry of the whole log.
             */
            head: number;
            /** @description Its lines. */
            lines: components["schemas"]["LogLine"][];
            /**
             * Format: int64
             * @description The entry at which looking stopped before the page was full, when there is more: ask on `before` or `after` it.
             */
            stopped: number | null;
        };
        /** @description The operator asked for a look. */
        LookAsked: {
            /** @description The machine. */
            machine: string;
        };
        /** @description A mark as it was when it was inspected. */
        LookedAt: {
            /** @description The ground there, by its last reading. */
            elevation: components["schemas"]["Length"];
            /** @description The mark. */
            mark: string;
            place?: components["schemas"]["Point"] | null;
            /**
             * Format: int64
             * @description That reading.
             */
            reading: number;
        };
        /** @description The operator's phone is about to go out, or is charged again. */
        LowBattery: {
            /** @description It hangs on a charger now. */
            charging?: boolean;
            /**
             * Format: int32
             * @description What it shows, in percent, when said.
             */
            percent?: number | null;
        };
        /** @description An unsupported vertical at the bottom. */
        LowerPart: {
            /** @description In which class. */
            class: components["schemas"]["SoilClass"];
            /** @description In a cut no deeper than this. */
            depth: components["schemas"]["Length"];
            /**
             * Format: double
             * @description The slope above it, run to one of rise.
             */
            run_above: number;
            /** @description The rule. */
            section: string;
            /** @description No higher than this. */
            vertical: components["schemas"]["Length"];
        };
        /**
         * @description Why a class is lower than it would be.
         * @enum {string}
         */
        Lowered: "material" | "strength" | "thumb" | "cracks" | "vibration" | "disturbed" | "water" | "dip";
        /** @description A machine and what it works on. */
        Machine: {
            /** @description The direction of work, as the crew says it. */
            direction?: string;
            /** @description What else it can do, as far as somebody has said it. */
            geometry?: components["schemas"]["Geometry"];
            /** @description Its name, such as `EX-1`. */
            id: string;
            /** @description Reach, tail, width. */
            reach: components["schemas"]["Reach"];
            /** @description The shape that stands for it on every screen. */
            shape: components["schemas"]["MachineShape"];
            /** @description The targets assigned to it. */
            works_on: string[];
        };
        /** @description A machine as the ground person and the supervisor see it. */
        MachineCard: {
            battery_low?: components["schemas"]["Time"] | null;
            beyond_reach?: components["schemas"]["Length"] | null;
            call?: components["schemas"]["CallView"] | null;
            cant?: components["schemas"]["CantCard"] | null;
            /** @description The machine. */
            id: string;
            /** @description The number of its live call stands there, with nothing graver in its place and no panel over it. */
            in_view: boolean;
            /** @description It is at work today, as far as anybody has said: while its place is old or unknown, every mark counts as within. */
            is_about: boolean;
            /** @description Its keep-out radius. */
            keep_out: components["schemas"]["Length"];
            look_asked_at?: components["schemas"]["Time"] | null;
            /** @description The marks within it, from where the machine was last said to stand. */
            marks_within: string[];
            /** @description The target that its operator has yet to see. */
            must_see?: string | null;
            /** @description Nobody has tapped its page since it was loaded: it can make no sound. */
            mute: boolean;
            /** @description What is near it, from where it was last said to stand. */
            near: components["schemas"]["Near"][];
            /** @description The set-up in doubt that has paused it. */
            paused_by?: string | null;
            place?: components["schemas"]["PlaceCard"] | null;
            place_old_at?: components["schemas"]["Time"] | null;
            /** @description Its screen. */
            screen: components["schemas"]["ScreenCard"];
            /** @description Its shape. */
            shape: components["schemas"]["MachineShape"];
            /** @description What was proposed or agreed with other machines. */
            slews: components["schemas"]["SlewCard"][];
            spotter?: components["schemas"]["SpotterCard"] | null;
            stop?: components["schemas"]["StopCard"] | null;
            /** @description Who asks to come in and who is in. */
            way_in: components["schemas"]["WayInCard"];
            /** @description The targets that it works on. */
            works_on: string[];
        };
        /** @description One machine's day. */
        MachineHours: {
            /** @description What it does now. */
            doing: components["schemas"]["Doing"];
            /** @description The machine. */
            machine: string;
            /** @description One span after another, in order. */
            spans: components["schemas"]["Span"][];
            /** @description Sums, digging first. */
            sums: components["schemas"]["DoingSum"][];
        };
        /** @description A machine moved: its place is unknown. */
        MachineMoved: {
            /** @description Which. */
            machine: string;
        };
        /** @description A machine's place was declared. */
        MachinePlaced: {
            /** @description Where. */
            at: components["schemas"]["Point"];
            /** @description Which. */
            machine: string;
        };
        /** @description What a machine costs. */
        MachineRate: {
            /**
             * Format: double
             * @description An hour, with its operator.
             */
            hour: number;
            /** @description Which. */
            machine: string;
        };
        /**
         * @description The large shape that tells machines apart without a hue.
         * @enum {string}
         */
        MachineShape: "square" | "triangle" | "ring" | "bars";
        /** @description A machine as the hub knew it at a stop. Nothing senses it. */
        MachineThen: {
            call?: components["schemas"]["CallThen"] | null;
            face?: components["schemas"]["FaceThen"] | null;
            /** @description Which. */
            machine: string;
            /** @description Who asked, was told to come in, or was in. */
            people: components["schemas"]["EntryCard"][];
            place?: components["schemas"]["PlaceCard"] | null;
        };
        /** @description A layout mark: a named point on the ground. */
        Mark: {
            /** @description Its name as painted. */
            id: string;
            /** @description A word about it. */
            note?: string;
            offset?: components["schemas"]["Length"] | null;
            /** @description Where it is. */
            place: components["schemas"]["Point"];
            station?: components["schemas"]["Length"] | null;
            /** @description The ground under the rod. */
            surface: components["schemas"]["Surface"];
            /** @description The target that it belongs to; a mark without one takes spot elevations alone. */
            target?: string | null;
        };
        /** @description The last reading on a mark. */
        MarkCard: {
            /** @description When it was made. */
            at: components["schemas"]["Time"];
            /** @description Who took it. */
            by: string;
            /** @description Whether it still speaks for the mark, and why not. */
            counts: components["schemas"]["StillCounts"];
            /** @description The day on which it was made, when that is not this day. */
            day?: string | null;
            dev?: components["schemas"]["Length"] | null;
            /** @description Measured elevation. */
            elevation: components["schemas"]["Length"];
            /** @description The mark. */
            id: string;
            /** @description Two shots were too close on the low side: the supervisor rules. */
            needs_ruling: boolean;
            /**
             * Format: int64
             * @description The entry of the reading.
             */
            reading: number;
            ruling?: components["schemas"]["Ruling"] | null;
            /** @description On which set-up. */
            set_up: string;
            verdict?: components["schemas"]["Verdict"] | null;
            was?: components["schemas"]["Length"] | null;
        };
        /** @description A mark's history. */
        MarkHistory: {
            /** @description The mark, or the name under which a place is kept. */
            mark: string;
            /** @description Its readings, in the order of the log. */
            readings: components["schemas"]["MarkReading"][];
            /** @description Everything that was said about it, readings and calls with it. */
            said: components["schemas"]["Sentence"][];
        };
        /** @description A reading of a mark. */
        MarkReading: {
            arrives?: components["schemas"]["Time"] | null;
            /** @description When it was made. */
            at: components["schemas"]["Time"];
            /** @description What became of it. */
            became: components["schemas"]["Became"];
            /** @description Who made it. */
            by: string;
            dev?: components["schemas"]["Length"] | null;
            /** @description Measured. */
            elevation: components["schemas"]["Length"];
            guard?: components["schemas"]["Length"] | null;
            /**
             * Format: int64
             * @description Its entry.
             */
            seq: number;
            /** @description On which set-up. */
            set_up: string;
            /** @description The rod as typed. */
            text: string;
            verdict?: components["schemas"]["Verdict"] | null;
        };
        /** @description An accepted mark was shot again from the same set-up. */
        MarkRepeated: {
            /** @description Which mark. */
            mark: string;
            /** @description The elevation now less the accepted one. */
            residual: components["schemas"]["Length"];
            /** @description What the repeats since the last good check say together: quiet, or check the laser now. */
            says: components["schemas"]["DriftSign"];
            /** @description Which set-up. */
            set_up: string;
        };
        /**
         * @description How the line is marked on the ground.
         * @enum {string}
         */
        Marked: "centre" | "edges";
        /** @description Marks were checked. */
        MarksChecked: {
            /** @description How far the two measures are apart at most. */
            apart: components["schemas"]["Length"];
            /** @description Which. */
            marks: string[];
        };
        /** @description Marks were laid. */
        MarksLaid: {
            /**
             * Format: int32
             * @description How many marks away from control, hub or string; 1 is straight from one.
             */
            depth: number;
            doubt?: components["schemas"]["Length"] | null;
            /** @description From what. */
            from: components["schemas"]["LaidFrom"];
            /** @description Each with its generation: 1, and one more each time that it is laid again. */
            marks: components["schemas"]["Generation"][];
            /** @description A word about it. */
            note: string;
        };
        /** @description Marks are gone. */
        MarksScraped: {
            /** @description Which. */
            marks: string[];
        };
        /**
         * @description What the soil is.
         * @enum {string}
         */
        Material: "stable_rock" | "loose_rock" | "cemented" | "cohesive" | "silt_or_angular" | "granular";
        /** @description One material, one way. */
        MaterialCard: {
            /** @description How counted, tickets and measured agree. */
            agree: components["schemas"]["Reconciled"];
            /**
             * Format: double
             * @description Measured in the ground, in cubic yards.
             */
            bank_cy?: number | null;
            limit?: components["schemas"]["LoadLimit"] | null;
            /**
             * Format: double
             * @description Loose cubic yards, counted.
             */
            loose_cy: number;
            /** @description What. */
            material: string;
            /**
             * Format: int32
             * @description Loads that the measured soil makes.
             */
            measured_loads?: number | null;
            /**
             * Format: double
             * @description The same, loose.
             */
            measured_loose_cy?: number | null;
            /**
             * Format: double
             * @description Tons, counted or by the tickets.
             */
            tons: number;
            /**
             * Format: int32
             * @description Trucks.
             */
            trucks: number;
            /** @description Which way. */
            way: components["schemas"]["Way"];
        };
        /** @description Who a phone is. */
        Me: {
            /** @description It stayed in over the night: say first who holds it. */
            asks_who: boolean;
            /** @description The build of the pages that the hub serves. */
            build: string;
            /** @description The day. */
            day: string;
            /** @description The device. */
            device: string;
            /** @description Its language. */
            language: components["schemas"]["Language"];
            /** @description The machine whose cab it sits in. */
            machine: string | null;
            /** @description Name or initials. */
            person: string;
            /** @description Its roles. */
            roles: components["schemas"]["Role"][];
            /** @description The job. */
            site: string;
            /** @description Its unit. */
            unit: components["schemas"]["ScreenUnit"];
        };
        /** @description Four tapes of a rectangle whose corners go round A, B, C, D. */
        MeasureDiagonals: {
            /** @description From A to C. */
            a_to_c: string;
            /** @description The side B–C. */
            across: string;
            /** @description From B to D. */
            b_to_d: string;
            /** @description The side A–B, which stays, as typed in feet or with a unit. */
            base: string;
            /** @description Which rectangle: a target's name, or what the crew calls it. */
            what: string;
        };
        /** @description Soil that was measured in the ground. */
        MeasureSoil: {
            /**
             * Format: double
             * @description Cubic yards in the ground, dug so far.
             */
            bank_cy: number;
            /** @description How it was measured. */
            how: string;
            /** @description What it is. */
            material: string;
        };
        /** @description What the operator is told: a correction from a reading, or a word by eye. */
        Message: {
            /** @description dev − aim: what the operator is told to take off. */
            amount: components["schemas"]["Length"];
            /** @description Which way and how much. */
            correction: components["schemas"]["Correction"];
            /** @description Measured − target, the mean of the shots: positive is HIGH. */
            dev: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "measured";
            tolerance?: components["schemas"]["Tolerance"] | null;
            /** @description The three-way verdict against the target. */
            verdict: components["schemas"]["Verdict"];
        } | {
            /** @enum {string} */
            kind: "edge";
            /** @description How far, how sure, and where that stands. */
            shot: components["schemas"]["LineShot"];
        } | {
            /** @enum {string} */
            kind: "by_eye";
            /** @description The word. */
            word: components["schemas"]["QuickWord"];
        };
        /** @description A phone that remembers what the log does not hold. */
        MismatchCard: {
            /** @description When it came. */
            at: components["schemas"]["Time"];
            /** @description What it remembers. */
            what: components["schemas"]["HeadMismatch"];
        };
        /** @description The hub misses an end of the chain that a phone remembers. */
        MissHead: {
            /** @description The hash that the log has under that number; none when it ends before. */
            has?: string | null;
            /**
             * Format: int64
             * @description Where the log ended when the phone came.
             */
            log_ends: number;
            /** @description Whose phone. */
            person: string;
            /** @description What it remembers. */
            remembered: components["schemas"]["ChainHead"];
        };
        /**
         * @description How the ground was read.
         * @enum {string}
         */
        Mode: "rod" | "receiver_high" | "receiver_low";
        /**
         * @description Where the moisture lies.
         * @enum {string}
         */
        Moisture: "too_dry" | "within" | "too_wet" | "not_asked";
        /**
         * @description What every screen showed once an entry was taken. A screen that was hidden or lost shows in its machine's card: its page
         *     had removed the number by itself.
         */
        Moment: {
            /** @description When the hub took it. */
            at: components["schemas"]["Time"];
            ground?: components["schemas"]["GroundView"] | null;
            /** @description The cabs, by machine. */
            operators: {
                [key: string]: components["schemas"]["OperatorView"];
            };
            /** @description The phones that were in. */
            phones: components["schemas"]["PhoneThen"][];
            /** @description The entry. */
            said: components["schemas"]["Sentence"];
            sheet?: components["schemas"]["SheetView"] | null;
            supervisor?: components["schemas"]["SupervisorView"] | null;
        };
        /** @description Somebody says that a patch is a step further. */
        MovePatch: {
            /** @description Which. */
            patch: string;
            /** @description Where it is now: filled or done; ramming and tests move it by themselves. */
            to: components["schemas"]["PatchStep"];
        };
        /** @description Something near a machine. */
        Near: {
            /** @description From middle to middle. */
            apart: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "can_meet";
            /** @description What it takes for them not to meet. */
            needs: components["schemas"]["Length"];
            /** @description Which other machine. */
            other: string;
        } | {
            /** @description From middle to middle. */
            apart: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "tail_at_machine";
            /** @description What it takes. */
            needs: components["schemas"]["Length"];
            /** @description Which. */
            other: string;
        } | {
            /** @description From its middle to the toe. */
            apart: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "tail_at_face";
            /** @description What it takes. */
            needs: components["schemas"]["Length"];
            /** @description Which. */
            zone: string;
        } | {
            /** @description From its middle to the wall. */
            apart: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "tail_at_wall";
            /** @description What it takes. */
            needs: components["schemas"]["Length"];
            /** @description Which. */
            structure: string;
        } | {
            /** @description From its middle to the pile's foot. */
            apart: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "tail_at_pile";
            /** @description What it takes. */
            needs: components["schemas"]["Length"];
            /** @description Which. */
            pile: string;
        } | {
            /** @description The soil's class that counts. */
            class: components["schemas"]["SoilClass"];
            /** @description How far inside. */
            inside: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "on_slope";
            /** @description Which face. */
            zone: string;
        } | {
            /** @description From its middle to under the line. */
            away: components["schemas"]["Length"];
            /** @description How far every part of it stays from the line. */
            clearance: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "overhead";
            /** @description Which. */
            line: string;
            /** @description Somebody spots whose phone is heard, and who is not in a keep-out: the distance still holds. */
            spotted?: boolean;
        };
        /** @description Something is near a machine that was placed. */
        NearFound: {
            /** @description Which machine. */
            machine: string;
            /** @description What. */
            near: components["schemas"]["Near"][];
        };
        /** @description A line that nobody may cross. */
        NearLine: {
            /** @description From it to the place that was asked about: positive on the side to keep to, negative over it. */
            inside: components["schemas"]["Length"];
            /** @description The line. */
            line: string;
        };
        /** @description A mark within reach. */
        NearMark: {
            /** @description How far away. */
            away: components["schemas"]["Length"];
            dig_to?: components["schemas"]["Length"] | null;
            /** @description Who laid, checked and scraped it. */
            laid: components["schemas"]["Sentence"][];
            /** @description The mark. */
            mark: string;
            paint?: components["schemas"]["Paint"] | null;
            /** @description Its target. */
            target?: string | null;
        };
        /** @description An open near miss, as the supervisor sees it. */
        NearMissCard: {
            /**
             * Format: int64
             * @description The entry that opened it; 0 in a state from before it was kept.
             */
            entry: number;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description What the hub knew. */
            then: components["schemas"]["NearMissOpened"];
            /** @description What a supervisor has said about it since. */
            told: components["schemas"]["Voice"][];
            /** @description Who pressed STOP while it stood, with what they said: the first opened it. */
            voices: components["schemas"]["Voice"][];
        };
        /** @description A near miss was opened, with what the hub knew then. */
        NearMissOpened: {
            /** @description The faces that had been left. */
            faces_left: string[];
            /** @description Each machine as the hub knew it. */
            machines: components["schemas"]["MachineThen"][];
            /**
             * Format: int32
             * @description Counts up over the job: the first is NM-1.
             */
            number: number;
            /** @description What was said with the press that opened it; may be empty. */
            why: string;
        };
        /** @description Something was said about a near miss. */
        NearMissTold: {
            /** @description It left the open list. */
            closed: boolean;
            /**
             * Format: int32
             * @description Which.
             */
            number: number;
            /** @description What. */
            words: string;
        };
        /** @description A target of marks within reach. */
        NearTarget: {
            /** @description How it changed on the day. */
            changes: components["schemas"]["Sentence"][];
            /** @description Its name. */
            name: string;
            /** @description Who typed them a second time. */
            proved_by?: string | null;
            /**
             * Format: int32
             * @description Its revision at the end of the day.
             */
            revision: number;
            /** @description The target. */
            target: string;
            /** @description Who typed its elevations, when they were typed on a page. */
            typed_by?: string | null;
        };
        /** @description Where a mark lies against a keep-out. There is no word for "clear": outside is a distance only. */
        Nearness: {
            /** @description By how much. */
            by: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "outside";
        } | {
            /** @description By how much. */
            by: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "inside";
        } | {
            /** @enum {string} */
            kind: "place_unknown";
        } | {
            /** @enum {string} */
            kind: "place_old";
        };
        /**
         * @description Triangles of points. What is written are flat lists: east, north and elevation of each point in
         *     tenth-micrometres, and three numbers of points, counted from 0, for each triangle.
         */
        Net: {
            /** @description The points. */
            points: number[];
            /** @description Where it came from, such as a file's name. */
            source?: string;
            /** @description The triangles. */
            triangles: number[];
        };
        /** @description A changed target that one machine's operator must see. */
        NewTarget: {
            /** @description The machine. */
            machine: string;
            /**
             * Format: int32
             * @description Its new revision; 0 when it is gone.
             */
            revision: number;
            /** @description The target. */
            target: string;
        };
        /** @description A note was written. */
        NoteAdded: {
            /**
             * Format: int64
             * @description The entry that they are about.
             */
            entry?: number | null;
            /** @description The mark that they are about. */
            mark?: string | null;
            /** @description The words. */
            words: string;
        };
        /** @description A note. */
        NoteCard: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description Whose. */
            by: string;
            /**
             * Format: int64
             * @description Its entry.
             */
            entry: number;
            /** @description The mark that it is about. */
            mark?: string | null;
            /** @description The words. */
            words: string;
        };
        /** @description An entry that was out of the ordinary. */
        Noted: {
            /** @description What kind of thing. */
            kind: components["schemas"]["NotedKind"];
            /** @description The entry. */
            said: components["schemas"]["Sentence"];
        };
        /**
         * @description What kind of thing was out of the ordinary.
         * @enum {string}
         */
        NotedKind: "near_miss" | "stop" | "face" | "rain" | "laser" | "asked" | "late" | "paper" | "override" | "call_lost" | "screen" | "test" | "void" | "gravel" | "buried" | "log_cut";
        /** @description The hub notices that the link of a phone is lost, or back. */
        NoticeLink: {
            /** @description Which phone. */
            device: string;
            /** @description Lost; else back. */
            lost: boolean;
        };
        /** @description The hub was started again. */
        NoticeRestart: {
            /** @description The laptop's clock is behind the log: nobody knows how long the hub was down. */
            clock_behind?: boolean;
        };
        /** @description The hub notices that an operator's page shows, is hidden, or is gone. */
        NoticeScreen: {
            /** @description Which phone. */
            device: string;
            page?: components["schemas"]["CabPage"] | null;
            /** @description What it noticed. */
            screen: components["schemas"]["ScreenNotice"];
        };
        /** @description Something odd about the plan, in every language. */
        Odd: components["schemas"]["Text"] & {
            /** @description Where, by kind and name: `targets.EAST`. */
            path: string;
        };
        /** @description Another machine, for an operator who goes there on foot. */
        OnFootCard: {
            /** @description The machine. */
            machine: string;
            told_out?: components["schemas"]["ToldOutCard"] | null;
            visit?: components["schemas"]["EntryCard"] | null;
        };
        /** @description The hub opens a day. */
        OpenDay: {
            /** @description Its name: the date on the hub's clock at opening, such as `2030-05-14`. */
            day: string;
        };
        /** @description Something that is open. */
        OpenItem: components["schemas"]["Text"] & {
            /** @description What kind of thing. */
            kind: components["schemas"]["OpenKind"];
            /** @description The mark, run, machine, laser or face that it is about. */
            on: string;
        };
        /**
         * @description What kind of thing is open; the gravest first.
         * @enum {string}
         */
        OpenKind: "person_in" | "stop" | "visitor_on_site" | "near_miss" | "face" | "in_doubt" | "closing_check" | "high" | "low" | "ruling" | "not_read" | "not_proven" | "edge" | "test" | "gravel" | "undercut" | "query" | "inspection" | "photo" | "not_shown" | "scraped" | "asked" | "not_typed_twice";
        /** @description What one machine's screen shows. */
        OperatorView: {
            battery_low?: components["schemas"]["Time"] | null;
            /** @description The day. */
            day: string;
            /** @description The device that is this machine's screen; any other page for this machine is retired. */
            device?: string | null;
            /** @description The direction of work, as the crew says it. */
            direction: string;
            /** @description Faces that were left: nobody under them. */
            faces_left: components["schemas"]["FaceStrip"][];
            /** @description Stretches near by that are dug by hand. */
            hand_dig: components["schemas"]["Crossing"][];
            look_asked_at?: components["schemas"]["Time"] | null;
            /** @description The machine. */
            machine: string;
            /** @description What is near it and not settled, from where it was last said to stand. */
            near: components["schemas"]["Near"][];
            /** @description The other machines with a screen, and what whoever sits in this cab has asked of them on foot. */
            on_foot?: components["schemas"]["OnFootCard"][];
            /** @description What was last said of the rain. */
            rain: components["schemas"]["RainNow"];
            /** @description What fills the screen. */
            screen: components["schemas"]["CabScreen"];
            /** @description Its shape. */
            shape: components["schemas"]["MachineShape"];
            /** @description The job. */
            site: string;
            /** @description What was proposed or agreed with other machines. */
            slews: components["schemas"]["SlewCard"][];
            spotter?: components["schemas"]["SpotterCard"] | null;
            stand?: components["schemas"]["StandCard"] | null;
            /** @description Lines that were struck or met. */
            struck: components["schemas"]["StruckCard"][];
            /** @description Who asks to come in and who is in. */
            way_in: components["schemas"]["WayInCard"];
            /** @description The names of the targets that it works on. */
            works_on: string[];
        };
        /** @description A supervisor orders gravel. */
        OrderGravel: {
            /** @description Where, and what was agreed. */
            note?: string;
            /**
             * Format: double
             * @description How much, in tons.
             */
            tons: number;
        };
        /** @description Somebody else has seen a person out, and has told them so. */
        OutByWitness: {
            /**
             * Format: int32
             * @description For a group: how many were seen out, the leader too.
             */
            all?: number | null;
            /** @description The machine. */
            machine: string;
            /** @description The visit. */
            visit: string;
            /** @description What was seen. */
            why: string;
        };
        /** @description Whoever was said to be out by another phone has seen that, and agrees. */
        OutSeen: {
            /** @description The machine. */
            machine: string;
            /** @description Who. */
            person: string;
            /** @description The visit. */
            visit: string;
        };
        /** @description What came of a request. */
        Outcome: {
            /** @enum {string} */
            kind: "done";
        } | (components["schemas"]["Text"] & {
            /**
             * Format: int64
             * @description Its number.
             */
            call: number;
            /** @description The machine. */
            machine: string;
            verdict?: components["schemas"]["Verdict"] | null;
        } & {
            /** @enum {string} */
            kind: "called";
        }) | {
            dev?: components["schemas"]["Length"] | null;
            /** @enum {string} */
            kind: "asked";
            /** @description The question. */
            question: components["schemas"]["Question"];
            /**
             * Format: int64
             * @description The entry of the question.
             */
            reading: number;
        } | {
            /** @description The mean difference. */
            dev: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "needs_ruling";
        } | {
            /** @description The mean difference. */
            dev: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "from_paper";
            /** @description How it was judged. */
            verdict: components["schemas"]["Verdict"];
        } | {
            /** @description The elevation. */
            elevation: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "spot";
            /** @description Why there is no call. */
            why: components["schemas"]["SpotReason"];
        } | {
            /** @enum {string} */
            kind: "late";
            /** @description Why. */
            why: components["schemas"]["LateReason"];
        } | {
            /** @description Height of instrument. */
            height: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "set_up";
            /** @description Its name. */
            set_up: string;
        } | {
            /** @enum {string} */
            kind: "proven";
            /** @description Its name. */
            set_up: string;
        } | {
            /** @description Good, again, failed. */
            check: components["schemas"]["Check"];
            /** @enum {string} */
            kind: "checked";
            /** @description (HI − rod) − benchmark. */
            residual: components["schemas"]["Length"];
            /** @description Slips that would explain a failure: asked, never applied. */
            slips: components["schemas"]["Slip"][];
            /** @description Whether the set-up may be used now. */
            usable: boolean;
        } | {
            /** @description The device. */
            device: string;
            /** @enum {string} */
            kind: "joined";
        } | {
            /** @description The operator had agreed; without it: get out, get eye contact. */
            confirmed: boolean;
            /** @enum {string} */
            kind: "entered";
        } | {
            /** @enum {string} */
            kind: "still_in";
            /** @description Who. */
            people: string[];
        };
        /** @description A line overhead. */
        OverheadLine: {
            /** @description Whom to call. */
            call?: string;
            clearance?: components["schemas"]["Length"] | null;
            /** @description Its lowest over the ground. */
            height: components["schemas"]["Length"];
            /** @description Its name. */
            id: string;
            /**
             * Format: double
             * @description Its voltage in kilovolts, when its owner has said it.
             */
            kilovolts?: number | null;
            /**
             * Format: double
             * @description No more than so many kilovolts, when its owner has said only that.
             */
            kilovolts_at_most?: number | null;
            /** @description What it hangs over, corner by corner. */
            points: components["schemas"]["Point"][];
        };
        /** @description What the pairs of a person show of one shot with a rod, for everybody with enough of them. */
        OwnDoubt: {
            /** @description One standard deviation of one reading. */
            doubt: components["schemas"]["Length"];
            /** @description Who. */
            person: string;
            /** @description With which rod. */
            rod: string;
        };
        /** @description How fast a bottom goes down. */
        Pace: {
            /**
             * Format: double
             * @description The 80th percentile of the pairs.
             */
            fast: number;
            /**
             * Format: double
             * @description Feet a minute, the median of all pairs of readings.
             */
            ft_per_min: number;
            /**
             * Format: double
             * @description The 20th percentile of the pairs.
             */
            slow: number;
            /**
             * Format: double
             * @description How it wanders, in feet per root of a minute.
             */
            wander: number;
        };
        /** @description How a mark stands on the ground. */
        Paint: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description Who laid it. */
            by: string;
            /**
             * Format: int32
             * @description How many marks away from control, hub or string.
             */
            depth: number;
            doubt?: components["schemas"]["Length"] | null;
            /**
             * Format: int32
             * @description Which generation.
             */
            generation: number;
            gone_at?: components["schemas"]["Time"] | null;
            /** @description Where it is in its life. */
            state: components["schemas"]["PaintState"];
        };
        /** @description Paint of a buried line went, or came again. */
        PaintSaid: {
            /** @description It is gone. */
            gone: boolean;
            /** @description The line. */
            utility: string;
        };
        /**
         * @description Where a mark is in its life.
         * @enum {string}
         */
        PaintState: "laid" | "checked" | "scraped";
        /** @description A day that is over. */
        PastDay: {
            closed?: components["schemas"]["Time"] | null;
            /** @description Its name. */
            day: string;
            /**
             * Format: int64
             * @description Its first entry.
             */
            first: number;
            /**
             * Format: int64
             * @description Its last entry.
             */
            last: number;
            signed?: components["schemas"]["DaySignedBy"] | null;
        };
        /** @description A patch. */
        PatchCard: {
            /**
             * Format: double
             * @description Rammed gravel, in cubic yards.
             */
            cy: number;
            /** @description How deep. */
            depth: components["schemas"]["Length"];
            /** @description How long. */
            length: components["schemas"]["Length"];
            /**
             * Format: int32
             * @description Lifts rammed.
             */
            lifts: number;
            /**
             * Format: int32
             * @description Lifts needed.
             */
            lifts_needed: number;
            /** @description The mark in it. */
            mark: string;
            /** @description Its name. */
            patch: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Where it is. */
            step: components["schemas"]["PatchStep"];
            /** @description How wide. */
            width: components["schemas"]["Length"];
        };
        /** @description A patch is a step further. */
        PatchMoved: {
            /** @description Which. */
            patch: string;
            /** @description Where it is now. */
            to: components["schemas"]["PatchStep"];
        };
        /** @description A low spot needs gravel. */
        PatchNeeded: {
            /** @description How deep. */
            depth: components["schemas"]["Length"];
            /** @description How long. */
            length: components["schemas"]["Length"];
            /**
             * Format: int32
             * @description In how many lifts.
             */
            lifts: number;
            /** @description The mark in it. */
            mark: string;
            /** @description Its name, such as `G1`. */
            patch: string;
            /**
             * Format: double
             * @description Rammed gravel, in cubic feet.
             */
            volume_cf: number;
            /** @description How wide. */
            width: components["schemas"]["Length"];
        };
        /**
         * @description Where a patch is.
         * @enum {string}
         */
        PatchStep: "needed" | "filled" | "compacted" | "tested" | "done";
        /** @description What a reading may have been instead. */
        Perhaps: {
            /** @enum {string} */
            kind: "reading";
            /** @description The number. */
            value: components["schemas"]["Length"];
        } | {
            /**
             * Format: int32
             * @description Feet.
             */
            feet: number;
            /**
             * Format: int32
             * @description Inches.
             */
            inches: number;
            /** @enum {string} */
            kind: "feet_inches";
            /** @description That rod, when the site has one. */
            rod?: string | null;
        } | {
            /** @description Which. */
            id: string;
            /** @enum {string} */
            kind: "mark";
        };
        /** @description Someone who has joined. */
        PersonCard: {
            /** @description It stayed in, and nobody has said yet who holds it. */
            asks_who: boolean;
            /** @description A competent person that the site file names goes by that name: without a confirmation it counts for nothing. */
            competent: boolean;
            /** @description The supervisor who has confirmed today whose phone this is. */
            confirmed_by?: string | null;
            /** @description The device. */
            device: string;
            /** @description The machine. */
            machine?: string | null;
            /** @description Name or initials. */
            person: string;
            /** @description Roles. */
            roles: components["schemas"]["Role"][];
            /** @description When they joined. */
            since: components["schemas"]["Time"];
            /** @description It stays in over the night. */
            stays: boolean;
        };
        /** @description A supervisor has confirmed whose phone it is. It holds for the day. */
        PersonConfirmed: {
            /** @description Which phone. */
            device: string;
            /** @description Whose. */
            person: string;
        };
        /** @description Somebody went in. */
        PersonIn: {
            /** @description The operator had answered; without it this is an UNCONFIRMED ENTRY. */
            confirmed: boolean;
            /** @description On which phone. */
            device: string;
            /** @description The machine. */
            machine: string;
            /** @description Where to, when it is a mark. */
            mark?: string | null;
            /**
             * Format: int32
             * @description How many come along, whom this person leads.
             */
            others?: number;
            /** @description Who. */
            person: string;
            /** @description The visit. */
            visit: string;
        };
        /** @description Somebody is out. */
        PersonOut: {
            /** @description The machine. */
            machine: string;
            /** @description Who. */
            person: string;
            /** @description The phone that said it, when it is not the one of the visit. */
            phone?: string | null;
            /** @description The visit. */
            visit: string;
            /** @description The gate still held the visit; false for a word that only agrees with what was known. */
            was_in: boolean;
            /** @description What the witness saw. */
            why?: string;
            /** @description Who saw it, when the person did not say so. */
            witness?: string | null;
        };
        /**
         * @description What the cab has to show for a gate; anything but `Working` is STOP.
         * @enum {string}
         */
        Phase: "working" | "asked" | "stopped" | "occupied" | "unconfirmed";
        /** @description A phone was removed: its cookie opens nothing any more. */
        PhoneRemoved: {
            /** @description Which. */
            device: string;
        };
        /** @description Whether a phone stays in over the night. */
        PhoneStays: {
            /** @description Which. */
            device: string;
            /** @description Whose. */
            person: string;
            /** @description Whether it stays. */
            stays: boolean;
        };
        /** @description A phone as it was: its page showed in this language and unit. */
        PhoneThen: {
            /** @description The device. */
            device: string;
            /** @description Its language. */
            language: components["schemas"]["Language"];
            /** @description The machine whose cab it sat in. */
            machine?: string | null;
            /** @description Name or initials. */
            person: string;
            /** @description Roles. */
            roles: components["schemas"]["Role"][];
            /** @description Its unit. */
            unit: components["schemas"]["ScreenUnit"];
        };
        /** @description A photo's bytes have come. */
        PhotoAdded: {
            /**
             * Format: int64
             * @description How many bytes.
             */
            bytes: number;
            /**
             * Format: int64
             * @description The entry that it goes with.
             */
            entry?: number | null;
            /** @description The mark that it is of. */
            mark?: string | null;
            /** @description Its name. */
            photo: string;
            /** @description SHA-256 of its bytes, in hex. */
            sha256: string;
            /** @description Who took it. */
            taken_by: string;
        };
        /** @description A photo. */
        PhotoCard: {
            /** @description When it was taken. */
            at: components["schemas"]["Time"];
            /** @description Who took it. */
            by: string;
            /**
             * Format: int64
             * @description The entry that it goes with.
             */
            entry?: number | null;
            /** @description The face that it is of. */
            face?: string | null;
            /** @description Why it is not waited for any more. */
            given_up?: string | null;
            /** @description The mark that it is of. */
            mark?: string | null;
            /** @description SHA-256 of the file from which it was reduced, as the phone says. */
            original?: string | null;
            /** @description The phone's name for it. */
            photo: string;
            /**
             * Format: int64
             * @description The entry that promised it.
             */
            seq: number;
            /** @description Its file, by the hash of its bytes; none while it is promised and has not come. */
            sha256?: string | null;
            /** @description A word about it. */
            words: string;
        };
        /** @description A photo that was promised is not waited for any more. Should its bytes come all the same, they are taken. */
        PhotoGivenUp: {
            /** @description The mark that it is of. */
            mark?: string | null;
            /** @description Its name. */
            photo: string;
            /** @description Who took it. */
            taken_by: string;
            /** @description Why it will not come. */
            why: string;
        };
        /** @description A photo was taken; its bytes are still on the phone. */
        PhotoPromised: {
            /**
             * Format: int64
             * @description The entry that it goes with.
             */
            entry?: number | null;
            /** @description The face that it is of. */
            face?: string | null;
            /** @description The mark that it is of. */
            mark?: string | null;
            /** @description SHA-256 of the file from which it was reduced, as the phone says. */
            original?: string | null;
            /** @description Its name. */
            photo: string;
            /** @description SHA-256 of the bytes that are to come; none in the oldest logs. */
            sha256?: string | null;
            /** @description A word about it. */
            words: string;
        };
        /** @description A piece, from where the one before it ends. */
        Piece: {
            /** @enum {string} */
            kind: "line";
            /** @description Its end. */
            to: components["schemas"]["Point"];
        } | {
            /** @description Its centre. */
            centre: components["schemas"]["Point"];
            /** @enum {string} */
            kind: "arc";
            /** @description Its end. */
            to: components["schemas"]["Point"];
            /** @description Which way it turns. */
            turn: components["schemas"]["Turn"];
        };
        /** @description A pair of pins. */
        PinCard: {
            now?: components["schemas"]["PinNow"] | null;
            /** @description The pins. */
            pins: string;
        };
        /** @description A tape judged. */
        PinJudged: {
            /** @description Opened since the first. */
            in_all: components["schemas"]["Length"];
            /** @description Opened since the tape before. */
            opened: components["schemas"]["Length"];
            /**
             * Format: double
             * @description Feet an hour.
             */
            rate_ft_per_hour: number;
            /** @description Faster twice running. */
            speeding_up: boolean;
            /** @description What to do. */
            state: components["schemas"]["PinState"];
        };
        /** @description A pair of pins. */
        PinNow: {
            /** @description How far apart. */
            apart: components["schemas"]["Length"];
            /** @description When it was taped. */
            at: components["schemas"]["Time"];
            /** @description Opened since the first. */
            in_all: components["schemas"]["Length"];
            /** @description Opened since the tape before. */
            opened: components["schemas"]["Length"];
            /**
             * Format: double
             * @description Feet an hour.
             */
            rate_ft_per_hour: number;
            /** @description What to do. */
            state: components["schemas"]["PinState"];
        };
        /**
         * @description What the tapes say.
         * @enum {string}
         */
        PinState: "still" | "watch" | "leave";
        /** @description A tape between pins. */
        PinTape: {
            /** @description The pins. */
            pins: string;
            /** @description In feet as typed. */
            text: string;
        };
        /** @description Pins were taped. */
        PinsRead: {
            /** @description How far apart. */
            apart: components["schemas"]["Length"];
            /**
             * Format: int64
             * @description When it was taped, in milliseconds.
             */
            at_ms: number;
            judged?: components["schemas"]["PinJudged"] | null;
            /** @description The pins. */
            pins: string;
            /** @description As typed. */
            text: string;
            /** @description The face. */
            zone: string;
        };
        /** @description A trench for a pipe. Its surface is the invert; pipe wall and bedding are layers of the stack. */
        PipeTrench: {
            /** @description The line on the plan. */
            axis: components["schemas"]["Axis"];
            /** @description Which way it is to flow. */
            flow: components["schemas"]["Flow"];
            /** @description Up-station. */
            inverts: components["schemas"]["Invert"][];
            /**
             * Format: double
             * @description A fall below this, in feet per foot, is odd.
             */
            least_fall: number;
            /** @description Of the pipe. */
            outside_diameter: components["schemas"]["Length"];
            /** @description Room to each side of the pipe. */
            side: components["schemas"]["Length"];
        };
        /** @description A declared place. Nothing senses it. */
        PlaceCard: {
            /** @description Where. */
            at: components["schemas"]["Point"];
            /** @description Who declared it. */
            by: string;
            /** @description When it was declared. */
            since: components["schemas"]["Time"];
        };
        /** @description Somebody says where a machine stands. */
        PlaceMachine: {
            /** @description Where. */
            at: components["schemas"]["Point"];
            /** @description Which. */
            machine: string;
        };
        /** @description A computed place. */
        Placed: {
            /** @description Where that is. */
            at: components["schemas"]["Point"];
            /** @description One standard deviation of the place. */
            doubt: components["schemas"]["Length"];
            /** @description As it was said. */
            said: components["schemas"]["Where"];
            /** @description The tapes meet so flatly that another pair of marks is better. */
            weak: boolean;
        };
        /**
         * @description What may have happened to the numbers.
         * @enum {string}
         */
        PlanSlip: "swapped" | "metres" | "feet" | "ten_times" | "a_tenth" | "other_foot";
        /**
         * @description What a plan counts in.
         * @enum {string}
         */
        PlanUnit: "foot" | "survey_foot" | "metre";
        /** @description An even grade. */
        Plane: {
            /** @description Its elevation there. */
            elevation: components["schemas"]["Length"];
            /**
             * Format: double
             * @description Rise to the east, in feet per foot; negative falls.
             */
            rise_east: number;
            /**
             * Format: double
             * @description Rise to the north, in feet per foot; negative falls.
             */
            rise_north: number;
            /** @description A place on it. */
            through: components["schemas"]["Point"];
        };
        /** @description A mark on the sheet. */
        PocketRow: {
            /** @description What to dig to. */
            dig_to: components["schemas"]["Length"];
            /** @description What the rod reads when the ground is there: a rod that reads less stands on high ground. */
            grade_rod: components["schemas"]["Length"];
            /** @description The mark. */
            mark: string;
            /**
             * Format: int32
             * @description The target's revision.
             */
            revision: number;
            /** @description Whether this laser can shoot it. */
            shot: components["schemas"]["PocketShot"];
            side?: components["schemas"]["StepSide"] | null;
            /** @description Its target. */
            target: string;
            /** @description Allowed high and low. */
            tolerance: components["schemas"]["Tolerance"];
        };
        /** @description What the rod must read from one set-up. */
        PocketSheet: {
            /** @description The benchmark that it rests on. */
            benchmark: string;
            /** @description Height of instrument. */
            height: components["schemas"]["Length"];
            /** @description The laser. */
            laser: string;
            /** @description The rods' longest reading that was counted with. */
            rod: components["schemas"]["Length"];
            /** @description Every mark with a grade, in the order of work. */
            rows: components["schemas"]["PocketRow"][];
            /** @description The set-up. */
            set_up: string;
            /** @description Whether it may be used: a sheet of an unproven set-up says so in large type. */
            state: components["schemas"]["SetUpState"];
        };
        /** @description A sheet for each set-up that stands. It is void when its set-up is taken down or a revision in it is not the newest. */
        PocketSheets: {
            /** @description The moment of that entry. */
            at: components["schemas"]["Time"];
            /** @description The day. */
            day: string;
            /**
             * Format: int64
             * @description The entry up to which everything is told.
             */
            seq: number;
            /** @description One sheet for each set-up that stands. */
            sheets: components["schemas"]["PocketSheet"][];
            /** @description The job. */
            site: string;
        };
        /**
         * @description Whether a mark can be shot from a set-up.
         * @enum {string}
         */
        PocketShot: "on_the_rod" | "above_laser" | "rod_too_short";
        /** @description A place on the ground. */
        Point: {
            /** @description East of the site's corner. */
            x: components["schemas"]["Length"];
            /** @description North of the site's corner. */
            y: components["schemas"]["Length"];
        };
        /** @description A point on rock. */
        PointRock: {
            at?: components["schemas"]["Point"] | null;
            /** @description The mark there. */
            mark: string;
            top?: components["schemas"]["Length"] | null;
            /** @description What it is: rock, old concrete. */
            what?: string;
        };
        /** @description Where a line was bared. */
        Pothole: {
            /** @description Where. */
            at: components["schemas"]["Point"];
            /** @description Its bottom: the top less its outside diameter. */
            bottom: components["schemas"]["Length"];
            /** @description Who. */
            by: string;
            /** @description When. */
            since: components["schemas"]["Time"];
            /** @description Its top. */
            top: components["schemas"]["Length"];
        };
        /** @description A buried line was bared. */
        PotholeDug: {
            /** @description Where. */
            at: components["schemas"]["Point"];
            /** @description Every trench that crosses it, judged with this. */
            crossings: components["schemas"]["Crossing"][];
            /** @description Its outside diameter. */
            outside: components["schemas"]["Length"];
            /** @description Elevation of its top. */
            top: components["schemas"]["Length"];
            /** @description The line. */
            utility: string;
        };
        /** @description A price list; what is left out is not counted, and the pages say so. */
        Prices: {
            aim?: components["schemas"]["AimPrices"] | null;
            /**
             * Format: double
             * @description The bearing that the drawing asks, in pounds per square foot.
             */
            bearing_psf?: number | null;
            density?: components["schemas"]["DensityWanted"] | null;
            gravel?: components["schemas"]["Gravel"] | null;
            /**
             * Format: double
             * @description A ground hand an hour.
             */
            ground_hour?: number | null;
            /** @description What each machine costs an hour with its operator. */
            machines?: components["schemas"]["MachineRate"][];
            /** @description What is hauled. */
            materials?: components["schemas"]["HauledMaterial"][];
            /** @description The money's sign, such as `$`. */
            money?: string;
            truck?: components["schemas"]["Truck"] | null;
            /**
             * Format: double
             * @description A truck an hour.
             */
            truck_hour?: number | null;
        };
        /** @description The price list was put in. */
        PricesSet: {
            /** @description All of it. */
            prices: components["schemas"]["Prices"];
        };
        /** @description Why a request came to nothing, and what to do. */
        Problem: components["schemas"]["Text"] & {
            refusal?: components["schemas"]["Refusal"] | null;
        };
        /** @description What to dig to at a station. */
        ProfilePoint: {
            /** @description Under all layers, and under an undercut where there is one. */
            dig_to: components["schemas"]["Length"];
            /** @description Along the line. */
            station: components["schemas"]["Length"];
        };
        /** @description A step of a profile. */
        ProfileStep: {
            /** @description Positive up. */
            by: components["schemas"]["Length"];
            /** @description The station of its face. */
            station: components["schemas"]["Length"];
            /** @description How far, either way, the face may fall from its station. */
            window?: components["schemas"]["Length"];
        };
        /** @description Somebody has taken a photo; its bytes follow. */
        PromisePhoto: {
            /**
             * Format: int64
             * @description The entry that it goes with.
             */
            entry?: number | null;
            /** @description The face that it is of. */
            face?: string | null;
            /** @description The mark that it is of. */
            mark?: string | null;
            /** @description SHA-256 of the file from which it was reduced. */
            original?: string | null;
            /** @description The phone's own name for it, 8 to 64 letters, digits, `-` or `_`. */
            photo: string;
            /** @description SHA-256 of the bytes that follow, in lower-case hex. */
            sha256: string;
            /** @description A word about it; may be empty. */
            words?: string;
        };
        /** @description What stands behind a set-up. */
        Proof: {
            /** @description Which. */
            benchmark: string;
            /** @enum {string} */
            kind: "second_benchmark";
        } | {
            /** @description The first. */
            first: string;
            /** @enum {string} */
            kind: "two_benchmarks";
            /** @description The second. */
            second: string;
        } | {
            /** @description The first. */
            first: string;
            /** @enum {string} */
            kind: "across_the_slope";
            /** @description The second. */
            second: string;
        } | {
            /** @description Between the two levellings of the point. */
            disagreement: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "levelled_again";
        } | {
            /** @enum {string} */
            kind: "one_benchmark";
        };
        /** @description A second person types a target's elevations. */
        ProveTarget: {
            /**
             * Format: int32
             * @description Which revision.
             */
            revision: number;
            /** @description Which. */
            target: string;
            /** @description Each elevation and thickness as typed, with its unit, in the order of `ToProve`. */
            values: string[];
        };
        /** @description A query was answered. A second answer stands beside the first. */
        QueryAnswered: {
            /** @description The answer. */
            answer: string;
            /** @description Who answered. */
            answered_by: string;
            /** @description Which. */
            query: string;
            revision?: components["schemas"]["AnsweringRevision"] | null;
        };
        /** @description A query to the engineer. */
        QueryCard: {
            answered_at?: components["schemas"]["Time"] | null;
            /** @description The answers, oldest first. */
            answers: components["schemas"]["QueryAnswered"][];
            /** @description What is asked. */
            asked: components["schemas"]["QueryOpened"];
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description By whom. */
            by: string;
        };
        /** @description A query was opened. */
        QueryOpened: {
            /** @description Who is asked. */
            of: string;
            /** @description The marks and targets that it is about. */
            on: string[];
            /** @description A photo with it. */
            photo?: string | null;
            /** @description Its name, such as `Q1`. */
            query: string;
            /** @description The question. */
            question: string;
            /** @description Calls there wait for the answer. */
            stop: boolean;
        };
        /** @description What is asked once before a reading is shown. */
        Question: {
            /** @description How. */
            doubt: components["schemas"]["Doubt"];
            /** @enum {string} */
            kind: "does_not_fit";
        } | {
            /** @description Measured − target. */
            dev: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "far_from_grade";
        } | {
            /** @description Which. */
            assigned: string;
            /** @enum {string} */
            kind: "other_machine";
        } | {
            /** @enum {string} */
            kind: "which_is_right";
            /** @description By how much. */
            spread: components["schemas"]["Length"];
        };
        /** @description A question was answered by what was done next. */
        QuestionSettled: {
            /**
             * Format: int64
             * @description The entry of the question.
             */
            question: number;
            /** @description The reading had been a slip: another one took its place. */
            slip: boolean;
            /** @description What was suggested, and whether that was it. */
            suggested: components["schemas"]["Suggested"][];
        };
        /** @description How the questions about readings came out. */
        QuestionsCard: {
            /**
             * Format: int32
             * @description Answered.
             */
            answered: number;
            /**
             * Format: int32
             * @description Asked.
             */
            asked: number;
            /**
             * Format: int32
             * @description One of the two suggestions was what had happened.
             */
            hits: number;
            /**
             * Format: int32
             * @description The reading had been a slip.
             */
            slips: number;
        };
        /** @description A word to one machine. */
        QuickCall: {
            /** @description The machine. */
            machine: string;
            /** @description The mark, when it is about one. */
            mark?: string | null;
            /** @description The word. */
            word: components["schemas"]["QuickWord"];
        };
        /**
         * @description A call without a number.
         * @enum {string}
         */
        QuickWord: "more" | "a_little" | "there" | "too_deep" | "come_to_me" | "look_here";
        /** @description Rain began, or somebody said again that it rains. */
        RainBegan: {
            /** @description The faces and trenches that owe an inspection because of it. */
            faces?: string[];
        };
        /** @description What was last said of the rain. It outlives the day: rain does. */
        RainNow: {
            at: components["schemas"]["Time"] | null;
            /** @description Who said the newest word. */
            by: string;
            since: components["schemas"]["Time"] | null;
            /**
             * Format: int64
             * @description The newest word, that it began or that it stopped; zero before any.
             */
            word: number;
        };
        /** @description Rain stopped. */
        RainStopped: {
            /** @description The faces and trenches that owe an inspection because of it. */
            faces?: string[];
            /**
             * Format: int64
             * @description The word that it rained which this one answers.
             */
            rain: number;
        };
        /** @description What a machine reaches. */
        Reach: {
            /** @description From the centre of turning to the bucket's teeth, stretched out on the ground. */
            reach_at_ground: components["schemas"]["Length"];
            /** @description From the centre of turning to the back of the house. */
            tail_radius: components["schemas"]["Length"];
            /** @description Over the tracks. */
            track_width: components["schemas"]["Length"];
        };
        /** @description A person with a rod. */
        ReadBy: {
            /** @description Who. */
            person: string;
            /** @description With which rod. */
            rod: string;
        };
        /** @description The tape from a line to the cut's edge. */
        ReadEdge: {
            /** @description The tape goes from the mark to the edge, not from a string on the line: the doubt of the mark counts. */
            from_mark?: boolean;
            /** @description The line; the only one that must not be crossed when left out. */
            line?: string | null;
            /** @description The machine that digs there. */
            machine: string;
            /** @description The mark at which it was taped. */
            mark?: string | null;
            /** @description The edge lies beyond the line; of a tape from the mark, beyond the mark as seen from the kept side. */
            over?: boolean;
            /** @description The tape, in feet as typed: `0.30`, or with its unit: `4 in`. */
            text: string;
        };
        /** @description Somebody tapes between two pins. */
        ReadPins: {
            /** @description The pins. */
            pins: string;
            /** @description The tape, in feet as typed. */
            text: string;
            /** @description The face. */
            zone: string;
        };
        /** @description The hub has read the site file. */
        ReadSite: {
            /** @description What it says. */
            site: components["schemas"]["Site"];
        };
        /** @description A reading with everything that was derived from it, so that the log can be checked by hand. */
        Reading: {
            /**
             * Format: int32
             * @description Which basis of the set-up, from 1.
             */
            basis: number;
            /** @description Made without seeing the reading before. */
            blind?: boolean;
            /** @description How finely it was read. */
            care: components["schemas"]["Care"];
            /** @description Typed to the tenth alone. */
            coarse: boolean;
            /** @description Measured elevation. */
            elevation: components["schemas"]["Length"];
            /** @description Height of instrument used. */
            height: components["schemas"]["Length"];
            height_here?: components["schemas"]["Length"] | null;
            judged?: components["schemas"]["Judged"] | null;
            /** @description The machine. */
            machine?: string | null;
            /** @description The mark, or the name of a computed place. */
            mark: string;
            /** @description Rod or receiver. */
            mode: components["schemas"]["Mode"];
            /** @description Typed in from paper: who read it. */
            paper?: string | null;
            placed?: components["schemas"]["Placed"] | null;
            /**
             * Format: int64
             * @description The reading that it corrects.
             */
            restates?: number | null;
            /** @description Other quick readings of the rocked rod, as typed: larger, and not counted. */
            rocked?: string[];
            /** @description The rod. */
            rod: string;
            /** @description The set-up. */
            set_up: string;
            side?: components["schemas"]["StepSide"] | null;
            /**
             * Format: int64
             * @description The question that it answered.
             */
            sure?: number | null;
            /** @description As typed. */
            text: string;
            value?: components["schemas"]["Length"] | null;
            /** @description It waited on the phone without a link, and whoever took it said SEND when the link was back. */
            waited?: boolean;
        };
        /** @description A reading was asked about: not judged, not shown. */
        ReadingAsked: {
            /** @description What was asked. */
            question: components["schemas"]["Question"];
            /** @description The reading as it came. */
            reading: components["schemas"]["Reading"];
        };
        /** @description A reading counts no more: somebody called it wrong. */
        ReadingCalledWrong: {
            /** @description The mark. */
            mark: string;
            /**
             * Format: int64
             * @description The entry of the reading.
             */
            reading: number;
            /** @description As it was typed. */
            text: string;
        };
        /** @description A reading came late: logged, never shown. */
        ReadingLate: {
            /** @description The reading. */
            reading: components["schemas"]["Reading"];
            /** @description Why. */
            why: components["schemas"]["LateReason"];
        };
        /** @description A reading was taken. */
        ReadingTaken: {
            /** @description The reading. */
            reading: components["schemas"]["Reading"];
            spot?: components["schemas"]["SpotReason"] | null;
        };
        /** @description Who declared the day READY. */
        ReadyBy: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description Who. */
            by: string;
            /** @description Checks that had no value then, with why. */
            overrides: components["schemas"]["StartOverride"][];
        };
        /** @description A supervisor says that the day is READY. */
        ReadyDay: {
            /** @description Checks that have no value, each with why the day begins all the same. */
            overrides?: components["schemas"]["StartOverride"][];
        };
        /** @description What comes of holding them against each other. */
        Reconciled: {
            /** @description Both agree within 10 %, as far as they are there. */
            agrees: boolean;
            /**
             * Format: double
             * @description Counted by measured; none when nothing is measured.
             */
            counted_by_measured?: number | null;
            /**
             * Format: double
             * @description Tickets by what was counted for the same loads; none without tickets.
             */
            tickets_by_counted?: number | null;
            /**
             * Format: int32
             * @description Loads without a ticket.
             */
            tickets_missing: number;
        };
        /** @description Everything that belongs to the record. */
        RecordCard: {
            /** @description What was amended, of whatever day, newest last. */
            amended: components["schemas"]["AmendedCard"][];
            closed?: components["schemas"]["ClosedCard"] | null;
            /** @description The days before, oldest first. */
            days: components["schemas"]["PastDay"][];
            /** @description Inspections of the job, oldest first. */
            inspections: components["schemas"]["InspectedCard"][];
            /** @description Phones that remember an end of the log that the log does not hold. */
            mismatches: components["schemas"]["MismatchCard"][];
            /** @description What is missing before it can be closed; empty once it is. */
            missing: components["schemas"]["CloseMissing"][];
            /** @description Notes of the day, oldest first. */
            notes: components["schemas"]["NoteCard"][];
            /** @description What is open. */
            open: components["schemas"]["OpenItem"][];
            /** @description Photos of the day, and older ones that have not come; oldest first. */
            photos: components["schemas"]["PhotoCard"][];
            /** @description Queries of the job, oldest first. */
            queries: components["schemas"]["QueryCard"][];
            signed?: components["schemas"]["SignedCard"] | null;
            /** @description Visitors of the job. */
            visitors: components["schemas"]["VisitorCard"][];
        };
        /** @description A refusal. Nothing was entered in the log; what was typed is not lost, the page keeps it. */
        Refusal: {
            /** @enum {string} */
            kind: "no_day";
        } | {
            /** @enum {string} */
            kind: "no_site";
        } | {
            /** @enum {string} */
            kind: "not_allowed";
            /** @description The machine whose operator alone may. */
            machine?: string | null;
            /** @description The roles that may. */
            roles: components["schemas"]["Role"][];
        } | {
            /** @enum {string} */
            kind: "unknown";
            /** @description The name. */
            name: string;
            /** @description What kind of thing. */
            what: components["schemas"]["Thing"];
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "rod_value";
        }) | {
            /** @enum {string} */
            kind: "set_up_not_proven";
            /** @description Which. */
            set_up: string;
        } | {
            /** @enum {string} */
            kind: "set_up_is_closed";
            /** @description Which. */
            set_up: string;
        } | {
            /** @enum {string} */
            kind: "set_ups_alike";
            /** @description The other. */
            set_up: string;
        } | {
            /** @enum {string} */
            kind: "second_benchmark_there";
            /** @description Another benchmark. */
            other: string;
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "sloped_laser";
        }) | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "second_levelling";
        }) | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "levels";
        }) | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "no_grade";
        }) | {
            /** @enum {string} */
            kind: "which_side";
            /** @description The mark. */
            mark: string;
        } | {
            /** @enum {string} */
            kind: "mark_scraped";
            /** @description Which. */
            mark: string;
        } | {
            /** @enum {string} */
            kind: "same_eyes";
            /** @description Which. */
            mark: string;
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "bad_mark";
        }) | {
            /** @enum {string} */
            kind: "no_mark_to_tape_from";
        } | {
            /** @enum {string} */
            kind: "no_line";
        } | {
            /** @enum {string} */
            kind: "which_line";
        } | {
            /** @enum {string} */
            kind: "call_not_live";
        } | {
            /** @enum {string} */
            kind: "nothing_to_rule";
            /** @description The mark. */
            mark: string;
        } | {
            /** @enum {string} */
            kind: "nothing_to_trim";
            /** @description The mark. */
            mark: string;
        } | {
            /** @description Highest aim. */
            high: string;
            /** @enum {string} */
            kind: "aim_outside";
            /** @description Lowest aim. */
            low: string;
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "bad_target";
        }) | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "bad_site";
        }) | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "account";
        }) | {
            /** @enum {string} */
            kind: "say_why";
            /** @description What is to be said, to follow “Say” in each language. */
            what: components["schemas"]["Text"];
        } | {
            /** @enum {string} */
            kind: "site_changed_again";
        } | {
            /** @enum {string} */
            kind: "no_site_change";
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "bad_join";
        }) | {
            /** @description A name that nobody has. */
            another: string;
            /** @description The machine in whose keep-out that person may be. */
            inside?: string | null;
            /** @enum {string} */
            kind: "same_name";
            /** @description As that person's name is written. */
            person: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
        } | {
            /** @enum {string} */
            kind: "cab_taken";
            /** @description Which machine. */
            machine: string;
            /** @description Whose phone. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "cab_held";
            /** @description Which machine. */
            machine: string;
            /** @description Whose phone. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "say_who";
            /** @description Whom the phone was yesterday. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "not_confirmed";
            /** @description Who. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "witness_unknown";
            /** @description Who is in. */
            person: string;
        } | {
            /**
             * Format: int32
             * @description How many are in, the leader too.
             */
            inside: number;
            /** @enum {string} */
            kind: "not_all_out";
            /** @description Who leads. */
            person: string;
            /**
             * Format: int32
             * @description How many were said to be out.
             */
            said: number;
        } | {
            /** @enum {string} */
            kind: "not_that_question";
        } | {
            /** @enum {string} */
            kind: "not_competent";
            /** @description Whom the site file names. */
            named: string[];
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "bad_face";
        }) | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "held_back";
        }) | {
            /** @description Its first and last day. */
            days: string;
            /** @enum {string} */
            kind: "ticket_lapsed";
            /** @description Which. */
            ticket: string;
        } | {
            /** @enum {string} */
            kind: "bad_visit";
        } | {
            /** @enum {string} */
            kind: "already_in";
            /** @description Where. */
            machine: string;
            /** @description Who. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "say_out_instead";
        } | {
            /** @enum {string} */
            kind: "not_asked";
        } | {
            /** @enum {string} */
            kind: "not_in";
            /** @description Where. */
            machine: string;
        } | {
            /** @enum {string} */
            kind: "not_your_visit";
            /** @description Whose. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "no_witness";
        } | {
            /** @enum {string} */
            kind: "answer_first";
            /** @description Who. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "pressed_too_late";
        } | {
            /** @enum {string} */
            kind: "said_too_late";
            /**
             * Format: int64
             * @description How many milliseconds.
             */
            ms: number;
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "overtaken";
        }) | {
            /** @enum {string} */
            kind: "people_in";
            /** @description Where. */
            machine: string;
            /** @description Who. */
            people: string[];
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "of_the_record";
        }) | {
            /** @enum {string} */
            kind: "day_is_closed";
            /** @description Signed too. */
            signed: boolean;
        } | {
            /** @enum {string} */
            kind: "not_ready_to_close";
            /** @description What; what may not be overridden first. */
            missing: components["schemas"]["CloseMissing"][];
        } | {
            /** @enum {string} */
            kind: "no_such_reading";
        };
        /** @description The operator says no. */
        RefuseEntry: {
            /** @description Which visit. */
            visit: string;
            /** @description Why; may be empty. */
            why?: string;
        };
        /** @description The operator has held RELEASE for a second. */
        Release: unknown;
        /** @description RELEASE was pressed while somebody may be in. */
        ReleaseRefused: {
            /** @description The machine. */
            machine: string;
            /** @description Who may be in. */
            people: string[];
        };
        /** @description The operator released the machine: nobody has said that they are in. */
        Released: {
            /** @description The machine. */
            machine: string;
        };
        /** @description The keep-out reminder that stands with a call. */
        Reminder: {
            /**
             * @description The large form stands beside the number: it is only that nobody has said, or not lately, where the machine stands.
             *     Without it the large form stands in the number's place.
             */
            beside?: boolean;
            /** @description With sound and large, by the policy against nagging; else the silent strip alone. */
            loud: boolean;
            /** @description Which mark. */
            mark: string;
            /** @description Inside by how much, or place unknown, or declared too long ago. */
            nearness: components["schemas"]["Nearness"];
            /** @description Who is at the mark. */
            who: string;
            zone?: components["schemas"]["Zone"] | null;
        };
        /** @description A supervisor removes a phone. */
        RemovePhone: {
            /** @description Which. */
            device: string;
        };
        /** @description A supervisor voids the codes. */
        RenewCodes: unknown;
        /** @description Who has answered what. */
        Response: {
            /** @description The answer. */
            answer: components["schemas"]["Answered"];
            /** @description Which kind of line. */
            kind: components["schemas"]["UtilityKind"];
        };
        /** @description The backsight was not what it was said to be. */
        RestateSetUp: {
            /** @description The benchmark that was really under the rod. */
            benchmark: string;
            /** @description The rod. */
            rod: string;
            /** @description Which set-up. */
            set_up: string;
            /** @description The rod value as typed. */
            text: string;
        };
        /** @description What a tried restore proved. */
        Restored: {
            /** @description Days. */
            days: number;
            /** @description The hash of the chain there. */
            hash: string;
            /**
             * Format: int64
             * @description The last entry that came back.
             */
            head: number;
            /** @description Photos that came back, each proven by its bytes. */
            photos: number;
            /** @description Sheets of the copy that are the same, byte for byte. */
            sheets: number;
        };
        /** @description A thing that is no longer part of the site; what was said about it stays in the log. */
        Retired: {
            /** @description Its name. */
            id: string;
            /** @description Of which list. */
            list: components["schemas"]["Listed"];
        };
        /** @description The competent person types the soil anew. */
        RetypeSoil: {
            /** @description The class picked. */
            class: components["schemas"]["SoilClass"];
            /** @description What was found; it can only lower the class. */
            evidence?: components["schemas"]["Evidence"];
            /** @description Why. */
            why: string;
            /** @description The face. */
            zone: string;
        };
        /** @description Everything that a supervisor looks at afterwards. */
        ReviewView: {
            /** @description Hours, cost, loads, gravel, tests, where passes land. */
            account: components["schemas"]["AccountView"];
            /** @description What was amended of it on later days, each under a signature of its own. */
            amended_later: components["schemas"]["Sentence"][];
            /** @description Where each mark that was read stands, by name. */
            built: components["schemas"]["BuiltMark"][];
            /** @description Each call's way, in the order in which they went out. */
            calls: components["schemas"]["CallHistory"][];
            /** @description What changed in the site, and why. */
            changes: components["schemas"]["Sentence"][];
            /** @description What of each run is not proven. */
            coverage: components["schemas"]["RunCoverage"][];
            /** @description The day. */
            day: string;
            /** @description What was out of the ordinary, by when it happened. */
            exceptions: components["schemas"]["Noted"][];
            /**
             * Format: int64
             * @description Its first entry.
             */
            first: number;
            /** @description When it was opened. */
            from: components["schemas"]["Time"];
            /** @description What everyone did over time. */
            lanes: components["schemas"]["Lane"][];
            /**
             * Format: int64
             * @description Its last entry so far.
             */
            last: number;
            /** @description Each mark's history, by name. */
            marks: components["schemas"]["MarkHistory"][];
            /** @description What is open. */
            open: components["schemas"]["OpenItem"][];
            /** @description Photos of the day, and older ones that have not come; oldest first. */
            photos: components["schemas"]["PhotoCard"][];
            /** @description The close and its signature, amendments, visitors, inspections, queries, notes, photos. */
            record: components["schemas"]["Sentence"][];
            /** @description Each set-up with its readings, checks and doubts. */
            set_ups: components["schemas"]["SetUpHistory"][];
            /** @description The job. */
            site: string;
            /** @description Its last moment so far. */
            to: components["schemas"]["Time"];
        };
        /** @description An engineer's own design of a face. */
        ReviseFace: {
            /** @description Its pieces from the toe up; none goes back to the tables. */
            pieces: components["schemas"]["DesignPiece"][];
            /** @description Whose design, and where it is written. */
            why: string;
            /** @description The face. */
            zone: string;
        };
        /** @description A supervisor changes a target. */
        ReviseTarget: {
            /** @description Its new shape, stack and boundary. */
            grade: components["schemas"]["Target"];
            /**
             * Format: int32
             * @description The revision that the page showed when it was typed; one that names none is not held against what stands.
             */
            seen?: number | null;
            /** @description Which. */
            target: string;
            /** @description Its allowed high and low. */
            tolerance: components["schemas"]["Tolerance"];
            /** @description Why, and on whose word. */
            why: string;
        };
        /** @description Rock above the dig. */
        RockCard: {
            /**
             * Format: double
             * @description Above the dig, in cubic yards; none while there is none to say.
             */
            cy?: number | null;
            /**
             * Format: double
             * @description How far that may be off, in cubic yards.
             */
            edge_doubt_cy?: number | null;
            /** @description Its points. */
            points: components["schemas"]["RockPointed"][];
            why?: components["schemas"]["Text"] | null;
        };
        /** @description Rock was met. */
        RockPointed: {
            /** @description Where. */
            at: components["schemas"]["Point"];
            /** @description The mark there. */
            mark: string;
            /** @description Its name, such as `RK1`. */
            point: string;
            /** @description The rock's top. */
            top: components["schemas"]["Length"];
            /** @description What it is. */
            what?: string;
        };
        /** @description A rod on the site. */
        Rod: {
            /** @description Added to every reading: how far below zero its foot, or bracket, stands. */
            bracket: components["schemas"]["Length"];
            /** @description What the crew calls it. */
            id: string;
            /** @description The heights of its joints, from the foot up. */
            joints: components["schemas"]["Length"][];
            /** @description Its length, fully drawn. */
            length: components["schemas"]["Length"];
            /** @description How it is marked. */
            unit: components["schemas"]["RodUnit"];
        };
        /**
         * @description How a rod is marked.
         * @enum {string}
         */
        RodUnit: "feet_hundredths" | "feet_inches_eighths" | "metres";
        /**
         * @description What a device may do. One phone may hold ground and supervisor at once.
         * @enum {string}
         */
        Role: "ground" | "operator" | "supervisor" | "visitor" | "hub";
        /** @description A supervisor rules. */
        Rule: {
            /** @description The mark. */
            mark: string;
            /** @description What is to be done. */
            ruling: components["schemas"]["Ruling"];
            /** @description Why. */
            why: string;
        };
        /** @description A reminder of what a rule asks. */
        RuleReminder: {
            depth?: components["schemas"]["Length"] | null;
            /** @description At that depth already, else only beyond it. */
            or_more?: boolean;
            /** @description The rule. */
            section: string;
            /** @description What. */
            what: components["schemas"]["Asks"];
        };
        /** @description A supervisor ruled. */
        Ruled: {
            /** @description The mark. */
            mark: string;
            /**
             * Format: int64
             * @description The reading that it settles.
             */
            reading: number;
            /** @description What is to be done. */
            ruling: components["schemas"]["Ruling"];
            /** @description Why. */
            why: string;
        };
        /** @description What this site has settled on. */
        Rules: {
            /** @description What a check costs and saves: how often one is due. */
            check_costs?: components["schemas"]["CheckCosts"];
            /** @description When a check shot is good, and when it fails. */
            checks: components["schemas"]["CheckLimits"];
            /** @description A line of levels may miss by this times the root of its set-ups. */
            closure?: components["schemas"]["Length"];
            forms?: components["schemas"]["FormsAtHand"] | null;
            truck_side?: components["schemas"]["Length"] | null;
            /** @description What happens when two shots leave the high side unsettled. */
            unsettled_high?: components["schemas"]["UnsettledHigh"];
        };
        /**
         * @description What is to be done with a mark that is too close to call.
         * @enum {string}
         */
        Ruling: "leave" | "patch" | "trim";
        /** @description A footing, trench or drain along a straight line. */
        Run: {
            /** @description Width to the left of the line, looking up-station. */
            left: components["schemas"]["Length"];
            /** @description From station 0 to the end. */
            length: components["schemas"]["Length"];
            /** @description Width to the right of the line, looking up-station. */
            right: components["schemas"]["Length"];
            /** @description Station 0. */
            start: components["schemas"]["Point"];
            /** @description From station 0 up. */
            steps: components["schemas"]["Step"][];
            /** @description Any other point up-station on the line. */
            toward: components["schemas"]["Point"];
        };
        /** @description A run and its stretches that no proven reading speaks for. */
        RunCoverage: {
            /** @description Its first station. */
            from: components["schemas"]["Length"];
            /** @description Its name. */
            name: string;
            /**
             * Format: int32
             * @description Readings that are on grade and whose laser was found good afterwards.
             */
            proven: number;
            /** @description The target. */
            target: string;
            /** @description Its last station. */
            to: components["schemas"]["Length"];
            /** @description Stretches without one within reach, never across a step. */
            unproven: components["schemas"]["Stretch"][];
            /** @description How long they are together. */
            unproven_length: components["schemas"]["Length"];
        };
        /** @description A line of levels from one benchmark to another, or back to the first. */
        RunLevels: {
            /** @description Where it starts. */
            from: string;
            /** @description The rod. */
            rod: string;
            /** @description Where it closes; the same for a loop. */
            to: string;
            /** @description Each set-up: the point behind was shot, then the point ahead. */
            turns: components["schemas"]["TurnRead"][];
        };
        /** @description What a visitor is shown was chosen. */
        RunsShown: {
            /** @description The visitor. */
            person: string;
            /** @description The targets. */
            targets: string[];
        };
        /** @description The ground person saw the operator nod. */
        SawNod: {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
        };
        /** @description The operator agrees. */
        SayAgreed: {
            /** @description What the screen said that the own machine keeps out of. */
            keeps_out_of: components["schemas"]["Compass"];
            /** @description With which other machine. */
            with: string;
        };
        /** @description Somebody saw the laser move. */
        SayBumped: {
            /** @description Which set-up. */
            set_up: string;
        };
        /** @description The face comes down: the word alone, at once. Its figures come after, as [`SeeSlough`](crate::said::face_seen::SeeSlough). */
        SayCameDown: {
            /** @description Which face. */
            zone: string;
        };
        /** @description The operator can't do what was called. */
        SayCant: {
            /** @description Why. */
            why: components["schemas"]["CantReason"];
        };
        /** @description A machine has moved; nobody has said where to. */
        SayMoved: {
            /** @description Which. */
            machine: string;
        };
        /** @description Paint of a buried line on the ground. */
        SayPaint: {
            /** @description It is gone; else it was painted again. */
            gone: boolean;
            /** @description The line. */
            utility: string;
        };
        /** @description Somebody has pumped it out. */
        SayPumped: {
            /** @description Where. */
            at: components["schemas"]["WaterAt"];
            /**
             * Format: int64
             * @description The newest word that the page showed of water there: see [`WaterNow::water`].
             */
            water: number;
        };
        /** @description It rains. */
        SayRain: unknown;
        /** @description It rains no more. */
        SayRainStopped: {
            /**
             * Format: int64
             * @description The newest word that it rains which the page showed: see [`RainNow::word`].
             */
            rain: number;
        };
        /** @description Somebody says what they saw. */
        SayStartCheck: {
            as_before?: components["schemas"]["Time"] | null;
            /** @description What was looked at. */
            check: components["schemas"]["StartCheck"];
            /** @description The signals that were agreed, for the hand signals. */
            signals?: components["schemas"]["HandSignal"][];
            /** @description What was seen: a value, not a tick. */
            value?: string;
        };
        /** @description A line was struck. */
        SayStruck: {
            /** @description Which; none when it is not drawn. */
            line?: string | null;
            /** @description The mark where it happened. */
            mark?: string | null;
        };
        /** @description The operator says WAIT. */
        SayWait: {
            /** @description To which visit. */
            visit: string;
        };
        /** @description A machine waits. */
        SayWaiting: {
            /** @description What for. */
            cause: components["schemas"]["WaitCause"];
            /** @description Which; the operator's own when left out. */
            machine?: string | null;
        };
        /** @description In the morning: whoever holds the phone is the one that it names, or somebody else. */
        SayWho: {
            /** @description The name that the page showed. */
            person: string;
            /** @description The same person; else somebody else, who joins by a code. */
            same: boolean;
        };
        /** @description One thing that is said. */
        Saying: {
            /** @description What is said. */
            command: components["schemas"]["Command"];
            /** @description The phone's own key for it, 8 to 64 letters, digits, `-`, `_`, `.` or `:`. */
            key: string;
            /** @description When it was made, on the hub's clock as the phone knows it. */
            made_at: components["schemas"]["Time"];
        };
        /** @description The machine has taken the paint. */
        ScrapeMarks: {
            /** @description Which. */
            marks: string[];
        };
        /** @description Whether anyone can see what is called. */
        ScreenCard: {
            /** @enum {string} */
            kind: "none";
        } | {
            /** @enum {string} */
            kind: "showing";
            /** @description Who sits there. */
            person: string;
        } | {
            /** @enum {string} */
            kind: "hidden";
            /** @description Who sits there. */
            person: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
        } | {
            /** @enum {string} */
            kind: "lost";
            /** @description Who sits there. */
            person: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
        };
        /** @description A screen's language or unit changed. */
        ScreenChanged: {
            /** @description The device. */
            device: string;
            /** @description The language. */
            language: components["schemas"]["Language"];
            /** @description The unit. */
            unit: components["schemas"]["ScreenUnit"];
        };
        /**
         * @description Whether a page can be seen.
         * @enum {string}
         */
        ScreenNotice: "showing" | "hidden" | "lost";
        /** @description An operator's page began or ceased to show. */
        ScreenNoticed: {
            /** @description Which phone. */
            device: string;
            /** @description Whose cab. */
            machine: string;
            page?: components["schemas"]["CabPage"] | null;
            /** @description What was noticed. */
            screen: components["schemas"]["ScreenNotice"];
        };
        /**
         * @description What a screen counts in.
         * @enum {string}
         */
        ScreenUnit: "tenths" | "feet_inches" | "millimetres";
        /** @description A rule without a figure. */
        Section: {
            binds?: components["schemas"]["Binds"] | null;
            /** @description The rule. */
            section: string;
        };
        /** @description A corner of a face. */
        SectionPoint: {
            /** @description Level, outward from the toe. */
            out: components["schemas"]["Length"];
            /** @description Above the toe. */
            up: components["schemas"]["Length"];
        };
        /** @description Somebody sees something at a face. */
        SeeAtFace: {
            /** @description A word about it. */
            note?: string;
            /** @description With a load: how far back from the crest, in feet as typed. */
            text?: string;
            /** @description What. */
            what: components["schemas"]["Sight"];
            /** @description Which face. */
            zone: string;
        };
        /** @description Whoever was said to be out by another phone has seen that, and is out. Who is still in says `go_in` on the same visit. */
        SeeOut: {
            /** @description The machine. */
            machine: string;
            /** @description The visit. */
            visit: string;
        };
        /** @description The face comes down, or came down. */
        SeeSlough: {
            /** @description How far back. */
            back: string;
            /** @description How high. */
            height: string;
            /** @description Along the face, in feet as typed. */
            length: string;
            /** @description The mark nearest to it; what was accepted, tested and inspected round there is void. */
            mark?: string | null;
            /** @description Who was near. */
            note?: string;
            /** @description Which face. */
            zone: string;
        };
        /** @description The operator has seen it. */
        SeeTarget: {
            /**
             * Format: int32
             * @description Which revision.
             */
            revision: number;
            /** @description Which. */
            target: string;
        };
        /** @description Something was seen at a face. */
        SeenAtFace: {
            move_back_to?: components["schemas"]["Length"] | null;
            /** @description A word about it. */
            note?: string;
            /** @description What. */
            what: components["schemas"]["AtFace"];
            /** @description Which face. */
            zone: string;
        };
        /** @description Something seen at a face. */
        SeenNow: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description By whom. */
            by: string;
            /** @description What. */
            what: components["schemas"]["AtFace"];
        };
        /** @description An entry as a sentence, and where to find it. */
        Sentence: components["schemas"]["Text"] & {
            /** @description When it was made. */
            at: components["schemas"]["Time"];
            /** @description Who said it. */
            by: string;
            /** @description The machine that it is about. */
            machine: string | null;
            /** @description The mark that it is about. */
            mark: string | null;
            /**
             * Format: int64
             * @description The entry.
             */
            seq: number;
        };
        /** @description A supervisor sets an aim. */
        SetAim: {
            /** @description Relative to the target: negative is deeper. */
            aim: components["schemas"]["Length"];
            /** @description Marks, or targets for all their marks. */
            on: string[];
            /** @description What stood there on the page of whoever sets it; an aim that names none is not held against what stands. */
            seen?: components["schemas"]["AimSeen"][];
            /** @description Why. */
            why: string;
        };
        /** @description A distance from an edge. */
        SetBack: {
            /** @description At least this far. */
            distance: components["schemas"]["Length"];
            /** @description The rule. */
            section: string;
        };
        /** @description A supervisor says how long codes last. */
        SetCodesLast: {
            /** @description How long. */
            lasts: components["schemas"]["Lasts"];
        };
        /** @description A supervisor puts in the price list. */
        SetPrices: {
            /** @description All of it. */
            prices: components["schemas"]["Prices"];
        };
        /** @description A laser set-up. */
        SetUpCard: {
            /** @description The benchmark of the backsight. */
            benchmark: string;
            check_by?: components["schemas"]["Time"] | null;
            due?: components["schemas"]["DueCard"] | null;
            good_at?: components["schemas"]["Time"] | null;
            /** @description Benchmarks that agreed before it was proven, when it is sloped. */
            good_on?: string[];
            /** @description Height of instrument. */
            height: components["schemas"]["Length"];
            /** @description Its name, such as `S1`. */
            id: string;
            /** @description The laser. */
            laser: string;
            last_check?: components["schemas"]["CheckCard"] | null;
            place?: components["schemas"]["Point"] | null;
            /**
             * Format: int32
             * @description Readings since the last good check.
             */
            readings_since_check: number;
            slope?: components["schemas"]["LaserSlope"] | null;
            /** @description Whether it may be used, and what is owed when it may not. */
            state: components["schemas"]["SetUpState"];
            tested?: components["schemas"]["TestedLaser"] | null;
        };
        /** @description A set-up was taken down. */
        SetUpClosed: {
            /** @description Which set-up. */
            set_up: string;
            /** @description Why. */
            why: string;
        };
        /** @description A set-up is in doubt. */
        SetUpDoubted: {
            /** @description The machines that are paused by it. */
            pauses: string[];
            /** @description Which set-up. */
            set_up: string;
            /** @description Why. */
            why: components["schemas"]["DoubtReason"];
        };
        /** @description A set-up of the day. */
        SetUpHistory: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description What its height rested on; the last counts. */
            basis: components["schemas"]["Basis"][];
            /** @description Who set it up. */
            by: string;
            /** @description Its check shots. */
            checks: components["schemas"]["CheckMade"][];
            /** @description Taken down. */
            closed: boolean;
            /** @description What was in doubt. */
            doubts: components["schemas"]["SuspectWindow"][];
            good_at?: components["schemas"]["Time"] | null;
            /** @description The laser. */
            laser: string;
            /**
             * Format: int32
             * @description Readings that were taken with it.
             */
            readings: number;
            /** @description Everything that was said about it. */
            said: components["schemas"]["Sentence"][];
            /** @description Its name. */
            set_up: string;
            /** @description How it stands now. */
            state: components["schemas"]["SetUpState"];
            unproven_since?: components["schemas"]["Time"] | null;
        };
        /** @description A backsight on a benchmark. */
        SetUpLaser: {
            /** @description The benchmark under the rod. */
            benchmark: string;
            /** @description The laser. */
            laser: string;
            place?: components["schemas"]["Point"] | null;
            /** @description The rod. */
            rod: string;
            slope?: components["schemas"]["LaserSlope"] | null;
            /** @description The rod value as typed. */
            text: string;
        };
        /** @description A set-up may be used. */
        SetUpProven: {
            basis?: components["schemas"]["Basis"] | null;
            /** @description How. */
            proof: components["schemas"]["Proof"];
            /** @description Which set-up. */
            set_up: string;
        };
        /** @description A set-up's backsight was restated; the set-up must be proven again. */
        SetUpRestated: {
            /** @description Its new basis. */
            basis: components["schemas"]["Basis"];
            /** @description Which set-up. */
            set_up: string;
        };
        /** @description Whether a set-up may be used. */
        SetUpState: {
            /** @enum {string} */
            kind: "unproven";
        } | {
            /** @enum {string} */
            kind: "proven";
            /** @description How. */
            proof: components["schemas"]["Proof"];
        } | {
            /** @description The benchmarks that have agreed since. */
            agreed: string[];
            /** @enum {string} */
            kind: "in_doubt";
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why. */
            why: components["schemas"]["DoubtReason"];
        };
        /** @description Two set-ups were compared. */
        SetUpsCompared: {
            /** @description Within 0.02 ft: neither is accused. */
            agree: boolean;
            /** @description The point's elevation from the second less that from the first. */
            difference: components["schemas"]["Length"];
            /** @description The first set-up. */
            first: string;
            /** @description The second. */
            second: string;
        };
        /** @description The shape of the surface that the drawing gives. */
        Shape: {
            /** @description Everywhere. */
            elevation: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "flat";
        } | {
            /** @description Its elevation there. */
            elevation: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "plane";
            /**
             * Format: double
             * @description Rise to the east, in feet per foot; negative falls.
             */
            rise_east: number;
            /**
             * Format: double
             * @description Rise to the north, in feet per foot; negative falls.
             */
            rise_north: number;
            /** @description A place on it. */
            through: components["schemas"]["Point"];
        } | (components["schemas"]["Run"] & {
            /** @enum {string} */
            kind: "run";
        }) | {
            /** @description Which. */
            fold: components["schemas"]["Fold"];
            /** @enum {string} */
            kind: "fold";
            /** @description The planes. */
            planes: components["schemas"]["Plane"][];
        } | (components["schemas"]["Along"] & {
            /** @enum {string} */
            kind: "along";
        }) | (components["schemas"]["PipeTrench"] & {
            /** @enum {string} */
            kind: "trench";
        }) | (components["schemas"]["CutFace"] & {
            /** @enum {string} */
            kind: "face";
        }) | (components["schemas"]["Net"] & {
            /** @enum {string} */
            kind: "surface";
        }) | {
            /** @description The ground as it lies. */
            ground: components["schemas"]["Net"];
            /** @enum {string} */
            kind: "strip";
        } | {
            /** @description How far off level the walk may be. */
            band: components["schemas"]["Length"];
            /** @description Of the whole line. */
            elevation: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "contour";
        };
        /** @description A face or a trench on the plan. */
        SheetFace: {
            /** @description Where it comes to daylight, in order along the toe; empty before it was worked out. */
            daylight: components["schemas"]["Point"][];
            /** @description Its name. */
            id: string;
            /** @description Over a line that nobody may cross. */
            over: boolean;
            /** @description Its toe. */
            toe: components["schemas"]["Point"][];
        };
        /** @description A mark with what it asks for. */
        SheetMark: {
            /** @description Where to aim, relative to the target; zero unless a supervisor set it. */
            aim: components["schemas"]["Length"];
            dig_to?: components["schemas"]["DigTo"] | null;
            /** @description Its name. */
            id: string;
            /** @description The machine that its target is assigned to. */
            machine?: string | null;
            /** @description A word about it. */
            note: string;
            offset?: components["schemas"]["Length"] | null;
            paint?: components["schemas"]["Paint"] | null;
            /** @description Where it is. */
            place: components["schemas"]["Point"];
            station?: components["schemas"]["Length"] | null;
            /** @description Its target. */
            target?: string | null;
            ties?: components["schemas"]["TiesCard"] | null;
            tolerance?: components["schemas"]["Tolerance"] | null;
            why_no_grade?: components["schemas"]["Text"] | null;
        };
        /** @description What a phone keeps for the day. */
        SheetView: {
            /** @description Benchmarks. */
            benchmarks: components["schemas"]["Benchmark"][];
            /** @description The day. */
            day: string;
            /** @description Where targets with a line run, and what to dig to along it. */
            drawn: components["schemas"]["DrawnTarget"][];
            /** @description Faces and trenches: toes and where they come to daylight. */
            faces: components["schemas"]["SheetFace"][];
            /** @description Lasers. */
            lasers: components["schemas"]["Laser"][];
            /** @description Lines. */
            lines: components["schemas"]["Line"][];
            /** @description Machines. */
            machines: components["schemas"]["Machine"][];
            /** @description Marks in the order of work. */
            marks: components["schemas"]["SheetMark"][];
            /** @description Lines overhead. */
            overheads: components["schemas"]["OverheadLine"][];
            /** @description Piles. */
            piles: components["schemas"]["SitePile"][];
            /** @description Rods. */
            rods: components["schemas"]["Rod"][];
            /** @description The job. */
            site: string;
            /** @description Footings and walls behind the cuts. */
            structures: components["schemas"]["Structure"][];
            /** @description Targets with their layers. */
            targets: components["schemas"]["SiteTarget"][];
            /** @description The ground that tickets cover. */
            tickets: components["schemas"]["Ticket"][];
            /** @description Targets that wait for a second person to type them, without their values. */
            to_prove: components["schemas"]["ToProve"][];
            /** @description Buried lines. */
            utilities: components["schemas"]["Utility"][];
        };
        /** @description A shield or support around a vertical. */
        Shield: {
            /** @description It reaches so far above the vertical's top. */
            above: components["schemas"]["Length"];
            /** @description The rule. */
            section: string;
        };
        /** @description A reading on a benchmark. */
        ShootCheck: {
            /** @description The benchmark under the rod. */
            benchmark: string;
            /** @description The rod. */
            rod: string;
            /** @description Which set-up. */
            set_up: string;
            /** @description The rod value as typed. */
            text: string;
        };
        /** @description A cut in A that is open for a short time. */
        ShortTerm: {
            /**
             * Format: double
             * @description Run to one of rise.
             */
            a: number;
            /** @description No deeper than this. */
            depth: components["schemas"]["Length"];
            /**
             * Format: int32
             * @description No longer than this.
             */
            hours: number;
            /** @description The rule. */
            section: string;
        };
        /** @description What a shot at a mark would take: enough for the page to say the call before it is sent. */
        Shot: {
            /** @description Earlier readings that it would be averaged with, newest first. */
            before?: components["schemas"]["Joinable"][];
            /** @description What is known of its doubt before it is read. */
            doubt: components["schemas"]["DoubtParts"];
            grade_rod?: components["schemas"]["Length"] | null;
            /**
             * Format: double
             * @description How many times the doubt the guard band is.
             */
            guard_factor: number;
            /** @description The height of the laser's plane over the mark. */
            height: components["schemas"]["Length"];
            held?: components["schemas"]["SpotReason"] | null;
            /** @description The mark. */
            mark: string;
            /** @description The set-up. */
            set_up: string;
            /**
             * Format: double
             * @description How height turns into distance square to a cut face; 1 elsewhere.
             */
            square: number;
        };
        /** @description A supervisor chooses what a visitor is shown. */
        ShowRuns: {
            /** @description The visitor. */
            person: string;
            /** @description The targets that they came for; none takes all away. */
            targets: string[];
        };
        /** @description The call has been painted on this visible page for a second. */
        Shown: {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
            /** @description In which language. */
            language: components["schemas"]["Language"];
            /** @description In which unit. */
            unit: components["schemas"]["ScreenUnit"];
        };
        /**
         * @description Which of the two places, standing at the first tape's end and looking toward the second's.
         * @enum {string}
         */
        Side: "left" | "right";
        /**
         * @description What can be seen, as it is said.
         * @enum {string}
         */
        Sight: "water" | "crack" | "rain" | "vibration" | "load" | "trimmed";
        /** @description A supervisor signs the day. */
        SignDay: {
            /** @description The signature. */
            signature: components["schemas"]["Signature"];
            /** @description A word with it; may be empty. */
            words?: string;
        };
        /** @description Whoever inspected signs on their own phone. */
        SignInspection: {
            /**
             * Format: int64
             * @description The inspection: its number in the view.
             */
            inspection: number;
            /** @description The signature. */
            signature: components["schemas"]["Signature"];
        };
        /** @description A signature. */
        Signature: {
            /** @description Who signs, in letters. */
            name: string;
            /** @description The strokes as the path of an SVG of 300 × 100: `M10 20L11 22…`, at most 4000 characters. */
            strokes: string;
        };
        /** @description Who signed, when. */
        Signed: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description Who. */
            by: string;
        };
        /** @description How the day was signed. */
        SignedCard: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /**
             * Format: int64
             * @description The entry.
             */
            entry: number;
            /** @description How. */
            how: components["schemas"]["DaySigned"];
        };
        /** @description One job: control, lines, marks, targets, machines, rods, rules. */
        Site: {
            /** @description Points of known elevation. */
            benchmarks: components["schemas"]["Benchmark"][];
            /** @description Cuts and what is buried. */
            cuts?: components["schemas"]["SiteCuts"];
            frame?: components["schemas"]["Frame"] | null;
            /** @description The lasers in the truck. */
            lasers: components["schemas"]["Laser"][];
            /** @description Property, easement, setback and limit lines. */
            lines?: components["schemas"]["Line"][];
            /** @description The machines on the job. */
            machines: components["schemas"]["Machine"][];
            /** @description The layout marks, in the order of work. */
            marks: components["schemas"]["Mark"][];
            /** @description What the crew calls the job. */
            name: string;
            prices?: components["schemas"]["Prices"] | null;
            /** @description The rods in the truck. */
            rods: components["schemas"]["Rod"][];
            /** @description What this site has settled on. */
            rules?: components["schemas"]["Rules"];
            /** @description The grades to reach. */
            targets: components["schemas"]["SiteTarget"][];
            tolerance?: components["schemas"]["Tolerance"] | null;
        };
        /** @description A changed site file. */
        SiteChangeCard: {
            /** @description What differs, in words. */
            differences: components["schemas"]["SiteDifference"][];
            /** @description The digest to confirm. */
            digest: string;
            /** @description What is odd about the new plan. */
            odd: components["schemas"]["Odd"][];
            /** @description When it was found. */
            since: components["schemas"]["Time"];
            /** @description The marks, calls and acceptances that it would touch. */
            touches: components["schemas"]["Touched"];
            /** @description What pages changed since the file in force, and this file would undo. */
            undoes: components["schemas"]["Undone"][];
        };
        /** @description The file differs from the site in force; with no differences, it is the same again. */
        SiteChangeFound: {
            /** @description What differs. */
            differences: components["schemas"]["SiteDifference"][];
            /** @description Its digest. */
            digest: string;
            /** @description What is odd about the new plan. */
            odd?: components["schemas"]["Odd"][];
            /** @description What the file says now. */
            site: components["schemas"]["Site"];
            /** @description The marks, calls and acceptances that it would touch. */
            touches?: components["schemas"]["Touched"];
            /** @description What was changed on a page since the file that is in force, and would be undone. */
            undoes?: components["schemas"]["Undone"][];
        };
        /** @description The site was changed by a supervisor. */
        SiteChanged: {
            /** @description What changed. */
            differences: components["schemas"]["SiteDifference"][];
            /** @description The operators who must see a changed target before they are called again. */
            must_see: components["schemas"]["NewTarget"][];
            /**
             * @description What was added or took the place of what was, with what follows: marks that move with their run, machines
             *     whose target is gone.
             */
            put: components["schemas"]["SiteThing"][];
            /** @description What went. */
            retire: components["schemas"]["Retired"][];
            /** @description The marks, calls and acceptances that it touches. */
            touches: components["schemas"]["Touched"];
            /** @description Why. */
            why: string;
        };
        /** @description Cuts and what is buried on this site. */
        SiteCuts: {
            /**
             * @description How clear a pipe or dig crosses a buried line.
             * @default 3048000
             */
            clearance?: components["schemas"]["Length"];
            /**
             * @description The competent persons, as they join: who pick classes and sign inspections.
             * @default []
             */
            competent?: string[];
            /**
             * @description Faces and trenches that are watched.
             * @default []
             */
            faces?: components["schemas"]["FaceZone"][];
            /**
             * @description Lines overhead.
             * @default []
             */
            overheads?: components["schemas"]["OverheadLine"][];
            /**
             * @description Piles of spoil and material.
             * @default []
             */
            piles?: components["schemas"]["SitePile"][];
            /** @default null */
            rules?: components["schemas"]["ExcavationRules"] | null;
            /**
             * @description Footings and walls behind the cuts.
             * @default []
             */
            structures?: components["schemas"]["Structure"][];
            /**
             * @description Locate tickets.
             * @default []
             */
            tickets?: components["schemas"]["Ticket"][];
            /**
             * @description Buried lines.
             * @default []
             */
            utilities?: components["schemas"]["Utility"][];
        };
        /** @description One thing that differs. */
        SiteDifference: {
            /** @description What it is; none when it is gone. */
            now?: string | null;
            /** @description What it was; none when it is new. */
            was?: string | null;
            /** @description Where: `marks N-04 place x`. */
            what: string;
        };
        /** @description Things as they are typed, and things that are to go. */
        SiteDraft: {
            /** @description What is added or takes the place of what is. */
            put: components["schemas"]["Draft"][];
            /** @description What goes. */
            retire: components["schemas"]["Retired"][];
        };
        /** @description What a draft comes to. */
        SiteDrafted: {
            /** @description What is wrong or odd, each with its field. */
            faults: components["schemas"]["DraftFault"][];
            would?: components["schemas"]["WouldChange"] | null;
        };
        /** @description A fault of a site. */
        SiteFault: components["schemas"]["Text"] & {
            /** @description Where, by kind and name: `targets.EAST`, `marks.N-04.target`. */
            path: string;
            /** @description Odd, but the crew may mean it. */
            warning: boolean;
        };
        /** @description One thing's form. */
        SiteForm: {
            /** @description Its fields, in order. */
            fields: components["schemas"]["FormField"][];
            /** @description What several of them are called. */
            name: components["schemas"]["Text"];
            /** @description What it is of. */
            of: components["schemas"]["FormOf"];
            /** @description Whether a site has it once. */
            once: boolean;
        };
        /** @description A pile of spoil or material, where somebody has drawn it. */
        SitePile: {
            /** @description Over its foot, from side to side. */
            across: components["schemas"]["Length"];
            /** @description Its middle. */
            at: components["schemas"]["Point"];
            /** @description Its name. */
            id: string;
            /** @description A note. */
            note?: string;
        };
        /** @description A changed site file is in force. */
        SiteRevised: {
            /** @description What changed. */
            differences: components["schemas"]["SiteDifference"][];
            /** @description Its digest. */
            digest: string;
            /** @description The operators who must see a changed target before they are called again. */
            must_see: components["schemas"]["NewTarget"][];
            /** @description The site. */
            site: components["schemas"]["Site"];
            /** @description The marks, calls and acceptances that it touches. */
            touches?: components["schemas"]["Touched"];
        };
        /** @description A draft put in force. */
        SiteSaying: {
            /** @description What is typed. */
            draft: components["schemas"]["SiteDraft"];
            /** @description The phone's own key for it, as for everything that is said. */
            key: string;
            /** @description When it was made, on the hub's clock as the phone knows it. */
            made_at: components["schemas"]["Time"];
            /** @description The digest of the differences as they were shown. */
            seen: string;
            /** @description Why, and on whose word. */
            why: string;
        };
        /** @description The site as forms take it. */
        SiteSheet: {
            /** @description The form of each kind of thing. */
            forms: components["schemas"]["SiteForm"][];
            /** @description What is written now, by the forms' keys. */
            written: unknown;
        };
        /** @description The first site file. */
        SiteTaken: {
            /** @description SHA-256 of the site as canonical JSON, in hex. */
            digest: string;
            /** @description The site. */
            site: components["schemas"]["Site"];
        };
        /** @description A grade to reach, with its allowed high and low. */
        SiteTarget: {
            /** @description Shape, stack and boundary. */
            grade: components["schemas"]["Target"];
            /**
             * Format: double
             * @description Coverage factor of the guard band; 1 unless the drawing asks for proof.
             */
            guard_factor: number;
            /** @description Short name, such as `EAST`. */
            id: string;
            /** @description The name that the operator reads in the top line. */
            name: string;
            /** @description Who typed the same elevations a second time without seeing the first; without it the target is not proved. */
            proved_by?: string | null;
            /**
             * Format: int32
             * @description Counts up with each revision; the first is 1.
             */
            revision: number;
            /** @description Allowed high and allowed low. */
            tolerance: components["schemas"]["Tolerance"];
            /** @description Who typed its elevations, when that is known. */
            typed_by?: string | null;
        };
        /** @description A thing of the site, whole: it takes the place of the one of its name, or is new. */
        SiteThing: {
            /** @enum {string} */
            list: "benchmark";
            /** @description A point of known elevation. */
            thing: components["schemas"]["Benchmark"];
        } | {
            /** @enum {string} */
            list: "line";
            /** @description A line on the plan. */
            thing: components["schemas"]["Line"];
        } | {
            /** @enum {string} */
            list: "target";
            /** @description A grade to reach. */
            thing: components["schemas"]["SiteTarget"];
        } | {
            /** @enum {string} */
            list: "mark";
            /** @description A layout mark. */
            thing: components["schemas"]["Mark"];
        } | {
            /** @enum {string} */
            list: "machine";
            /** @description A machine. */
            thing: components["schemas"]["Machine"];
        } | {
            /** @enum {string} */
            list: "rod";
            /** @description A rod. */
            thing: components["schemas"]["Rod"];
        } | {
            /** @enum {string} */
            list: "laser";
            /** @description A laser. */
            thing: components["schemas"]["Laser"];
        } | {
            /** @enum {string} */
            list: "overhead";
            /** @description A line overhead. */
            thing: components["schemas"]["OverheadLine"];
        } | {
            /** @enum {string} */
            list: "pile";
            /** @description A pile. */
            thing: components["schemas"]["SitePile"];
        } | {
            /** @enum {string} */
            list: "face";
            /** @description A face or a trench. */
            thing: components["schemas"]["FaceZone"];
        } | {
            /** @enum {string} */
            list: "structure";
            /** @description A footing or wall behind a cut. */
            thing: components["schemas"]["Structure"];
        } | {
            /** @enum {string} */
            list: "utility";
            /** @description A buried line. */
            thing: components["schemas"]["Utility"];
        } | {
            /** @enum {string} */
            list: "ticket";
            /** @description A locate ticket. */
            thing: components["schemas"]["Ticket"];
        } | {
            /** @enum {string} */
            list: "rules";
            /** @description What the site has settled on. */
            thing: components["schemas"]["Rules"];
        } | {
            /** @enum {string} */
            list: "frame";
            /** @description How the plan's coordinates come on to the site. */
            thing: components["schemas"]["Frame"];
        };
        /** @description An operator has agreed. */
        SlewAgreed: {
            /** @description Whose machine. */
            machine: string;
            /** @description With which other machine. */
            with: string;
        };
        /** @description An agreement between two machines. */
        SlewCard: {
            /** @description The machines whose operators have pressed AGREED; it holds with both. */
            agreed: string[];
            /** @description A word about it. */
            note: string;
            /** @description The two machines. */
            sides: components["schemas"]["SlewSide"][];
            /** @description Since when it was proposed. */
            since: components["schemas"]["Time"];
            /** @description Where the machines stood when it was proposed, in the order of the sides; none in a state that is older than this field. */
            stood?: components["schemas"]["Point"][];
        };
        /** @description An agreement waits for both operators. */
        SlewProposed: {
            /** @description A word about it. */
            note: string;
            /** @description The two machines. */
            sides: components["schemas"]["SlewSide"][];
        };
        /** @description What one machine keeps out of. */
        SlewSide: {
            /** @description The side that its boom does not swing to. */
            keeps_out_of: components["schemas"]["Compass"];
            /** @description Which machine. */
            machine: string;
        };
        /** @description An agreement holds no more. */
        SlewVoided: {
            /** @description The machine that moved. */
            machine: string;
            /** @description The other. */
            with: string;
        };
        /** @description A slip that may have been made. */
        Slip: {
            /** @enum {string} */
            kind: "other_benchmark";
            /** @description The one it may have been. */
            perhaps: string;
            /** @description The one that was named. */
            used: string;
        } | {
            /** @enum {string} */
            kind: "whole_foot";
        } | {
            /** @enum {string} */
            kind: "tenth";
        } | {
            /** @enum {string} */
            kind: "digits_swapped";
            /** @description What it may have been. */
            perhaps: components["schemas"]["Length"];
            /** @description As typed. */
            typed: components["schemas"]["Length"];
        } | {
            /** @enum {string} */
            kind: "bracket";
        } | {
            /** @enum {string} */
            kind: "rod_section";
        } | {
            /** @enum {string} */
            kind: "inches_as_tenths";
            /** @description What it may have been. */
            perhaps: components["schemas"]["Length"];
            /** @description As typed. */
            typed: components["schemas"]["Length"];
        } | {
            /** @enum {string} */
            kind: "laser_moved";
            /** @description What the rod reads on it now if the laser moved, bracket left out; as booked if it did not. */
            reads: components["schemas"]["Length"];
            /** @description The benchmark of the backsight. */
            shoot: string;
        };
        /** @description The steepest slopes, run to one of rise. */
        Slopes: {
            /**
             * Format: double
             * @description A.
             */
            a: number;
            /**
             * Format: double
             * @description B.
             */
            b: number;
            /**
             * Format: double
             * @description C.
             */
            c: number;
            /**
             * Format: double
             * @description Stable rock.
             */
            rock: number;
            /** @description The rule. */
            section: string;
        };
        /** @description A face came down. */
        SloughSeen: {
            /** @description Back. */
            back: components["schemas"]["Length"];
            /**
             * Format: double
             * @description About so many cubic yards: half of length, height and depth.
             */
            cubic_yards: number;
            /** @description Up. */
            height: components["schemas"]["Length"];
            /** @description Along it. */
            length: components["schemas"]["Length"];
            /** @description The mark nearest to it, when somebody said so. */
            mark?: string | null;
            /** @description Who was near. */
            note?: string;
            /** @description Which face. */
            zone: string;
        };
        /**
         * @description A class of soil, from the firmest to the weakest.
         * @enum {string}
         */
        SoilClass: "rock" | "a" | "b" | "c";
        /** @description A layer of soil, from the bottom up. */
        SoilLayer: {
            /** @description Its class, as borings or a competent person gave it. */
            class: components["schemas"]["SoilClass"];
            top?: components["schemas"]["Length"] | null;
        };
        /** @description Soil still to be removed in one target. */
        SoilLeft: {
            /**
             * Format: double
             * @description Its area, in square feet.
             */
            area_sf: number;
            /**
             * Format: double
             * @description To be dug, in the ground, in cubic yards.
             */
            cut_cy: number;
            /**
             * Format: double
             * @description Below the target, in cubic yards.
             */
            low_cy: number;
            /**
             * Format: int32
             * @description All its marks; what was not read is not counted.
             */
            marks: number;
            /**
             * Format: int32
             * @description Marks with a reading: each stands for its share of the area.
             */
            read: number;
            /** @description The target. */
            target: string;
        };
        /** @description Soil was measured in the ground. */
        SoilMeasured: {
            /**
             * Format: double
             * @description Cubic yards in the ground, dug so far.
             */
            bank_cy: number;
            /** @description How it was measured. */
            how: string;
            /** @description What it is. */
            material: string;
        };
        /** @description The soil was typed anew. */
        SoilRetyped: {
            /** @description The class that counts. */
            class: components["schemas"]["SoilClass"];
            /** @description What was found. */
            evidence: components["schemas"]["Evidence"];
            from?: components["schemas"]["SoilClass"] | null;
            /** @description What lowered it. */
            lowered_by?: components["schemas"]["Lowered"][];
            /** @description The class picked. */
            picked: components["schemas"]["SoilClass"];
            /** @description Why. */
            why: string;
            /** @description The face. */
            zone: string;
        };
        /** @description What was measured. */
        SoilTest: {
            /**
             * Format: double
             * @description Asked by the drawing; the price list's when left out.
             */
            asked_psf?: number | null;
            /** @enum {string} */
            kind: "bearing";
            /**
             * Format: double
             * @description Stated, in pounds per square foot.
             */
            stated_psf: number;
        } | {
            /** @enum {string} */
            kind: "density";
            wanted?: components["schemas"]["DensityWanted"] | null;
            /**
             * Format: double
             * @description Water in percent of dry weight.
             */
            water_percent: number;
            /**
             * Format: double
             * @description Wet, in pounds per cubic foot.
             */
            wet_pcf: number;
        };
        /** @description The soil was tested. */
        SoilTested: {
            density?: components["schemas"]["DensityJudged"] | null;
            /** @description The elevation of the ground that was tested. */
            elevation: components["schemas"]["Length"];
            /**
             * Format: int32
             * @description Which lift.
             */
            lift?: number | null;
            /** @description The mark. */
            mark: string;
            /** @description A word about it. */
            note?: string;
            /** @description It passes. */
            passes: boolean;
            /** @description The patch in which it was made. */
            patch?: string | null;
            /**
             * Format: int64
             * @description The reading that it is from.
             */
            reading: number;
            /**
             * Format: int64
             * @description The test that it repeats: one that failed or is void.
             */
            retests?: number | null;
            /** @description What was measured, with what was asked. */
            test: components["schemas"]["SoilTest"];
            /** @description Who tested. */
            tester: string;
        };
        /** @description What a machine did for a while. */
        Span: {
            /** @description What. */
            doing: components["schemas"]["Doing"];
            /** @description From. */
            from: components["schemas"]["Time"];
            /** @description To. */
            to: components["schemas"]["Time"];
        };
        /**
         * @description Why a reading has no call.
         * @enum {string}
         */
        SpotReason: "no_target" | "no_machine" | "set_up_in_doubt" | "set_up_closed" | "face_left" | "daylight_over" | "not_located" | "ticket_lapsed" | "line_struck" | "paint_gone" | "crossing_too_near" | "query_open";
        /** @description Who spots for a machine. */
        SpotterCard: {
            /** @description On which phone. */
            device: string;
            lost?: components["schemas"]["Time"] | null;
            /** @description Who. */
            person: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
        };
        /** @description A machine has no spotter any more. */
        SpotterGone: {
            /** @description Which machine. */
            machine: string;
            /** @description Who spotted. */
            person: string;
        };
        /** @description A machine has a spotter. */
        SpotterSet: {
            /** @description On which phone. */
            device: string;
            /** @description Which machine. */
            machine: string;
            /** @description Who. */
            person: string;
        };
        /** @description What the diagonals say. */
        Squareness: {
            /** @description How far C and D move, and which way. */
            moves: components["schemas"]["CornerMove"];
            /**
             * @description The mean of the diagonals less what they should be. Skew takes nothing noticeable from the mean, so what is
             *     left here is a side taped wrong.
             */
            side_error: components["schemas"]["Length"];
            /**
             * Format: double
             * @description By which angle the corner at B opens beyond square, in degrees; negative when it closes.
             */
            skew_degrees: number;
            /** @description What both diagonals should be. */
            wanted: components["schemas"]["Length"];
        };
        /** @description The layers under the surface that the drawing gives. */
        Stack: {
            /** @description From the surface down. */
            layers: components["schemas"]["Layer"][];
            /** @description What the shape's elevation is, such as `top of footing`. */
            surface: string;
        };
        /**
         * @description Where a visit stands.
         * @enum {string}
         */
        Stage: "asked" | "waiting" | "refused" | "answered" | "in" | "unconfirmed";
        /** @description A place that an operator can name with one press. */
        Stand: {
            /** @enum {string} */
            kind: "mark";
            /** @description Which. */
            mark: string;
        } | {
            /** @enum {string} */
            kind: "still";
            /** @description When that was said, as the cab's screen showed it: a place that somebody has said since is not meant. */
            since: components["schemas"]["Time"];
        };
        /** @description What the cab's screen tells of its own place, and what one press can say of it. */
        StandCard: {
            /** @description The mark that was called to this machine last. */
            called?: string | null;
            /** @description The mark that lies nearest to that place. */
            near?: string | null;
            old_at?: components["schemas"]["Time"] | null;
            since?: components["schemas"]["Time"] | null;
        };
        /** @description The operator says where the own machine stands now. */
        StandHere: {
            /** @description Where. */
            at: components["schemas"]["Stand"];
        };
        /**
         * @description What becomes of a mark's reading.
         * @enum {string}
         */
        Standing: "stands" | "earlier_stands" | "shoot_again" | "unproven";
        /** @description The start of the day. */
        StartCard: {
            /** @description Each check, in the order in which they are gone through. */
            checks: components["schemas"]["StartCheckCard"][];
            ready?: components["schemas"]["ReadyBy"] | null;
        };
        /**
         * @description What is looked at before a day begins.
         * @enum {string}
         */
        StartCheck: "hat_and_vest" | "hand_signals" | "first_aid" | "overhead_lines" | "locate_tickets" | "laser" | "ways_out";
        /** @description One check. */
        StartCheckCard: {
            before?: components["schemas"]["CheckSaid"] | null;
            /** @description Which. */
            check: components["schemas"]["StartCheck"];
            said?: components["schemas"]["CheckSaid"] | null;
        };
        /** @description A start check has its value. */
        StartCheckSaid: {
            as_before?: components["schemas"]["Time"] | null;
            /** @description What was looked at. */
            check: components["schemas"]["StartCheck"];
            /** @description The signals that were agreed. */
            signals?: components["schemas"]["HandSignal"][];
            /** @description What was seen. */
            value: string;
        };
        /** @description A check without a value, and why the day begins all the same. */
        StartOverride: {
            /** @description Which. */
            check: components["schemas"]["StartCheck"];
            /** @description Why. */
            why: string;
        };
        /** @description From here on the run stands at one elevation, up to the next step. */
        Step: {
            /** @description The elevation of the shape's surface from here on. */
            elevation: components["schemas"]["Length"];
            /** @description The station of the step's face; 0 for the first. */
            from: components["schemas"]["Length"];
            /** @description How far, either way, the face may fall from its station. */
            window: components["schemas"]["Length"];
        };
        /**
         * @description Which side of a step, looking up-station.
         * @enum {string}
         */
        StepSide: "before" | "after";
        /** @description Whether a last reading still speaks for its mark, and why not. */
        StillCounts: {
            /** @enum {string} */
            kind: "counts";
        } | {
            /** @enum {string} */
            kind: "before_change";
        } | {
            /** @enum {string} */
            kind: "laser_in_doubt";
            /** @description The set-up. */
            set_up: string;
        } | (components["schemas"]["Text"] & {
            /** @enum {string} */
            kind: "void";
        });
        /** @description Every machine stands still, bucket down. */
        StopAll: {
            /** @description Why; may be empty: the press comes first. */
            why?: string;
        };
        /** @description A stop in force. */
        StopCard: {
            /** @description Part of an ALL STOP. */
            all: boolean;
            /** @description Who pressed. */
            by: string;
            /**
             * Format: int64
             * @description The entry of its newest press: what a LIFT names, and what sounds again.
             */
            press?: number;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why; may be empty. */
            why: string;
        };
        /** @description A stop was lifted. */
        StopLifted: {
            /** @description Which. */
            machines: string[];
            /** @description What was seen. */
            why: string;
        };
        /** @description Machines were stopped. */
        Stopped: {
            /** @description Every machine. */
            all: boolean;
            /** @description Which. */
            machines: string[];
            /** @description Why. */
            why: string;
        };
        /** @description Unconfined strength as it was read; kept in the unit of the instrument. */
        Strength: {
            /** @enum {string} */
            unit: "tsf";
            /**
             * Format: double
             * @description Value.
             */
            value: number;
        } | {
            /** @enum {string} */
            unit: "kpa";
            /**
             * Format: double
             * @description Value.
             */
            value: number;
        };
        /** @description Strength of cohesive soil. */
        StrengthLimits: {
            /**
             * Format: double
             * @description A from here on, kilopascals.
             */
            a_kpa: number;
            /**
             * Format: double
             * @description A from here on, tons a square foot.
             */
            a_tsf: number;
            /**
             * Format: double
             * @description C up to and with this, kilopascals.
             */
            c_kpa: number;
            /**
             * Format: double
             * @description C up to and with this, tons a square foot.
             */
            c_tsf: number;
            /** @description The rule. */
            section: string;
        };
        /** @description A stretch by station. */
        Stretch: {
            /** @description From. */
            from: components["schemas"]["Length"];
            /** @description To. */
            to: components["schemas"]["Length"];
        };
        /** @description A struck line, as the screens show it. */
        StruckCard: {
            /** @description By whom. */
            by: string;
            /** @description Whom to call after the emergency number. */
            call: string;
            /** @description The drawn lines that it may be. */
            lines: string[];
            /** @description Which machine met it. */
            machine?: string | null;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description What to do. */
            what: components["schemas"]["StruckDo"];
        };
        /**
         * @description What everybody does about it.
         * @enum {string}
         */
        StruckDo: "get_away" | "live" | "touch_nothing" | "not_known";
        /** @description A footing or wall that stands behind a cut. */
        Structure: {
            /** @description Its lower edge. */
            bottom: components["schemas"]["Length"];
            /** @description Its name. */
            id: string;
            /** @description Its near edge. */
            points: components["schemas"]["Point"][];
        };
        /** @description A face against a footing. */
        StructureFound: {
            below?: components["schemas"]["Length"] | null;
            /** @description The least room between daylight and its near edge. */
            room: components["schemas"]["Length"];
            /** @description Which. */
            structure: string;
        };
        /** @description A suggestion and how it came out. */
        Suggested: {
            /** @description What kind of slip. */
            kind: components["schemas"]["Hypothesis"];
            /** @description That was it. */
            right: boolean;
        };
        /** @description A sum to work out: the computations of the worked examples, and their inputs as texts with units. */
        Sum: {
            /** @description Which. */
            computation: string;
            /** @description What goes in, by name. */
            inputs: {
                [key: string]: string;
            };
        };
        /** @description What a sum comes to, each as a text with its unit. */
        SumDone: {
            /** @description By name. */
            outputs: {
                [key: string]: string;
            };
        };
        /** @description What the supervisor's page shows. */
        SupervisorView: {
            /** @description What the day costs, what was hauled, what is needed, who is needed. */
            account: components["schemas"]["AccountView"];
            /** @description Aims in force that are not zero. */
            aims: components["schemas"]["AimCard"][];
            /**
             * Format: int32
             * @description How often the codes of this day were renewed.
             */
            codes_generation: number;
            /** @description How long codes last. */
            codes_last: components["schemas"]["Lasts"];
            /** @description Contours that somebody has walked. */
            contours: components["schemas"]["ContourCard"][];
            /** @description What of each run is not proven. */
            coverage: components["schemas"]["RunCoverage"][];
            /** @description Cuts and what is buried, with what is for the engineer. */
            cuts: components["schemas"]["CutsCard"];
            /** @description The day. */
            day: string;
            /** @description What needs somebody, the gravest first and of those the oldest. */
            exceptions: components["schemas"]["Exception"][];
            /** @description Who may be within a keep-out, machine by machine. */
            inside: components["schemas"]["InsideCard"][];
            /** @description Lines of levels of the day: a point of one can be taken as a benchmark. */
            levels: components["schemas"]["LevelsCard"][];
            /** @description One card for each machine. */
            machines: components["schemas"]["MachineCard"][];
            /** @description The last reading on each mark that has one. */
            marks: components["schemas"]["MarkCard"][];
            /** @description Near misses that are open, oldest first. */
            near_misses: components["schemas"]["NearMissCard"][];
            /** @description Who has joined. */
            people: components["schemas"]["PersonCard"][];
            /** @description How the questions about readings came out. */
            questions: components["schemas"]["QuestionsCard"];
            /** @description What was last said of the rain. */
            rain: components["schemas"]["RainNow"];
            /** @description The close of the day, visitors, inspections, queries, photos. */
            record: components["schemas"]["RecordCard"];
            /** @description Every set-up of the day that is not closed. */
            set_ups: components["schemas"]["SetUpCard"][];
            /** @description The job. */
            site: string;
            site_change?: components["schemas"]["SiteChangeCard"] | null;
            /** @description The start of the day. */
            start: components["schemas"]["StartCard"];
            /** @description What failed checks and bumps of the day put in doubt: also what has been settled since. */
            suspects: components["schemas"]["SuspectCard"][];
            /** @description Water that stands, in the order of its newest words. */
            water?: components["schemas"]["WaterNow"][];
        };
        /**
         * @description What the rod stands on.
         * @enum {string}
         */
        Surface: "trimmed" | "tooth_marked" | "hard_or_rock";
        /** @description What a failed check or a bump put in doubt. */
        SuspectCard: {
            /** @description The last good check. */
            from: components["schemas"]["Time"];
            held_at?: components["schemas"]["Time"] | null;
            moved_by?: components["schemas"]["Time"] | null;
            /**
             * Format: int32
             * @description How many readings it holds.
             */
            readings: number;
            residual?: components["schemas"]["Length"] | null;
            /** @description Which set-up. */
            set_up: string;
            /** @description Marks to shoot again, in walking order; one that was shot again has left. */
            shoot_again: components["schemas"]["SuspectMark"][];
            /** @description Marks that stand either way, and earlier acceptances that stand. */
            stand: components["schemas"]["SuspectMark"][];
            to?: components["schemas"]["Time"] | null;
        };
        /** @description A mark with a reading in the window. */
        SuspectMark: {
            /** @description When that reading was made. */
            at: components["schemas"]["Time"];
            dev?: components["schemas"]["Length"] | null;
            dev_if_moved?: components["schemas"]["Length"] | null;
            /** @description The mark. */
            mark: string;
            /**
             * Format: int64
             * @description The entry of the reading that is spoken of: the last in the window, or the acceptance before it that stands.
             */
            reading: number;
            /** @description What becomes of it. */
            standing: components["schemas"]["Standing"];
            verdict?: components["schemas"]["Verdict"] | null;
            verdict_if_moved?: components["schemas"]["Verdict"] | null;
        };
        /**
         * @description What was found about the readings between the last good check and the shot that ended the doubt. A later one of the
         *     same set-up takes its place.
         */
        SuspectWindow: {
            /** @description The last good check. */
            from: components["schemas"]["Time"];
            held_at?: components["schemas"]["Time"] | null;
            /** @description Its marks in walking order: the order of work. */
            marks: components["schemas"]["SuspectMark"][];
            moved_by?: components["schemas"]["Time"] | null;
            /**
             * Format: int32
             * @description How many readings lie in it, repeats that were asked about included.
             */
            readings: number;
            residual?: components["schemas"]["Length"] | null;
            /** @description Which set-up. */
            set_up: string;
            to?: components["schemas"]["Time"] | null;
        };
        /**
         * @description A table of a day, by the name of its file.
         * @enum {string}
         */
        Table: "as-built.csv" | "readings.csv" | "calls.csv" | "checks.csv" | "hours.csv" | "costs.csv" | "loads.csv" | "patches.csv" | "tests.csv" | "rock.csv" | "edges.csv" | "exceptions.csv" | "open.csv" | "photos.csv" | "as-built.xml" | "marks.geojson";
        /** @description A load was counted by mistake. */
        TakeBackLoad: {
            /**
             * Format: int64
             * @description The load's entry.
             */
            load: number;
        };
        /** @description One rod value at one mark. */
        TakeReading: {
            /** @description Made without seeing the reading before: the two tell how well this person reads. */
            blind?: boolean;
            /** @description How finely it was read. */
            care?: components["schemas"]["Care"];
            /** @description The machine, when it is not the one that the mark is assigned to. */
            machine?: string | null;
            /** @description The mark under the rod; with a `place`, the name under which it is kept, or nothing. */
            mark?: string;
            /** @description Rod, or the ground HIGH or LOW by a receiver fixed at grade rod. */
            mode: components["schemas"]["Mode"];
            /**
             * @description Typed in from paper: who read it, as the paper has it. The moment of the request is then the one on the paper, and
             *     no call follows.
             */
            paper?: string | null;
            place?: components["schemas"]["Where"] | null;
            /**
             * Format: int64
             * @description The entry of the reading that this corrects.
             */
            restates?: number | null;
            /** @description Other quick readings of the rocked rod, as typed: the smallest of all counts. */
            rocked?: string[];
            /** @description The rod. */
            rod: string;
            /** @description The set-up. */
            set_up: string;
            side?: components["schemas"]["StepSide"] | null;
            /**
             * Format: int64
             * @description The entry of the question that this answers: taken as it is, not asked again.
             */
            sure?: number | null;
            /** @description The surface that it stands on, by the stack's names; the ground to dig to when none. */
            surface?: string | null;
            /** @description The rod value as typed; with a receiver, the tenths that the ground is high or low. */
            text: string;
            /** @description It waited on the phone without a link, and whoever took it was asked and said SEND when the link was back. */
            waited?: boolean;
        };
        /** @description Somebody has taped a mark from two places that stay. */
        TakeTies: {
            /** @description A benchmark or another mark: where the first tape is held. */
            first: string;
            /** @description What it reads, held level, as typed in feet or with a unit. */
            first_tape: string;
            /** @description The mark. */
            mark: string;
            /** @description Where the second is held. */
            second: string;
            /** @description What it reads. */
            second_tape: string;
        };
        /** @description The grade to reach. */
        Target: {
            /** @description The drawing's surface. */
            shape: components["schemas"]["Shape"];
            /** @description What lies under it, down to the dig. */
            stack: components["schemas"]["Stack"];
            /** @description Zones that are dug deeper and filled again. */
            undercuts?: components["schemas"]["Undercut"][];
            /** @description The corners of its boundary, in order; everywhere when none. A run ends at its own edges too. */
            within?: components["schemas"]["Point"][] | null;
        };
        /** @description A revised target owes what the old one did not. */
        TargetOwes: {
            /** @description Each mark with the gravest rule. */
            owed: components["schemas"]["DepthOwed"][];
            /** @description The target. */
            target: string;
        };
        /** @description A target was revised. */
        TargetRevised: {
            /** @description Its new shape, stack and boundary. */
            grade: components["schemas"]["Target"];
            /** @description The machines whose operator must see it first. */
            must_see: string[];
            /**
             * Format: int32
             * @description Its new revision.
             */
            revision: number;
            /** @description Which. */
            target: string;
            /** @description Its allowed high and low. */
            tolerance: components["schemas"]["Tolerance"];
            /** @description The marks, calls and acceptances that it touches. */
            touches?: components["schemas"]["Touched"];
            /** @description Why. */
            why: string;
        };
        /** @description An operator has seen a revised target. */
        TargetSeen: {
            /** @description Which machine. */
            machine: string;
            /**
             * Format: int32
             * @description Which revision.
             */
            revision: number;
            /** @description Which target. */
            target: string;
        };
        /** @description A target's elevations were typed a second time. */
        TargetTyped: {
            /** @description Whether all agree; then the target is proved. */
            agrees: boolean;
            /** @description What differs, both as they are; nothing is changed. */
            differs?: components["schemas"]["Differs"][];
            /**
             * Format: int32
             * @description Which revision.
             */
            revision: number;
            /** @description Which. */
            target: string;
        };
        /** @description A supervisor says what happened, or closes a near miss. */
        TellNearMiss: {
            /** @description Nothing is left to do about it: it leaves the open list. */
            close?: boolean;
            /**
             * Format: int32
             * @description Which: 1 for NM-1.
             */
            number: number;
            /** @description What happened and what was done about it. */
            words: string;
        };
        /** @description A soil test. */
        TestCard: components["schemas"]["Text"] & {
            at?: components["schemas"]["Point"] | null;
            /** @description The elevation that was tested. */
            elevation: components["schemas"]["Length"];
            /** @description When. */
            made_at: components["schemas"]["Time"];
            /** @description The mark. */
            mark: string;
            /** @description A later test of the mark stands in its place. */
            replaced: boolean;
            /** @description How it stands. */
            standing: components["schemas"]["TestStanding"];
            /**
             * Format: int64
             * @description Its entry.
             */
            test: number;
            /** @description Who tested. */
            tester: string;
            void?: components["schemas"]["VoidCause"] | null;
            /** @description What was measured and asked. */
            what: components["schemas"]["SoilTest"];
        };
        /** @description A laser was tested. */
        TestLaser: {
            /** @description Which. */
            laser: string;
            /** @description The rod. */
            rod: string;
            /** @description What was read. */
            test: components["schemas"]["LaserTest"];
        };
        /** @description A soil test. */
        TestSoil: {
            /**
             * Format: int32
             * @description Which lift, from 1 at the bottom; none for the ground itself.
             */
            lift?: number | null;
            /** @description The mark. */
            mark: string;
            /** @description A word about it. */
            note?: string;
            /** @description The patch in which it was made. */
            patch?: string | null;
            /** @description What was measured. */
            test: components["schemas"]["SoilTest"];
            /** @description Who tested. */
            tester: string;
            undercut?: components["schemas"]["AskedUndercut"] | null;
        };
        /**
         * @description How a test stands.
         * @enum {string}
         */
        TestStanding: "passes" | "fails" | "void";
        /** @description A test does not count any more. */
        TestVoided: {
            /** @description Its mark. */
            mark: string;
            /**
             * Format: int64
             * @description The test's entry.
             */
            test: number;
            /** @description Why. */
            why: components["schemas"]["VoidCause"];
        };
        /** @description What a test of a laser found. */
        TestedLaser: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description It goes to service. */
            service: boolean;
            /** @description The slant, over 100 ft. */
            slant_per_100_ft: components["schemas"]["Length"];
        };
        /**
         * @description A sentence in every language, as the log and the wire hold it. A language that is added later gets a field with
         *     `#[serde(default, skip_serializing_if = "String::is_empty")]`: logs from before do not hold it, and it reads as English.
         */
        Text: {
            /** @description In English. */
            english: string;
            /** @description In Portuguese; logs from before do not hold it. */
            portuguese?: string;
            /** @description In Spanish. */
            spanish: string;
        };
        /**
         * @description Kinds of things that have names.
         * @enum {string}
         */
        Thing: "mark" | "target" | "machine" | "benchmark" | "rod" | "laser" | "set_up" | "phone" | "turning_point" | "mark_or_target" | "line" | "load" | "patch" | "test" | "undercut" | "face" | "pins" | "structure" | "utility" | "overhead" | "pile" | "ticket" | "near_miss" | "visitor" | "inspection" | "query" | "photo";
        /**
         * @description How a thumb goes in (Appendix A (d)(2), from memory).
         * @enum {string}
         */
        Thumb: "great_effort" | "some_effort" | "easily";
        /** @description A locate ticket. */
        Ticket: {
            /** @description The ground that was asked for, corner by corner. */
            area: components["schemas"]["Point"][];
            /** @description Who has to answer. */
            asks?: components["schemas"]["UtilityKind"][];
            /** @description The first day that it holds for, such as `2030-05-01`. */
            from: string;
            /** @description Its number. */
            id: string;
            /** @description The last day that it holds for. */
            to: string;
        };
        /** @description A load has its paper. */
        TicketAdded: {
            /**
             * Format: int64
             * @description The load's entry.
             */
            load: number;
            /**
             * Format: double
             * @description Loose cubic yards on it.
             */
            loose_cy?: number | null;
            /** @description The ticket's number. */
            ticket: string;
            /**
             * Format: double
             * @description Tons on it.
             */
            tons?: number | null;
        };
        /** @description A locate ticket. */
        TicketCard: {
            /** @description Who was asked. */
            asks: components["schemas"]["UtilityKind"][];
            checked?: components["schemas"]["Signed"] | null;
            /**
             * Format: int64
             * @description Days left after this one; below zero it has lapsed, none when it does not hold yet.
             */
            days_left?: number | null;
            /** @description Its number. */
            id: string;
            /** @description Who was asked and has not answered. */
            silent: components["schemas"]["UtilityKind"][];
            /** @description The last day that it holds for. */
            to: string;
        };
        /** @description A ticket was looked at. */
        TicketChecked: {
            /**
             * Format: int64
             * @description Days that are left after this one.
             */
            days_left: number;
            /** @description Who has answered what. */
            responses: components["schemas"]["Response"][];
            /** @description Who was asked and has not answered. */
            silent?: components["schemas"]["UtilityKind"][];
            /** @description Its number. */
            ticket: string;
            /** @description The last day that it holds for. */
            to: string;
        };
        /** @description The ties of a mark, and who took them when. */
        TiesCard: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description Who took them. */
            by: string;
            /** @description The ties. */
            ties: components["schemas"]["TiesTaken"];
        };
        /** @description A mark was tied. */
        TiesTaken: {
            /**
             * Format: double
             * @description The angle between the tapes at the mark, in degrees.
             */
            angle_degrees: number;
            /** @description One standard deviation of that place: the ends' and the tapes'. */
            doubt: components["schemas"]["Length"];
            /** @description Where the first tape was held. */
            first: string;
            /** @description What it read. */
            first_tape: components["schemas"]["Length"];
            /** @description The mark. */
            mark: string;
            /** @description How far the place of the tapes lies from the plan's. */
            off: components["schemas"]["Length"];
            /** @description Where the second was held. */
            second: string;
            /** @description What it read. */
            second_tape: components["schemas"]["Length"];
            /** @description On which side of the line from the first to the second the mark lies. */
            side: components["schemas"]["Side"];
            /** @description The tapes meet too flatly: another pair is better. */
            weak: boolean;
        };
        /** @description Two tapes to take while the mark is still there. */
        TiesToTake: {
            /**
             * Format: double
             * @description The angle between them at the mark, in degrees.
             */
            angle_degrees: number;
            /** @description One standard deviation of the place that they give. */
            doubt: components["schemas"]["Length"];
            /** @description Where the first is held. */
            first: string;
            /** @description What it should read, level, by the plan. */
            first_tape: components["schemas"]["Length"];
            /** @description Where the second is held. */
            second: string;
            /** @description What it should read. */
            second_tape: components["schemas"]["Length"];
            /** @description They meet too flatly, and no pair meets better. */
            weak: boolean;
        };
        /**
         * Format: int64
         * @description Milliseconds since 1970-01-01T00:00:00Z.
         */
        Time: number;
        /** @description A target that waits for a second person, without its values. */
        ToProve: {
            /** @description Its name. */
            name: string;
            /**
             * Format: int32
             * @description Which revision.
             */
            revision: number;
            /** @description Which. */
            target: string;
            /** @description What is to be typed, in order. */
            values: components["schemas"]["Text"][];
        };
        /** @description A corner of a toe; two at one place with two elevations are a step. */
        ToeCorner: {
            /** @description Where. */
            at: components["schemas"]["Point"];
            /** @description The bottom, as planned. */
            elevation: components["schemas"]["Length"];
        };
        /** @description The answer over time, one page for each day that the question touches. */
        ToldDays: {
            /** @description What was asked. */
            asked: components["schemas"]["WhoTold"];
            /** @description The days, oldest first, each asked about its own part of the time. */
            days: components["schemas"]["ToldPage"][];
        };
        /** @description Somebody else, or another phone, has said OUT for a person. */
        ToldOut: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description The phone that they went in with. */
            device: string;
            /** @description Who is said to be out. */
            person: string;
            /** @description What was seen. */
            why?: string;
            /** @description Who saw it; none when it was said in the person's own name from another phone. */
            witness?: string | null;
        };
        /** @description Somebody for whom another phone has said OUT. */
        ToldOutCard: components["schemas"]["ToldOut"] & {
            /** @description The visit, for the presses about it. */
            visit: string;
        };
        /** @description The answer. */
        ToldPage: components["schemas"]["Text"] & {
            /** @description What was asked. */
            asked: components["schemas"]["WhoTold"];
            /** @description The calls to this machine at these marks, and how each travelled. */
            calls: components["schemas"]["CallHistory"][];
            /** @description The day. */
            day: string;
            /** @description Tapes to them within reach. */
            edges: components["schemas"]["EdgeTaped"][];
            /** @description What the log does not say. */
            gaps: components["schemas"]["Gap"][];
            /** @description What stands behind the laser of these calls. */
            lasers: components["schemas"]["LaserProof"][];
            /** @description Lines that nobody may cross, within 15 ft. */
            lines: components["schemas"]["NearLine"][];
            /** @description Marks within reach, the nearest first, with who laid them. */
            marks: components["schemas"]["NearMark"][];
            /** @description Notes, photos and queries of these marks, whenever on the day, and amendments of what stands on this page, whenever made. */
            papers: components["schemas"]["Sentence"][];
            /** @description Photos of these marks that have come, of whatever day. */
            photos: components["schemas"]["PhotoCard"][];
            /** @description What the operator pressed, and what was said to this machine: looks, can't, stops. */
            presses: components["schemas"]["Sentence"][];
            /** @description Readings there by anyone: taken, asked about, late. */
            readings: components["schemas"]["Sentence"][];
            /** @description The job. */
            site: string;
            /** @description The targets there. */
            targets: components["schemas"]["NearTarget"][];
            /** @description How near counts. */
            within: components["schemas"]["Length"];
        };
        /** @description How far the ground may stand from its target; both ways at or above zero. */
        Tolerance: {
            /** @description Allowed high. */
            high: components["schemas"]["Length"];
            /** @description Allowed low, as a positive length. */
            low: components["schemas"]["Length"];
        };
        /**
         * @description A screen's subject.
         * @enum {string}
         */
        TopicWord: "operator" | "ground" | "supervisor" | "sheet" | "visitor";
        /** @description What a revision touches. */
        Touched: {
            /** @description Marks whose grade or tolerance changes. */
            marks: components["schemas"]["TouchedMark"][];
            /** @description The most that a dig-to changes. */
            most: components["schemas"]["Length"];
            /** @description Targets whose grade, layers or tolerance change, also those that no mark stands on. */
            targets?: components["schemas"]["TouchedTarget"][];
        };
        /** @description A mark that a revision touches. */
        TouchedMark: {
            /**
             * Format: int64
             * @description The reading by which it was accepted.
             */
            accepted?: number | null;
            /** @description Near a step, both dig-tos now. */
            are_at_step?: components["schemas"]["Length"][] | null;
            /**
             * Format: int64
             * @description The live call at it, which is withdrawn.
             */
            call?: number | null;
            /** @description Which. */
            mark: string;
            now?: components["schemas"]["Length"] | null;
            /** @description Whether that reading would still be in; none when the mark was not accepted. */
            still_in?: boolean | null;
            was?: components["schemas"]["Length"] | null;
            /** @description Near a step, both dig-tos before. */
            were_at_step?: components["schemas"]["Length"][] | null;
        };
        /** @description A target that a revision touches. */
        TouchedTarget: {
            layers_are?: components["schemas"]["Length"] | null;
            layers_were?: components["schemas"]["Length"] | null;
            /** @description Its surface itself, its reach, what is dug deeper in it or its tolerance changes too. */
            more?: boolean;
            /** @description Which. */
            target: string;
        };
        /** @description What a truck takes. */
        Truck: {
            /**
             * Format: double
             * @description Loose cubic yards to the brim.
             */
            cubic_yards: number;
            /**
             * Format: double
             * @description What it may weigh with, in tons; none when nobody has said.
             */
            tons?: number | null;
        };
        /**
         * @description Which way an arc turns, looking up-station.
         * @enum {string}
         */
        Turn: "left" | "right";
        /** @description One set-up of the line, as it was read. */
        TurnRead: {
            /** @description The rod on the point behind, as typed. */
            backsight: string;
            /** @description The rod on the point ahead, as typed. */
            foresight: string;
            /** @description The point ahead; the last one is the benchmark that the line closes on. */
            point: string;
        };
        /** @description A machine came to stand under faces that were left, or nobody knows any more where it stands. */
        UnderLeftFace: {
            /** @description The machine. */
            machine: string;
            /** @description The faces. */
            zones: string[];
        };
        /** @description A zone dug deeper: after the fill the target stands again. */
        Undercut: {
            /** @description Below the dig-to of the drawing. */
            depth: components["schemas"]["Length"];
            /**
             * Format: int32
             * @description In how many lifts; 0 when nobody has said.
             */
            lifts?: number;
            /** @description What fills it again; a reading can be judged against its top by this name. */
            material: string;
            /** @description What the crew calls it. */
            name: string;
            /** @description Its corners, in order. */
            within: components["schemas"]["Point"][];
        };
        /** @description An undercut that waits for a supervisor. */
        UndercutCard: {
            /**
             * Format: double
             * @description Its volume, in cubic yards.
             */
            cy: number;
            /** @description How deep. */
            depth: components["schemas"]["Length"];
            /**
             * Format: int32
             * @description In how many lifts.
             */
            lifts: number;
            /** @description The mark whose test failed. */
            mark: string;
            /** @description What fills it. */
            material: string;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description The target. */
            target: string;
            /**
             * Format: int64
             * @description The proposal's entry.
             */
            undercut: number;
        };
        /** @description A proposed undercut is in force. */
        UndercutConfirmed: {
            /** @description The target. */
            target: string;
            /**
             * Format: int64
             * @description The proposal's entry.
             */
            undercut: number;
        };
        /** @description An undercut waits for a supervisor. */
        UndercutProposed: {
            /** @description The mark of the test that failed. */
            mark: string;
            /** @description The target that it changes. */
            target: string;
            /** @description Where, how deep, filled with what. */
            undercut: components["schemas"]["Undercut"];
            /**
             * Format: double
             * @description Its volume, in cubic feet.
             */
            volume_cf: number;
        };
        /** @description A page's change that a file would undo. */
        Undone: {
            /** @description When the page changed it. */
            at: components["schemas"]["Time"];
            /** @description As the file has it; none when the file does not have it. */
            becomes?: string | null;
            /** @description Who changed it there. */
            by: string;
            /** @description As the page left it; none when the page took it out. */
            was?: string | null;
            /** @description What: `targets EAST grade shape elevation`. */
            what: string;
            /** @description Why. */
            why: string;
        };
        /**
         * @description A stop that a hub took that can't keep its log: it stands on the screens until the hub is started again, and then comes anew
         *     from the phone that pressed it.
         */
        UnkeptStop: {
            /** @description Who pressed. */
            by: string;
            /** @description The machine that it is for; every one when none is named. */
            machine?: string | null;
            /** @description Since when. */
            since: components["schemas"]["Time"];
            /** @description Why; may be empty. */
            why: string;
        };
        /** @description What waited on a phone was thrown away there; it was never shown to anybody. */
        UnsentDropped: {
            /** @description Its kind. */
            what: string;
            /** @description What was typed. */
            words: string;
        };
        /**
         * @description What happens when two shots leave the high side unsettled.
         * @enum {string}
         */
        UnsettledHigh: "trim" | "ask_supervisor";
        /** @description Work on one benchmark, each call labelled so. */
        UseOneBenchmark: {
            /** @description Which set-up. */
            set_up: string;
        };
        /** @description A buried line as it was marked. */
        Utility: {
            /** @description Whom to call. */
            call?: string;
            /** @description Its name. */
            id: string;
            /** @description What runs in it. */
            kind: components["schemas"]["UtilityKind"];
            /** @description How it was marked. */
            marked?: components["schemas"]["Marked"];
            /** @description Its outside diameter; nothing when nobody knows. */
            outside?: components["schemas"]["Length"];
            /** @description Its places, as marked. */
            points: components["schemas"]["Point"][];
            /** @description To each side of it the machine gives way to the shovel. */
            zone: components["schemas"]["Length"];
        };
        /** @description A buried line. */
        UtilityCard: {
            paint_gone?: components["schemas"]["Time"] | null;
            /** @description Where it was bared. */
            potholes: components["schemas"]["Pothole"][];
            /** @description The line. */
            utility: components["schemas"]["Utility"];
        };
        /**
         * @description What runs in a buried line. The paint's hues are not used: a word says it.
         * @enum {string}
         */
        UtilityKind: "gas" | "electric" | "communication" | "water" | "reclaimed" | "sewer" | "unknown";
        /**
         * @description What the readings say of the ground.
         * @enum {string}
         */
        Verdict: "high" | "on" | "low" | "too_close_high" | "too_close_low";
        /** @description A visitor says that they are on site, or off it. */
        Visit: {
            /** @description On site; else off. */
            on_site: boolean;
            /** @description Who, when somebody else has seen it: a visitor whose phone is gone. */
            person?: string | null;
        };
        /** @description A machine that needs somebody. */
        VisitCard: {
            look?: components["schemas"]["Time"] | null;
            /** @description The machine. */
            machine: string;
            /** @description The mark that it digs at. */
            mark?: string | null;
            waits_since?: components["schemas"]["Time"] | null;
        };
        /** @description A visitor. */
        VisitorCard: {
            here?: components["schemas"]["Time"] | null;
            /** @description Their phone is in today. */
            joined: boolean;
            left?: components["schemas"]["Time"] | null;
            /** @description Who. */
            person: string;
            /** @description The targets that they are shown. */
            shown: string[];
        };
        /** @description What proves a laser set-up. */
        VisitorLaser: {
            /** @description It was taken down. */
            closed: boolean;
            good_at?: components["schemas"]["Time"] | null;
            /** @description The laser. */
            laser: string;
            last_check?: components["schemas"]["CheckCard"] | null;
            /** @description The set-up. */
            set_up: string;
            /** @description Whether it was proven, or is in doubt. */
            state: components["schemas"]["SetUpState"];
        };
        /** @description A visitor is on site, or off it. */
        VisitorNoticed: {
            /** @description On site; else off. */
            on_site: boolean;
            /** @description Who. */
            person: string;
            /** @description Who has seen it, when the visitor has not said it. */
            witness?: string | null;
        };
        /** @description A run with what proves it. */
        VisitorRun: {
            coverage?: components["schemas"]["RunCoverage"] | null;
            /** @description Its line as it is drawn; none when it has no line. */
            drawn: components["schemas"]["DrawnTarget"][];
            /** @description The lasers that its readings rest on. */
            lasers: components["schemas"]["VisitorLaser"][];
            /** @description Its marks. */
            marks: components["schemas"]["SheetMark"][];
            /** @description Photos of its marks that have come. */
            photos: components["schemas"]["PhotoCard"][];
            /** @description Marks whose last reading is on grade and whose laser was found good afterwards. */
            proven: string[];
            /** @description The last reading on each mark that has one. */
            shots: components["schemas"]["MarkCard"][];
            /** @description The target. */
            target: components["schemas"]["SiteTarget"];
            /** @description Soil tests at its marks. */
            tests: components["schemas"]["TestCard"][];
        };
        /** @description What a visitor's page shows. */
        VisitorView: {
            closed?: components["schemas"]["Time"] | null;
            /** @description The day. */
            day: string;
            /** @description Faces that were left: nobody under them. */
            faces_left?: components["schemas"]["FaceStrip"][];
            here?: components["schemas"]["Time"] | null;
            /** @description The inspections that they made. */
            inspections: components["schemas"]["InspectedCard"][];
            /** @description The runs that were chosen for them. */
            runs: components["schemas"]["VisitorRun"][];
            /** @description The job. */
            site: string;
            stop?: components["schemas"]["StopCard"] | null;
            /** @description Lines that were struck or met. */
            struck: components["schemas"]["StruckCard"][];
        };
        /** @description Something that somebody said. */
        Voice: {
            /** @description When. */
            at: components["schemas"]["Time"];
            /** @description Who. */
            by: string;
            /** @description What; may be empty. */
            words: string;
        };
        /** @description Why an inspection does not count any more. */
        VoidCard: components["schemas"]["Text"] & {
            /** @description Since when. */
            at: components["schemas"]["Time"];
            /** @description Where. */
            mark: string;
        };
        /** @description Why something does not count any more. */
        VoidCause: {
            /** @description Now − when it was looked at: positive is higher. */
            by: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "moved";
        } | {
            /** @enum {string} */
            kind: "revised";
            /** @description Which. */
            target: string;
        } | {
            /** @enum {string} */
            kind: "laser";
            /** @description The set-up. */
            set_up: string;
        } | {
            /** @enum {string} */
            kind: "rain";
        } | {
            /** @enum {string} */
            kind: "water";
        } | {
            /** @enum {string} */
            kind: "slough";
            /** @description Which. */
            zone: string;
        } | {
            /** @enum {string} */
            kind: "said";
            /** @description What. */
            why: string;
        };
        /** @description Somebody voids a test: rain, a slough, a doubt. */
        VoidTest: {
            /**
             * Format: int64
             * @description The test's entry.
             */
            test: number;
            /** @description Why. */
            why: string;
        };
        /**
         * @description What for.
         * @enum {string}
         */
        WaitCause: "truck" | "attachment" | "broken" | "parked" | "other";
        /** @description A machine waits. */
        WaitingSaid: {
            /** @description What for. */
            cause: components["schemas"]["WaitCause"];
            /** @description Which. */
            machine: string;
        };
        /** @description Where water stands, as it was said. */
        WaterAt: {
            /** @enum {string} */
            kind: "face";
            /** @description Which. */
            zone: string;
        } | {
            /** @enum {string} */
            kind: "mark";
            /** @description Which. */
            mark: string;
        } | {
            /** @enum {string} */
            kind: "cab";
            /** @description Which machine. */
            machine: string;
        };
        /** @description Water that stands. It outlives the day: water does. */
        WaterNow: {
            /** @description Where. */
            at: components["schemas"]["WaterAt"];
            /** @description Who said the newest word. */
            by: string;
            /** @description Since when, by the first word. */
            since: components["schemas"]["Time"];
            /**
             * Format: int64
             * @description The newest word that it stands there: what PUMPED OUT names.
             */
            water: number;
        };
        /** @description Water was pumped out. */
        WaterPumped: {
            /** @description Where. */
            at: components["schemas"]["WaterAt"];
            /** @description The faces and trenches that owe an inspection because of it. */
            faces?: string[];
            /** @description The marks whose ground is taken to have stood in it. */
            marks?: string[];
            /**
             * Format: int64
             * @description The word that it stood there which this one answers.
             */
            water: number;
        };
        /**
         * @description Which way.
         * @enum {string}
         */
        Way: "out" | "in";
        /** @description One machine's keep-out. */
        WayInCard: {
            down?: components["schemas"]["Down"] | null;
            /** @description Who asks, was answered, or is in: longest first. Nobody here does not mean that nobody is there. */
            people: components["schemas"]["EntryCard"][];
            /** @description What the cab has to show; anything but `working` is STOP. */
            phase: components["schemas"]["Phase"];
            /** @description For whom another phone has said OUT, until their own page has shown it to them. */
            told_out?: components["schemas"]["ToldOutCard"][];
        };
        /** @description Where the rod stands when it stands on no mark. */
        Where: {
            /** @enum {string} */
            kind: "station";
            /** @description Positive to the right looking up-station. */
            offset: components["schemas"]["Length"];
            /** @description Along its line. */
            station: components["schemas"]["Length"];
            /** @description The target. */
            target: string;
        } | {
            /** @description One mark. */
            first: string;
            /** @description The level distance from it. */
            first_tape: components["schemas"]["Length"];
            /** @enum {string} */
            kind: "ties";
            /** @description Another mark. */
            second: string;
            /** @description The level distance from it. */
            second_tape: components["schemas"]["Length"];
            /** @description Which of the two places, standing at the first mark and looking toward the second. */
            side: components["schemas"]["Side"];
            /** @description What it is judged against; the first mark's target when none. */
            target?: string | null;
        } | {
            /** @description From this mark. */
            from: string;
            /** @enum {string} */
            kind: "paced";
            /**
             * Format: int32
             * @description Of so many for the whole way.
             */
            of: number;
            /**
             * Format: int32
             * @description So many paces.
             */
            paces: number;
            /** @description What it is judged against; the first mark's target when none. */
            target?: string | null;
            /** @description Toward this one. */
            to: string;
        };
        /** @description Who holds a phone that stayed in. */
        WhoSaid: {
            /** @description Which. */
            device: string;
            /** @description The machine whose screen it is again. */
            machine?: string | null;
            /** @description Who was asked for. */
            person: string;
            /** @description It is that person; else the phone is out. */
            same: boolean;
        };
        /** @description The question. */
        WhoTold: {
            /** @description From when. */
            from: components["schemas"]["Time"];
            /** @description The machine. */
            machine: string;
            /** @description The place. */
            near: components["schemas"]["Point"];
            /** @description Until when. */
            to: components["schemas"]["Time"];
        };
        /**
         * @description Why the hub closes a socket.
         * @enum {string}
         */
        Why: "removed" | "retired" | "closing" | "day_over" | "ask_who";
        /** @description The code that joins the Wi-Fi. */
        WifiCode: {
            /** @description The network's name. */
            ssid: string;
            /** @description Its drawing. */
            svg: string;
        };
        /** @description Whoever asked is not coming in on this visit. */
        WithdrawAsk: {
            /** @description The machine. */
            machine: string;
            /** @description The visit. */
            visit: string;
        };
        /** @description A call is taken back. */
        WithdrawCall: {
            /**
             * Format: int64
             * @description Which.
             */
            call: number;
        };
        /** @description A machine works again. */
        WorkAgain: {
            /** @description Which; the operator's own when left out. */
            machine?: string | null;
        };
        /** @description A machine works again. */
        WorkedAgain: {
            /** @description Which. */
            machine: string;
        };
        /** @description What a change would do, before anybody says it. */
        WouldChange: {
            /** @description What would change. */
            differences: components["schemas"]["SiteDifference"][];
            /** @description Where the lines of targets among it run, and what to dig to along them. */
            drawn: components["schemas"]["DrawnTarget"][];
            /** @description What is wrong or odd about the site then and is not so now. */
            faults: components["schemas"]["SiteFault"][];
            /** @description What would be put, with what follows from it. */
            put: components["schemas"]["SiteThing"][];
            /** @description The digest of the differences, to be sent with the change. */
            seen: string;
            /** @description The marks, calls and acceptances that it would touch. */
            touches: components["schemas"]["Touched"];
        };
        /** @description A reading was wrong, whatever the right one is. */
        WrongNumber: {
            /**
             * Format: int64
             * @description The entry of the reading.
             */
            reading: number;
        };
        /**
         * @description Which part of a machine's keep-out a place lies in: the innermost counts.
         *
         *     The blind side (right and behind the cab, common practice) turns with the house, at every bucket anew: whichever way somebody
         *     said that it faces is old at the next swing. So no part is the blind side, and reach and margin count as it altogether.
         * @enum {string}
         */
        Zone: "pinch" | "tail" | "reach" | "margin";
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    choose_address: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Chosen"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Codes"];
                };
            };
            /** @description The laptop has no such address */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    day_codes: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Codes"];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    compute: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Sum"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SumDone"];
                };
            };
            /** @description What is wrong with which input */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many at once */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    open_next_day: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The day is open, with a cookie for it */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description This day is not closed yet */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    day_names: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": string[];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    whole_log: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/jsonl": string;
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    import_preview: {
        parameters: {
            query?: {
                /** @description The surface to read, when the file has several. */
                surface?: string;
                /** @description What it counts in, when it does not say. */
                unit?: components["schemas"]["PlanUnit"];
                /** @description Its coordinates are the plan's, not the site's. */
                on_plan?: boolean;
                /** @description What the file is called, so that a target's surface can come from it. */
                name?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "text/plain": string;
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportPreview"];
                };
            };
            /** @description Not a text, or too large */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not a supervisor */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many at once: send it again */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    come_in: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Joining"];
            };
        };
        responses: {
            /** @description In, with a cookie */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            /** @description The code is void */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many wrong codes */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    invitation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The code */
                code: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Invitation"];
                };
            };
            /** @description The code is void */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many wrong codes */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    live: {
        parameters: {
            query?: {
                /** @description The script that it runs, by its path. One that this hub does not name, or none, gets whole views. */
                page?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Speaks FromHub and hears FromPhone from now on */
            101: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FromHub"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Another site's page */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    log_page: {
        parameters: {
            query?: {
                /** @description Only entries behind this one. */
                after?: number;
                /** @description Only entries before this one, newest first; 0 for the newest of all. */
                before?: number;
                /** @description How many lines; 200 when left out, 1000 at most. */
                limit?: number;
                /** @description Only about this mark. */
                mark?: string;
                /** @description Only by this person. */
                person?: string;
                /** @description Only about this machine. */
                machine?: string;
                /** @description Only of this kind. */
                kind?: string;
                /** @description Only made from this moment on, in milliseconds since 1970. */
                from?: number;
                /** @description Only made up to this moment. */
                to?: number;
                /** @description Only of this day. */
                day?: string;
                /** @description Only readings and calls with this verdict. */
                verdict?: components["schemas"]["Verdict"];
                /** @description Only with all of these words, in either language; capitals and accents do not matter. */
                words?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LogPage"];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    log_table: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    log_entry: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The entry's number */
                seq: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LogEntry"];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    who_am_i: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    document: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": string;
                };
            };
        };
    };
    bring_photo: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The phone's name for it, as promised */
                photo: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "image/jpeg": number[];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Answer"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description A visitor */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description It came too slowly: send it again */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not promised, or other bytes than those that were promised */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too large */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No JPEG picture */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not whole, too many dots, or it carries more than the picture */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many at once: send it again */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Busy or halted: send it again */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description The disk is all but full: send it again later */
            507: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    photo_file: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description SHA-256 of its bytes, in lower-case hex */
                sha256: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": number[];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description The log names no such photo, or not for this visitor */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Its file is missing or was touched */
            410: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    pocket_sheet: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PocketSheets"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No day is open, or the hub is closing */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    replay: {
        parameters: {
            query?: {
                /** @description The day; the newest when left out. */
                day?: string;
                /** @description After this entry. */
                seq?: number;
                /** @description Or at this moment, in milliseconds since 1970; the end of the day when neither is given. */
                at?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Moment"];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No such day or entry */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    who_told_sheet: {
        parameters: {
            query: {
                /** @description The machine. */
                machine: string;
                /** @description East, in tenth-micrometres. */
                x: number;
                /** @description North, in tenth-micrometres. */
                y: number;
                /** @description From when, in milliseconds since 1970; it may be days before `to`. */
                from: number;
                /** @description Until when. */
                to: number;
                /** @description The sheet's language; English when left out. */
                language?: components["schemas"]["Language"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    report_sheet: {
        parameters: {
            query?: {
                /** @description The day; the newest when left out. */
                day?: string;
                /** @description The language; English when left out. */
                language?: components["schemas"]["Language"];
            };
            header?: never;
            path: {
                /** @description Which sheet */
                kind: "day" | "as-built" | "hand-over" | "cab-card" | "hand-signals";
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No such day or sheet */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    review_of_day: {
        parameters: {
            query?: {
                /** @description Its name; the newest when left out. */
                day?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReviewView"];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No such day */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    take_saying: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Saying"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Answer"];
                };
            };
            /** @description Malformed */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Refused, with what to do instead */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too large */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many at once: send it again */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Busy or halted: send it again */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    site_change: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SiteSaying"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Answer"];
                };
            };
            /** @description Malformed, or a field that can't be read */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not a supervisor */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Refused, with what to do instead */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too large */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many at once: send it again */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Busy or halted: send it again */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    site_draft: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SiteDraft"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteDrafted"];
                };
            };
            /** @description Malformed */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not a supervisor */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Refused, with what to do instead */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too large */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many at once: send it again */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No site, or the hub is closing */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    site_export_file: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The file's name */
                name: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/plain": string;
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not a supervisor */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No such file */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No site, or the hub is closing */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    site_form: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteSheet"];
                };
            };
            /** @description Not in */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description Not a supervisor */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No site, or the hub is closing */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    day_table: {
        parameters: {
            query?: {
                /** @description Its name; the newest when left out. */
                day?: string;
            };
            header?: never;
            path: {
                /** @description The name of its file */
                name: components["schemas"]["Table"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description No such day or table */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    try_restore: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Restored"];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            /** @description What did not come back */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    who_told: {
        parameters: {
            query: {
                /** @description The machine. */
                machine: string;
                /** @description East, in tenth-micrometres. */
                x: number;
                /** @description North, in tenth-micrometres. */
                y: number;
                /** @description From when, in milliseconds since 1970; it may be days before `to`. */
                from: number;
                /** @description Until when. */
                to: number;
                /** @description The sheet's language; English when left out. */
                language?: components["schemas"]["Language"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ToldDays"];
                };
            };
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Problem"];
                };
            };
        };
    };
    healthz: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
            /** @description Nothing is kept any more: start the hub again */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
        };
    };
}
