/* Generated from the api by tests/apps/web/client-types.test.ts; update with -u. */
export interface paths {
    "/api/campuses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the campuses, newest first */
        get: operations["CampusesController_list"];
        put?: never;
        /** Add a campus from a campus file */
        post: operations["CampusesController_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Read the newest or a named version of a campus */
        get: operations["CampusesController_read"];
        /** Save the next version of a campus */
        put: operations["CampusesController_replace"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/plans/{id}/decisions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Record what was decided on a plan: who, why, and who disagreed */
        post: operations["DecisionsController_record"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/decisions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the decisions taken on plans of a campus, newest first */
        get: operations["DecisionsController_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/plans/{id}/explanations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the questions asked of a plan, newest first */
        get: operations["ExplanationsController_list"];
        put?: never;
        /** Ask a question of a plan; a worker answers it by planning again */
        post: operations["ExplanationsController_ask"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/explanations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the questions asked of a campus itself, newest first */
        get: operations["ExplanationsController_listOfCampus"];
        put?: never;
        /** Ask a question of the newest version of a campus, which need not have a plan */
        post: operations["ExplanationsController_askCampus"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/explanations/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Read a question with its progress, and its answer once there is one */
        get: operations["ExplanationsController_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/defaults": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the planning defaults, each with its source */
        get: operations["DefaultsController_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/defaults": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the planning defaults with what a campus measured instead */
        get: operations["DefaultsController_ofCampus"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/plans/{id}/documents": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the documents of a plan */
        get: operations["DocumentsController_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/plans/{id}/documents/{fileName}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Write a document of a plan, as a draft */
        get: operations["DocumentsController_write"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/sites/{site}/estimate": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Estimate a site, every number open to its inputs */
        get: operations["EstimatesController_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/exports/{format}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Write a campus, or a plan of it, for other programs */
        get: operations["ExportsController_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/health": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Tell whether the api and its store answer */
        get: operations["HealthController_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/imports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Show what a file would change in a campus; nothing is saved */
        post: operations["ImportsController_preview"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/imports/{token}/apply": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Save an import: the same file again, all of it or nothing */
        post: operations["ImportsController_apply"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/plans": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the plans of a campus, newest first */
        get: operations["PlansController_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/plans/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Read a plan with its plan file */
        get: operations["PlansController_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/plans/{id}/overview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Read what the page shows of a plan */
        get: operations["PlansController_overview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/plans/{id}/verify": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Recompute a plan from its campus file alone */
        post: operations["PlansController_verify"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/sites/{site}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /** Add, change or take out one site, keeping changes of others */
        put: operations["SitesController_change"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/sites/{site}/check": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Judge a site as it would stand in the campus; nothing is saved */
        post: operations["SitesController_check"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/sites/{site}/hand-placements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /** Fix a site to a year by hand, or bar it from years */
        put: operations["SitesController_place"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/solves": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List the solves of a campus, newest first */
        get: operations["SolvesController_list"];
        put?: never;
        /** Queue a solve of a campus */
        post: operations["SolvesController_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/solves/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Read the state and progress of a solve */
        get: operations["SolvesController_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/solves/{id}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Cancel a solve; a running one ends with its best plan so far */
        post: operations["SolvesController_cancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/solves/{id}/events": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Follow a solve: an event `solve` at each change, until its final state */
        get: operations["SolvesController_events"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/campuses/{id}/suitability": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** List how all candidates are suited, with ranks under uncertain weights */
        get: operations["SuitabilityController_list"];
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
        CampusList: {
            campuses: components["schemas"]["CampusSummary"][];
        };
        CampusSummary: {
            /** Format: uuid */
            id: string;
            name: string;
            /** @description Newest version; also the ETag, in quotes */
            version: number;
            /**
             * Format: date-time
             * @description UTC
             */
            savedAt: string;
        };
        CampusFile: {
            $schema?: string;
            /** @enum {string} */
            format: "campus-plan/campus";
            /** @enum {number} */
            formatVersion: 1;
            /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
            id: string;
            name: string;
            /** @description Name of the landscape program. */
            program: string;
            /** @description The day the data was last confirmed. */
            dataDate: string & (string);
            calendar: {
                /** @description Month, 1 (January) to 12 (December). */
                fiscalYearStartMonth: number;
                /** @description Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028. */
                firstYear: string;
                /** @description Fiscal years in which sites may be built. */
                horizonYears: number;
                /** @description The day from which lead times count. */
                planningDate: string & (string);
                /** @description The fiscal year whose prices this file states. */
                priceYear: string;
                /** @description In the order in which they open within a fiscal year; they partition the year. */
                seasons: {
                    /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                    id: string;
                    /** @description In calendar order of the season: 12, 1, 2. */
                    months: number[];
                }[];
                /** @description Season in which a site is sheet mulched. */
                prepareSeason: string;
                /** @description Season in which a site is planted. */
                plantSeason: string;
                /** @description Days in which classes are in session. */
                terms: {
                    name: string;
                    /** @description ISO date, for example 2027-09-15. */
                    starts: string & (string);
                    /** @description ISO date, for example 2027-09-15. */
                    ends: string & (string);
                }[];
            };
            zones: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                boundary?: {
                    /** @enum {string} */
                    type: "Polygon";
                    coordinates: (number)[][][];
                };
            }[];
            candidateSites: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                zone: string;
                boundary: {
                    /** @enum {string} */
                    type: "Polygon";
                    coordinates: (number)[][][];
                };
                /** @description Stated area. Planning uses the drawn area where they disagree. */
                areaSqFt: number;
                /** @description True: the stated area was confirmed and holds against the drawn one. */
                areaConfirmed?: boolean;
                facts: {
                    cover: string | "unknown";
                    soil: string | "unknown";
                    ph: number | "unknown";
                    organicMatterPercent: number | "unknown";
                    /** @description Total lead, mg/kg: a screening result, not a clearance. */
                    leadMgPerKg: number | "unknown";
                    slopePercent: number | "unknown";
                    /** @description Mean daily hours of sun from 1 May to 15 September. */
                    sunHours: number | "unknown";
                    walkersPerDay: number | "unknown";
                    waterFeet: number | "unknown";
                    kitchenFeet: number | "unknown";
                    truckAccess: boolean | "unknown";
                    /** @description Share within root protection areas. */
                    rootProtectedShare: number | "unknown";
                };
                gates: {
                    /** @enum {string} */
                    kind: "contamination" | "utilities" | "construction" | "root-protection" | "slope" | "access" | "heritage" | "flood-or-wetland" | "fire-lane" | "structure" | "accessibility";
                    /** @enum {string} */
                    status: "pass" | "fail" | "unknown";
                    /** @description What was found, or what is not known. */
                    note: string;
                    /** @description Build types that it bars while it is not passed. */
                    bars: "all" | "edible" | string[];
                    /** @description What would clear it, and who decides. */
                    clearedBy: string;
                    /** @description For an unknown gate: the first fiscal year for which the campus plans on a pass. */
                    plannedClearFrom?: string;
                }[];
                evidence: {
                    fact: string;
                    value: string;
                    method: string;
                    observer: string;
                    /** @description ISO date, for example 2027-09-15. */
                    date: string & (string);
                    /** @description ISO date, for example 2027-09-15. */
                    expires?: string & (string);
                }[];
                /** @description All trees whose roots may reach into the site; an empty list: there are none. */
                trees?: {
                    name: string;
                    /** @description Longitude and latitude in degrees. */
                    position: (number)[];
                    /** @description Trunk diameter at 4.5 ft, inches. */
                    trunkInches: number;
                }[];
                survey?: {
                    /** @description Narrowest width on the way of a truck, feet. */
                    truckWidthFeet?: number | "unknown";
                    /** @description Vaults and cellars under that way bear a loaded truck. */
                    groundBearsTruck?: boolean | "unknown";
                    /** @description An arborist has seen the design and agreed. */
                    arboristAgreed?: boolean | "unknown";
                    /** @description Lines in records or found by the locator; an empty list: none was found. */
                    utilityLines?: {
                        kind: string;
                        owner: string;
                        /** @description Depth of cover, inches. */
                        depthInches: number | "unknown";
                    }[] | "unknown";
                    /** @description Marks are on the ground, with a ticket in force. */
                    marksInForce?: boolean | "unknown";
                    /** @description Deepest disturbance of the work, inches; 0 where nothing is dug. */
                    digInches?: number | "unknown";
                    /** @description The accessible route to and through the site. */
                    route?: {
                        /** @description Clear width, inches. */
                        clearWidthInches?: number | "unknown";
                        /** @description Feet between places to pass; 0 where 60 in wide. */
                        passingEveryFeet?: number | "unknown";
                        /** @description Steepest running slope, percent. */
                        runningSlopePercent?: number | "unknown";
                        /** @description Steepest cross slope, percent. */
                        crossSlopePercent?: number | "unknown";
                        /** @description Firm and stable when tested. */
                        firmAndStable?: boolean | "unknown";
                    };
                };
                rainTank?: {
                    /** @description US gallons. */
                    gallons: number;
                    /** @description In it on the first day. */
                    openingGallons: number;
                    /** @description Square feet. */
                    roofSqFt: number;
                    /** @description Turned away of each day’s rain, inches. */
                    firstFlushInches: number;
                };
                /** @description Measured values that go before the planning defaults. */
                overrides?: {
                    /** @description Name of the default that it replaces, for example density.compost. */
                    coefficient: string;
                    value: number;
                    /** @description Unit of the value: that of the default, or its metric one. */
                    unit: string;
                    /** @description How it was found, and where that is on record. */
                    source: string;
                    /** @description ISO date, for example 2027-09-15. */
                    date: string & (string);
                }[];
                buildTypes: string[];
                /** @description First fiscal year in which it may be prepared. */
                earliest?: string;
                /** @description Last fiscal year in which it may be prepared. */
                latest?: string;
                /** @description Capital cost against the type's own; 1 is usual. */
                costFactor: number;
                /** @description It may be built in two halves. Left out: at once only. */
                phasing?: {
                    /** @description Most years between the two halves. */
                    mostYearsApart: number;
                };
                /** @description Later changes of the campus that may be made to it. Left out: none. */
                laterChanges?: string[];
                /**
                 * @description A build that sure works will end is accepted. Left out: it is not.
                 * @enum {boolean}
                 */
                temporary?: true;
                notes: string[];
            }[];
            existingSites: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                zone: string;
                boundary: {
                    /** @enum {string} */
                    type: "Polygon";
                    coordinates: (number)[][][];
                };
                /** @description Stated area. Planning uses the drawn area where they disagree. */
                areaSqFt: number;
                /** @description True: the stated area was confirmed and holds against the drawn one. */
                areaConfirmed?: boolean;
                facts: {
                    cover: string | "unknown";
                    soil: string | "unknown";
                    ph: number | "unknown";
                    organicMatterPercent: number | "unknown";
                    /** @description Total lead, mg/kg: a screening result, not a clearance. */
                    leadMgPerKg: number | "unknown";
                    slopePercent: number | "unknown";
                    /** @description Mean daily hours of sun from 1 May to 15 September. */
                    sunHours: number | "unknown";
                    walkersPerDay: number | "unknown";
                    waterFeet: number | "unknown";
                    kitchenFeet: number | "unknown";
                    truckAccess: boolean | "unknown";
                    /** @description Share within root protection areas. */
                    rootProtectedShare: number | "unknown";
                };
                gates: {
                    /** @enum {string} */
                    kind: "contamination" | "utilities" | "construction" | "root-protection" | "slope" | "access" | "heritage" | "flood-or-wetland" | "fire-lane" | "structure" | "accessibility";
                    /** @enum {string} */
                    status: "pass" | "fail" | "unknown";
                    /** @description What was found, or what is not known. */
                    note: string;
                    /** @description Build types that it bars while it is not passed. */
                    bars: "all" | "edible" | string[];
                    /** @description What would clear it, and who decides. */
                    clearedBy: string;
                    /** @description For an unknown gate: the first fiscal year for which the campus plans on a pass. */
                    plannedClearFrom?: string;
                }[];
                evidence: {
                    fact: string;
                    value: string;
                    method: string;
                    observer: string;
                    /** @description ISO date, for example 2027-09-15. */
                    date: string & (string);
                    /** @description ISO date, for example 2027-09-15. */
                    expires?: string & (string);
                }[];
                /** @description All trees whose roots may reach into the site; an empty list: there are none. */
                trees?: {
                    name: string;
                    /** @description Longitude and latitude in degrees. */
                    position: (number)[];
                    /** @description Trunk diameter at 4.5 ft, inches. */
                    trunkInches: number;
                }[];
                survey?: {
                    /** @description Narrowest width on the way of a truck, feet. */
                    truckWidthFeet?: number | "unknown";
                    /** @description Vaults and cellars under that way bear a loaded truck. */
                    groundBearsTruck?: boolean | "unknown";
                    /** @description An arborist has seen the design and agreed. */
                    arboristAgreed?: boolean | "unknown";
                    /** @description Lines in records or found by the locator; an empty list: none was found. */
                    utilityLines?: {
                        kind: string;
                        owner: string;
                        /** @description Depth of cover, inches. */
                        depthInches: number | "unknown";
                    }[] | "unknown";
                    /** @description Marks are on the ground, with a ticket in force. */
                    marksInForce?: boolean | "unknown";
                    /** @description Deepest disturbance of the work, inches; 0 where nothing is dug. */
                    digInches?: number | "unknown";
                    /** @description The accessible route to and through the site. */
                    route?: {
                        /** @description Clear width, inches. */
                        clearWidthInches?: number | "unknown";
                        /** @description Feet between places to pass; 0 where 60 in wide. */
                        passingEveryFeet?: number | "unknown";
                        /** @description Steepest running slope, percent. */
                        runningSlopePercent?: number | "unknown";
                        /** @description Steepest cross slope, percent. */
                        crossSlopePercent?: number | "unknown";
                        /** @description Firm and stable when tested. */
                        firmAndStable?: boolean | "unknown";
                    };
                };
                rainTank?: {
                    /** @description US gallons. */
                    gallons: number;
                    /** @description In it on the first day. */
                    openingGallons: number;
                    /** @description Square feet. */
                    roofSqFt: number;
                    /** @description Turned away of each day’s rain, inches. */
                    firstFlushInches: number;
                };
                /** @description Measured values that go before the planning defaults. */
                overrides?: {
                    /** @description Name of the default that it replaces, for example density.compost. */
                    coefficient: string;
                    value: number;
                    /** @description Unit of the value: that of the default, or its metric one. */
                    unit: string;
                    /** @description How it was found, and where that is on record. */
                    source: string;
                    /** @description ISO date, for example 2027-09-15. */
                    date: string & (string);
                }[];
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                buildType: string;
                /** @description Calendar year of the season in which it was planted. */
                plantedCalendarYear: number;
            }[];
            buildTypes: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @description Grows food in the ground: contamination gates apply. */
                edible: boolean;
                /** @description Shares of the site area; they add up to 1. */
                componentShares: {
                    /** @description Share, 0 to 1. */
                    "annual-bed": number;
                    /** @description Share, 0 to 1. */
                    "perennial-bed": number;
                    /** @description Share, 0 to 1. */
                    woody: number;
                    /** @description Share, 0 to 1. */
                    "rain-garden": number;
                    /** @description Share, 0 to 1. */
                    meadow: number;
                    /** @description Share, 0 to 1. */
                    path: number;
                };
                compostInches: {
                    /** @description Inches, loose depth. */
                    "annual-bed": number;
                    /** @description Inches, loose depth. */
                    "perennial-bed": number;
                    /** @description Inches, loose depth. */
                    woody: number;
                    /** @description Inches, loose depth. */
                    "rain-garden": number;
                    /** @description Inches, loose depth. */
                    meadow: number;
                    /** @description Inches, loose depth. */
                    path: number;
                };
                chipInches: {
                    /** @description Inches, loose depth. */
                    "annual-bed": number;
                    /** @description Inches, loose depth. */
                    "perennial-bed": number;
                    /** @description Inches, loose depth. */
                    woody: number;
                    /** @description Inches, loose depth. */
                    "rain-garden": number;
                    /** @description Inches, loose depth. */
                    meadow: number;
                    /** @description Inches, loose depth. */
                    path: number;
                };
                /** @description Hours as volunteers work, per 1,000 sf. */
                prepareHoursPer1000SqFt: number;
                /** @description Hours as volunteers work, per 1,000 sf. */
                plantHoursPer1000SqFt: number;
                /** @description Capital in the price year, contingency included, bought compost not. */
                costDollarsPerSqFt: number;
                provenance: {
                    /** @enum {string} */
                    basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                    source: string;
                };
            }[];
            care: {
                "annual-bed": {
                    /** @description Hours per 1,000 square feet. */
                    firstYearHoursPer1000SqFt: number;
                    /** @description Hours per 1,000 square feet. */
                    matureHoursPer1000SqFt: number;
                    /** @description Rate at which care falls to mature level. */
                    decayPerYear: number;
                    /** @description Share of the year's care by season; adds up to 1. */
                    seasonShares: {
                        [key: string]: number;
                    };
                    /** @description Harvest of a full crop; 0: not picked. */
                    harvestHoursPer1000SqFt: number;
                    /** @description Share of a full crop at age 1, 2, 3 ...; the last one holds from there on. */
                    bearing: number[];
                    /** @description Share of the harvest hours by season. */
                    harvestSeasonShares: {
                        [key: string]: number;
                    };
                    /** @description Supplies and renewal reserve, per year. */
                    suppliesDollarsPer1000SqFt: number;
                    /** @description Compost on established ground each year. */
                    topDressInches: number;
                    provenance: {
                        /** @enum {string} */
                        basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                        source: string;
                    };
                };
                "perennial-bed": {
                    /** @description Hours per 1,000 square feet. */
                    firstYearHoursPer1000SqFt: number;
                    /** @description Hours per 1,000 square feet. */
                    matureHoursPer1000SqFt: number;
                    /** @description Rate at which care falls to mature level. */
                    decayPerYear: number;
                    /** @description Share of the year's care by season; adds up to 1. */
                    seasonShares: {
                        [key: string]: number;
                    };
                    /** @description Harvest of a full crop; 0: not picked. */
                    harvestHoursPer1000SqFt: number;
                    /** @description Share of a full crop at age 1, 2, 3 ...; the last one holds from there on. */
                    bearing: number[];
                    /** @description Share of the harvest hours by season. */
                    harvestSeasonShares: {
                        [key: string]: number;
                    };
                    /** @description Supplies and renewal reserve, per year. */
                    suppliesDollarsPer1000SqFt: number;
                    /** @description Compost on established ground each year. */
                    topDressInches: number;
                    provenance: {
                        /** @enum {string} */
                        basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                        source: string;
                    };
                };
                woody: {
                    /** @description Hours per 1,000 square feet. */
                    firstYearHoursPer1000SqFt: number;
                    /** @description Hours per 1,000 square feet. */
                    matureHoursPer1000SqFt: number;
                    /** @description Rate at which care falls to mature level. */
                    decayPerYear: number;
                    /** @description Share of the year's care by season; adds up to 1. */
                    seasonShares: {
                        [key: string]: number;
                    };
                    /** @description Harvest of a full crop; 0: not picked. */
                    harvestHoursPer1000SqFt: number;
                    /** @description Share of a full crop at age 1, 2, 3 ...; the last one holds from there on. */
                    bearing: number[];
                    /** @description Share of the harvest hours by season. */
                    harvestSeasonShares: {
                        [key: string]: number;
                    };
                    /** @description Supplies and renewal reserve, per year. */
                    suppliesDollarsPer1000SqFt: number;
                    /** @description Compost on established ground each year. */
                    topDressInches: number;
                    provenance: {
                        /** @enum {string} */
                        basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                        source: string;
                    };
                };
                "rain-garden": {
                    /** @description Hours per 1,000 square feet. */
                    firstYearHoursPer1000SqFt: number;
                    /** @description Hours per 1,000 square feet. */
                    matureHoursPer1000SqFt: number;
                    /** @description Rate at which care falls to mature level. */
                    decayPerYear: number;
                    /** @description Share of the year's care by season; adds up to 1. */
                    seasonShares: {
                        [key: string]: number;
                    };
                    /** @description Harvest of a full crop; 0: not picked. */
                    harvestHoursPer1000SqFt: number;
                    /** @description Share of a full crop at age 1, 2, 3 ...; the last one holds from there on. */
                    bearing: number[];
                    /** @description Share of the harvest hours by season. */
                    harvestSeasonShares: {
                        [key: string]: number;
                    };
                    /** @description Supplies and renewal reserve, per year. */
                    suppliesDollarsPer1000SqFt: number;
                    /** @description Compost on established ground each year. */
                    topDressInches: number;
                    provenance: {
                        /** @enum {string} */
                        basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                        source: string;
                    };
                };
                meadow: {
                    /** @description Hours per 1,000 square feet. */
                    firstYearHoursPer1000SqFt: number;
                    /** @description Hours per 1,000 square feet. */
                    matureHoursPer1000SqFt: number;
                    /** @description Rate at which care falls to mature level. */
                    decayPerYear: number;
                    /** @description Share of the year's care by season; adds up to 1. */
                    seasonShares: {
                        [key: string]: number;
                    };
                    /** @description Harvest of a full crop; 0: not picked. */
                    harvestHoursPer1000SqFt: number;
                    /** @description Share of a full crop at age 1, 2, 3 ...; the last one holds from there on. */
                    bearing: number[];
                    /** @description Share of the harvest hours by season. */
                    harvestSeasonShares: {
                        [key: string]: number;
                    };
                    /** @description Supplies and renewal reserve, per year. */
                    suppliesDollarsPer1000SqFt: number;
                    /** @description Compost on established ground each year. */
                    topDressInches: number;
                    provenance: {
                        /** @enum {string} */
                        basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                        source: string;
                    };
                };
                path: {
                    /** @description Hours per 1,000 square feet. */
                    firstYearHoursPer1000SqFt: number;
                    /** @description Hours per 1,000 square feet. */
                    matureHoursPer1000SqFt: number;
                    /** @description Rate at which care falls to mature level. */
                    decayPerYear: number;
                    /** @description Share of the year's care by season; adds up to 1. */
                    seasonShares: {
                        [key: string]: number;
                    };
                    /** @description Harvest of a full crop; 0: not picked. */
                    harvestHoursPer1000SqFt: number;
                    /** @description Share of a full crop at age 1, 2, 3 ...; the last one holds from there on. */
                    bearing: number[];
                    /** @description Share of the harvest hours by season. */
                    harvestSeasonShares: {
                        [key: string]: number;
                    };
                    /** @description Supplies and renewal reserve, per year. */
                    suppliesDollarsPer1000SqFt: number;
                    /** @description Compost on established ground each year. */
                    topDressInches: number;
                    provenance: {
                        /** @enum {string} */
                        basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                        source: string;
                    };
                };
            };
            pools: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @enum {string} */
                kind: "staff" | "student" | "intern" | "course" | "loan" | "contractor";
                tasks: ("prepare" | "plant" | "care-food" | "care-other" | "harvest" | "supervise")[];
                hours: {
                    [key: string]: number;
                };
                /** @description First fiscal year in which the pool is there. */
                from?: string;
                /** @description Last fiscal year in which the pool is there. */
                to?: string;
                provenance: {
                    /** @enum {string} */
                    basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                    source: string;
                };
            }[];
            workDays: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                season: string;
                /** @description Most that may be held in the season of one year. */
                events: number;
                /** @description Sign-ups for one event. */
                signUps: number;
                /** @description Share of the sign-ups who come. */
                showRate: number;
                hoursLong: number;
                /** @description Share of an hour present that counts as an hour of work. */
                effectiveness: number;
                peoplePerLeader: number;
                tasks: ("prepare" | "plant" | "care-food" | "care-other" | "harvest" | "supervise")[];
                provenance: {
                    /** @enum {string} */
                    basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                    source: string;
                };
            }[];
            positions: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @enum {string} */
                term: "recurring" | "one-season";
                tasks: ("prepare" | "plant" | "care-food" | "care-other" | "harvest" | "supervise")[];
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                startSeason: string;
                /** @description Months from the ask to the first day. */
                leadMonths: number;
                /** @description Hours in a full year of service, by season. */
                hours: {
                    [key: string]: number;
                };
                /** @description Hours in the fiscal year of the start, by season. */
                firstYearHours: {
                    [key: string]: number;
                };
                /** @description Loaded cost of a full year in the price year. */
                annualDollars: number;
                /** @description Loaded cost of the fiscal year of the start. */
                firstYearDollars: number;
                /** @description Equipment bought once at the start. */
                oneTimeDollars: number;
                /** @description Most that may be held at one time. */
                most: number;
                provenance: {
                    /** @enum {string} */
                    basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                    source: string;
                };
            }[];
            funds: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @enum {string} */
                kind: "capital" | "operating" | "gift" | "student-fee" | "reunion-gift" | "grant" | "endowment-payout" | "reserve";
                /** @enum {string} */
                status: "received" | "pledged" | "hoped-for";
                /** @description Hoped-for money is shown and not planned on unless true. */
                counted: boolean;
                /** @description On hand as the first fiscal year opens, fees and care share already taken off. */
                openingBalanceDollars: number;
                /** @description Before fees. */
                inflows: {
                    /** @description Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028. */
                    year: string;
                    /** @description US dollars. */
                    amountDollars: number;
                }[];
                /** @description Before fees. */
                yearlyInflows?: {
                    /** @description Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028. */
                    from: string;
                    /** @description Left out: to the end of the plan and its tail. */
                    to?: string;
                    /** @description Left out: every year. */
                    everyYears?: number;
                    /** @description US dollars. */
                    amountDollars: number;
                    /** @description Per fiscal year. Left out: 0. */
                    growthPercent?: number;
                }[];
                /** @description Fiscal years after its own in which an inflow may still be spent; 0: it lapses. */
                carryYears: number | "unlimited";
                /** @description Last fiscal year in which any of it may be spent. */
                expires?: string;
                /** @description Taken off at receipt. */
                feePercent: number;
                /** @description After the fee, kept for care in a pot of its own. */
                careSharePercent: number;
                /** @description Left out: the care share never lapses. */
                careShareCarryYears?: number | "unlimited";
                restriction: {
                    lines: ("build" | "care" | "positions" | "compost" | "standing")[];
                    sites: "any" | string[];
                    buildTypes: "any" | string[];
                };
                /** @description Most that it pays for each dollar of other money. Left out: no matching grant. */
                matchRatio?: number;
                /** @description A grant that pays back what was spent on builds, up to its inflows, which carry the years of that spending. Left out: it pays itself. */
                reimbursement?: {
                    /** @description The fund that pays first and gets the money back. */
                    frontedBy: string;
                    /** @description Months from the end of the preparing season to the payback. */
                    lagMonths: number;
                };
                /** @description The closing balance never falls below this. */
                floorDollars: number;
                /** @description The gift that this money is of; two funds with one gift count it twice. */
                giftId?: string;
            }[];
            standingCosts: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @description In the price year. */
                annualDollars: number;
                /** @enum {string} */
                escalation: "construction" | "wages" | "supplies";
            }[];
            escalationPercent: {
                construction: number;
                wages: number;
                supplies: number;
            };
            /** @description Amounts that stand here itself are certified: tested, or with a heat log. They may go anywhere. */
            compost: {
                /** @description Matured production by season. */
                madeCubicYards: {
                    [key: string]: number;
                };
                /** @description Cubic yards. */
                openingStockCubicYards: number;
                /** @description Delivered, in the price year. */
                dollarsPerCubicYard: number;
                mostBoughtCubicYardsPerSeason: number;
                /** @description Most that the yard holds at the end of a season, both grades together. */
                yardCubicYards: number;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                topDressSeason: string;
                topDressFromAge: number;
                /** @description Compost from batches without a test or heat log: it never goes on ground of an edible build type. Left out: there is none. */
                otherGrade?: {
                    /** @description Matured production by season. */
                    madeCubicYards: {
                        [key: string]: number;
                    };
                    /** @description Cubic yards. */
                    openingStockCubicYards: number;
                    /** @description Delivered, in the price year. */
                    dollarsPerCubicYard: number;
                    mostBoughtCubicYardsPerSeason: number;
                };
            };
            /** @description Extra compost and chips ordered for losses. */
            materialWastePercent: number;
            construction: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                kind: string;
                sites: string[];
                /** @description Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028. */
                from: string;
                /** @description Last fiscal year of the works. */
                to: string;
                /** @description Percent, 0 to 100. */
                certaintyPercent: number;
                source: string;
            }[];
            /** @description Works at least this certain bar building outright. */
            hardAtCertaintyPercent: number;
            /** @description Years in which a site repays its capital. */
            paybackYears: number;
            precedence: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                before: string;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                after: string;
                yearsApart: number;
                reason: string;
            }[];
            exclusiveGroups: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                sites: string[];
                reason: string;
            }[];
            /** @description In order of rank. */
            commitments: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @enum {string} */
                strength: "binding" | "intended" | "aspiration";
                test: {
                    /** @enum {string} */
                    kind: "sites-each-year";
                    count: number;
                    /** @description Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028. */
                    from: string;
                    /** @description Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028. */
                    to: string;
                    /** @description Smallest area that counts as a site. */
                    countsFromSqFt: number;
                    /**
                     * @description A site that is returned to lawn still counts. Left out: it does not.
                     * @enum {boolean}
                     */
                    returnedCounts?: true;
                } | {
                    /** @enum {string} */
                    kind: "named-site";
                    /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                    site: string;
                    /** @description Prepared no later than this fiscal year. */
                    by: string;
                    buildTypes: "any" | string[];
                    /**
                     * @description A site that is returned to lawn still counts. Left out: it does not.
                     * @enum {boolean}
                     */
                    returnedCounts?: true;
                } | {
                    /** @enum {string} */
                    kind: "area";
                    /** @description Square feet. */
                    areaSqFt: number;
                    /** @description Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028. */
                    by: string;
                    /**
                     * @description A site that is returned to lawn still counts. Left out: it does not.
                     * @enum {boolean}
                     */
                    returnedCounts?: true;
                } | {
                    /** @enum {string} */
                    kind: "no-new-positions-before";
                    /** @description Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028. */
                    year: string;
                } | {
                    /** @enum {string} */
                    kind: "no-unserved-care";
                    classes: ("prepare" | "plant" | "care-food" | "care-other" | "harvest" | "supervise")[];
                    seasons: "all" | string[];
                } | {
                    /** @enum {string} */
                    kind: "only-build-types";
                    buildTypes: string[];
                } | {
                    /** @enum {string} */
                    kind: "zone-balance";
                    leastPerZone: number;
                    /**
                     * @description A site that is returned to lawn still counts. Left out: it does not.
                     * @enum {boolean}
                     */
                    returnedCounts?: true;
                };
                saidBy: string;
                saidTo: string;
                /** @description ISO date, for example 2027-09-15. */
                date: string & (string);
                /** @description Where it is written. A binding commitment must have one. */
                document: string;
                public: boolean;
                /** @description Benefit points of an aspiration kept in full. Left out: 0. */
                points?: number;
            }[];
            benefit: {
                criteria: {
                    /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                    id: string;
                    name: string;
                    /** @enum {string} */
                    measure: "walkers-per-day" | "food-area" | "habitat-area" | "rain-garden-area" | "converted-area" | "slope-mowing-removed" | "teaching" | "care-avoided";
                    /** @description Weights of all criteria add up to 100. */
                    weightPoints: number;
                    /** @description The measure that earns the whole weight. */
                    reference: number;
                    /** @description Measure used while the fact is unknown. */
                    whenUnknown: number;
                    provenance: {
                        /** @enum {string} */
                        basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                        source: string;
                    };
                }[];
                /** @description Yearly discount of benefit. */
                discountPercent: number;
                /** @description Positions of the campus beside the ready ones. */
                positions?: {
                    /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                    id: string;
                    name: string;
                    /** @description Points by criterion id. */
                    weightPoints: {
                        [key: string]: number;
                    };
                }[];
                /** @description The position that is planned for: an own one, teaching-first, kitchen-first or least-care. Left out: the weights of the criteria. */
                position?: string;
                /** @description Points lost for each $1,000 that works are expected to waste. Left out: 1. */
                strandedPointsPer1000Dollars?: number;
            };
            handPlacements: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                site: string;
                /** @enum {string} */
                kind: "fixed" | "forbidden";
                /** @description Left out on forbidden: no year at all. */
                year?: string;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                buildType?: string;
                reason: string;
            }[];
            /** @description Ways in which sites may be simplified or returned. Left out: none. */
            laterChanges?: {
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                id: string;
                name: string;
                /** @description Build type that it becomes. Left out: it is returned to lawn. */
                buildType?: string;
                /** @description Build types that may be changed so. */
                from: "any" | string[];
                /** @description Ages in years at which it may be made: some of 5, 8, 10, 12, 15, 20. */
                ages: (5 | 8 | 10 | 12 | 15 | 20)[];
                /** @description Cost of the change; care money pays it. */
                dollarsPerSqFt: number;
                /** @description Hours of planting work that the change takes, in the planting season. */
                hoursPer1000SqFt: number;
                provenance: {
                    /** @enum {string} */
                    basis: "published" | "common practice" | "judgement" | "measured" | "campus record";
                    source: string;
                };
            }[];
            /** @description The plan that the campus was last told of. */
            published?: {
                name: string;
                /** @description ISO date, for example 2027-09-15. */
                date: string & (string);
                /** @description Last fiscal year in which nothing is planned otherwise. Left out: none is frozen. */
                frozenThrough?: string;
                /** @description Weight of a changed site that was announced. Left out: 1. */
                announcedWeight?: number;
                /** @description Weight of any other changed site. Left out: 1. */
                otherWeight?: number;
                placements: {
                    /** @description Fiscal year in which the site, or its first half, is prepared. */
                    year: string;
                    /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                    site: string;
                    /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                    buildType: string;
                    /** @description Fiscal year in which the second half is prepared. Left out: the whole at once. */
                    secondHalf?: string;
                    /** @description Later change of the campus, and the age at which it is made. Left out: none. */
                    change?: {
                        /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                        id: string;
                        /** @description Age of the site in years, from its first planting. */
                        age: number;
                    };
                    /** @description True: people outside the program were told of it. Left out: they were not. */
                    announced?: boolean;
                }[];
                hires: {
                    /** @description Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028. */
                    year: string;
                    /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                    position: string;
                    count: number;
                }[];
            };
            /** @description Left out: not recorded, and irrigation unknown. */
            weather?: {
                /** @description Station and years. */
                source: string;
                /** @description Twelve months, January first. */
                months: {
                    /** @description Reference, inches in the month. */
                    evapotranspirationInches: number;
                    /** @description Inches in the month. */
                    rainInches: number;
                }[];
                /** @description Rain of days in a row, for the balance of tanks. */
                dailyRain?: {
                    /** @description ISO date, for example 2027-09-15. */
                    firstDay: string & (string);
                    /** @description Inches, day by day. */
                    inches: number[];
                };
            };
            /** @description Weight of each suitability criterion; they total 100. Left out: the defaults. */
            suitabilityWeightsPercent?: {
                /** @description People who walk past. */
                visibility?: number;
                /** @description Hours of sun. */
                sun?: number;
                /** @description Nearness to a kitchen. */
                kitchen?: number;
                /** @description Nearness to water. */
                water?: number;
                /** @description Organic matter of the soil. */
                soil?: number;
                /** @description Whether a truck reaches it. */
                truck?: number;
                /** @description How few sites its zone has. */
                zone?: number;
            };
            /** @description Measured values that go before the planning defaults. */
            overrides?: {
                /** @description Name of the default that it replaces, for example density.compost. */
                coefficient: string;
                value: number;
                /** @description Unit of the value: that of the default, or its metric one. */
                unit: string;
                /** @description How it was found, and where that is on record. */
                source: string;
                /** @description ISO date, for example 2027-09-15. */
                date: string & (string);
            }[];
        };
        CampusSaved: {
            campus: components["schemas"]["CampusSummary"];
            warnings: components["schemas"]["Problem"][];
        };
        Problem: {
            /** @description Stable and machine readable */
            code: string;
            /** @description The record at fault, as a reader would name it */
            record: string;
            /** @description Path within the record; empty: the whole record */
            field: string;
            /** @description The value found there; null where there is none */
            value: unknown;
            /** @description What is wrong, in one sentence */
            problem: string;
            /** @description What to do about it, in one sentence */
            remedy: string;
            /** @enum {string} */
            severity: "error" | "warning";
        };
        Campus: {
            /** Format: uuid */
            id: string;
            name: string;
            /** @description Newest version; also the ETag, in quotes */
            version: number;
            /**
             * Format: date-time
             * @description UTC
             */
            savedAt: string;
            /** @description The campus file */
            file: {
                [key: string]: unknown;
            };
        };
        NewDecision: {
            /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
            site: string;
            /** @description Fiscal year, such as FY28 */
            year: string;
            /** @enum {string} */
            verdict: "approved" | "put off" | "refused";
            /** @description Who decided, by name or office */
            decidedBy: string;
            reason: string;
            /** @description Who disagreed and why; empty: nobody */
            dissent: string;
        };
        Decision: {
            /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
            site: string;
            /** @description Fiscal year, such as FY28 */
            year: string;
            /** @enum {string} */
            verdict: "approved" | "put off" | "refused";
            /** @description Who decided, by name or office */
            decidedBy: string;
            reason: string;
            /** @description Who disagreed and why; empty: nobody */
            dissent: string;
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            campusId: string;
            /** Format: uuid */
            planId: string;
            /**
             * Format: date-time
             * @description UTC
             */
            decidedAt: string;
        };
        DecisionList: {
            decisions: components["schemas"]["Decision"][];
        };
        NewExplanation: {
            question: components["schemas"]["Question"];
            /**
             * @description Time to answer in; what it does not reach is said
             * @default 28
             */
            seconds: number;
        };
        Question: {
            /** @enum {string} */
            kind: "next-site";
        } | {
            /** @enum {string} */
            kind: "limits";
        } | {
            /** @enum {string} */
            kind: "promises";
        } | {
            /** @enum {string} */
            kind: "additions";
        } | {
            /** @enum {string} */
            kind: "futures";
            /**
             * @description Sampled futures
             * @default 1000
             */
            futures: number;
            /** @default 1 */
            seed: number;
        } | {
            /** @enum {string} */
            kind: "why";
            /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
            site: string;
            /** @description Year in which the fiscal year ends */
            year?: number;
        };
        Explanation: {
            /** Format: uuid */
            id: string;
            /**
             * Format: uuid
             * @description Null: it is asked of a campus
             */
            planId: string | null;
            /**
             * Format: uuid
             * @description Null: it is asked of a plan
             */
            campusId: string | null;
            campusVersion: number | null;
            question: components["schemas"]["Question"] | components["schemas"]["CampusQuestion"];
            seconds: number;
            /** @enum {string} */
            state: "queued" | "working" | "done" | "failed";
            progress: {
                message: string;
                share: number;
            } | null;
            /** @description As the command of the same name prints it with --json */
            answer: {
                [key: string]: unknown;
            } | null;
            problem: components["schemas"]["Problem"] | null;
            attempts: number;
            /**
             * Format: date-time
             * @description UTC
             */
            askedAt: string;
            /**
             * Format: date-time
             * @description UTC
             */
            finishedAt: string | null;
        };
        CampusQuestion: {
            /** @enum {string} */
            kind: "conflicts";
        };
        NewCampusExplanation: {
            question: components["schemas"]["CampusQuestion"];
            /**
             * @description Time to answer in; what it does not reach is said
             * @default 28
             */
            seconds: number;
        };
        ExplanationList: {
            explanations: components["schemas"]["Explanation"][];
        };
        /** @enum {string} */
        UnitSystem: "us" | "metric";
        Defaults: {
            units: components["schemas"]["UnitSystem"];
            groups: {
                group: string;
                defaults: components["schemas"]["Default"][];
            }[];
        };
        Default: {
            key: string;
            unit: string;
            low: number;
            typical: number;
            high: number;
            /** @enum {string} */
            provenance: "published" | "common practice" | "judgement";
            source: string;
            year: number;
            /** @description What a campus plans with instead */
            measured: components["schemas"]["MeasuredDefault"][];
        };
        MeasuredDefault: {
            /** @description null: on the whole campus */
            site: string | null;
            value: number;
            source: string;
        };
        PlanDocumentList: {
            documents: components["schemas"]["PlanDocumentSummary"][];
        };
        PlanDocumentSummary: {
            /** @example site-dossier */
            kind: string;
            /** @description Null: of the whole plan */
            site: string | null;
            title: string;
            /** @example site-dossier-TVU-19.pdf */
            fileName: string;
            /** @description Where it is written on request */
            path: string;
        };
        SiteEstimates: {
            site: string;
            name: string;
            units: components["schemas"]["UnitSystem"];
            /** @description Fiscal year of the prices, such as FY28 */
            pricesOf: string;
            notes: string[];
            gates: components["schemas"]["SiteGate"][];
            /** @description Of a candidate, before gates and plan */
            suitability: components["schemas"]["EstimateNode"][];
            estimates: components["schemas"]["TypeEstimate"][];
        };
        SiteGate: {
            kind: string;
            /** @enum {string} */
            status: "pass" | "fail" | "unknown";
            note: string;
            /** @description What would clear it */
            clearedBy: string;
            /** @description Whom to ask */
            ask: string;
            /** @description Date of a regulator’s number */
            asOf: string | null;
            /** @enum {string} */
            basis: "stated" | "measured" | "not recorded";
            /** @description What the measures say beside it */
            measured: string | null;
        };
        EstimateNode: {
            name: string;
            /** @description null: unknown */
            value: number | null;
            unit: string;
            formula: string;
            source: string;
            inputs: components["schemas"]["EstimateNode"][];
        };
        TypeEstimate: {
            buildType: string;
            name: string;
            findings: components["schemas"]["EstimateFinding"][];
            sections: {
                takeoff: components["schemas"]["EstimateNode"][];
                hours: components["schemas"]["EstimateNode"][];
                money: components["schemas"]["EstimateNode"][];
                water: components["schemas"]["EstimateNode"][];
                benefits: components["schemas"]["EstimateNode"][];
            };
        };
        EstimateFinding: {
            field: string;
            value: unknown;
            /** @enum {string} */
            severity: "warn" | "reject";
            problem: string;
            remedy: string;
        };
        Health: {
            /** @enum {string} */
            status: "ok";
        };
        ImportPreview: {
            campusVersion: number;
            /** @description Of this file and this version; needed to apply it */
            token: string;
            report: components["schemas"]["ImportReport"];
        };
        ImportReport: {
            /** @enum {string} */
            format: "csv" | "xlsx" | "geojson" | "bundle" | "campus" | "unknown";
            counts: {
                unchanged: number;
                new: number;
                changed: number;
                removed: number;
                rejected: number;
            };
            /** @description No row is rejected, and the campus stays sound */
            canApply: boolean;
            rows: components["schemas"]["ImportRow"][];
            /** @description Plans that a bundle holds. One that is rejected keeps nothing else from being saved. */
            plans: components["schemas"]["ImportPlan"][];
            /** @description Problems of the file as a whole */
            problems: components["schemas"]["Problem"][];
        };
        ImportRow: {
            /** @description Where in the file, such as `row 7` or `feature 3` */
            place: string;
            /** @description The record as a reader would name it */
            record: string;
            outcome: components["schemas"]["ImportOutcome"];
            changes: components["schemas"]["ImportChange"][];
            /** @description Why it is rejected, or what to look at */
            problems: components["schemas"]["Problem"][];
        };
        /** @enum {string} */
        ImportOutcome: "unchanged" | "new" | "changed" | "removed" | "rejected";
        ImportChange: {
            /** @description The field as the imported file names it */
            field: string;
            /** @description Empty: nothing was there */
            from: string;
            to: string;
        };
        ImportPlan: {
            /** @description As the bundle names it */
            name: string;
            /**
             * @description new: it is checked and then kept; unchanged: it is here already
             * @enum {string}
             */
            outcome: "new" | "unchanged" | "rejected";
            /** @description Why it is rejected */
            problems: components["schemas"]["Problem"][];
        };
        ImportApplied: {
            /** @description The same as before if nothing changed */
            campusVersion: number;
            report: components["schemas"]["ImportReport"];
            /** @description Plans that are being checked; each can be followed like a solve */
            broughtPlans: {
                name: string;
                /** Format: uuid */
                solveId: string;
            }[];
        };
        PlanList: {
            plans: components["schemas"]["PlanSummary"][];
        };
        PlanSummary: {
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            campusId: string;
            campusVersion: number;
            seed: number;
            solverVersion: string;
            limits: components["schemas"]["SolveLimits"];
            ending: components["schemas"]["Ending"];
            /**
             * @description Solved here, or brought in with a bundle and verified
             * @enum {string}
             */
            origin: "solved" | "bundle";
            /**
             * Format: date-time
             * @description When it was stored: solved, or brought in
             */
            solvedAt: string;
        };
        SolveLimits: {
            /** @description Null: a plan that came in by a bundle states none */
            seconds: number | null;
            work: number | null;
            /** @description Share: 0.03 is 3 percent */
            gap: number | null;
        };
        /** @enum {string} */
        Ending: "proven" | "time-limit" | "work-limit" | "cancelled" | "time-limit-without-plan" | "work-limit-without-plan" | "cancelled-without-plan" | "no-plan";
        StoredPlan: {
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            campusId: string;
            campusVersion: number;
            seed: number;
            solverVersion: string;
            limits: components["schemas"]["SolveLimits"];
            ending: components["schemas"]["Ending"];
            /**
             * @description Solved here, or brought in with a bundle and verified
             * @enum {string}
             */
            origin: "solved" | "bundle";
            /**
             * Format: date-time
             * @description When it was stored: solved, or brought in
             */
            solvedAt: string;
            /** @description The plan file */
            file: {
                [key: string]: unknown;
            };
        };
        PlanOverview: {
            [key: string]: unknown;
        };
        PlanVerdict: {
            verified: boolean;
            breaches: components["schemas"]["Breach"][];
        };
        Breach: {
            rule: string;
            record: string;
            message: string;
        };
        SiteChange: {
            /** @description Version of the campus that the change began from */
            basedOn: number;
            /** @description The site; null: take it out of the campus */
            site: {
                [key: string]: unknown;
            } | null;
        };
        PartSaved: {
            campus: components["schemas"]["CampusSummary"];
            warnings: components["schemas"]["Problem"][];
            /** @description The record as it was: save it again to undo */
            before: unknown;
        };
        SiteToCheck: {
            /** @description A candidate or existing site, as the campus file describes it */
            site: {
                [key: string]: unknown;
            };
        };
        SiteCheck: {
            /** @description What the change would bring in */
            problems: components["schemas"]["Problem"][];
            /** @description Area within the boundary; null: it cannot be measured */
            drawnAreaSqFt: number | null;
        };
        HandPlacements: {
            /** @description Version of the campus that the change began from */
            basedOn: number;
            handPlacements: {
                /** @enum {string} */
                kind: "fixed" | "forbidden";
                /** @description Left out on forbidden: no year at all. */
                year?: string;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                buildType?: string;
                reason: string;
            }[];
        };
        SolveWish: {
            /** @description Left out: the newest version */
            campusVersion?: number;
            /** @default 60 */
            seconds: number;
            /** @default null */
            work: number | null;
            /** @default null */
            gap: number | null;
            /** @default 1 */
            seed: number;
            /**
             * Format: uuid
             * @description A plan of this campus to begin from; left out: from nothing
             */
            startFromPlan?: string;
        };
        Solve: {
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            campusId: string;
            campusVersion: number;
            seed: number;
            limits: components["schemas"]["SolveLimits"];
            /** Format: uuid */
            startFromPlan: string | null;
            /** @description A plan of this name in a bundle is checked and kept; null: the campus is solved */
            broughtPlan: string | null;
            /** @enum {string} */
            state: "queued" | "solving" | "done" | "failed" | "cancelled";
            progress: components["schemas"]["SolveProgress"] | null;
            attempts: number;
            cancelWanted: boolean;
            /** Format: uuid */
            planId: string | null;
            ending: components["schemas"]["Ending"] | null;
            /** @description What cannot all hold: `no-plan` only */
            conflict: components["schemas"]["ConflictMember"][];
            problem: components["schemas"]["Problem"] | null;
            /**
             * Format: date-time
             * @description UTC
             */
            requestedAt: string;
            /**
             * Format: date-time
             * @description UTC
             */
            startedAt: string | null;
            /**
             * Format: date-time
             * @description UTC
             */
            finishedAt: string | null;
        };
        SolveProgress: {
            elapsedSeconds: number;
            bestObjective: number | null;
            bound: number | null;
            /** @description Share: 0.03 is 3 percent */
            gap: number | null;
            tier: string | null;
            message: string;
        };
        ConflictMember: {
            /** @enum {string} */
            kind: "commitment" | "limit";
            id: string;
            name: string;
        };
        SolveList: {
            solves: components["schemas"]["Solve"][];
        };
        SuitabilityList: {
            draws: number;
            sites: components["schemas"]["SiteSuitability"][];
        };
        SiteSuitability: {
            site: string;
            name: string;
            /** @description Points of 100, unknown facts at their worst */
            least: number;
            most: number;
            rank: number;
            rankLow: number;
            rankHigh: number;
            /** @description Share of draws among the best three */
            topThree: number;
            /** @enum {string} */
            gates: "pass" | "fail" | "unknown";
            contributions: {
                criterion: string;
                weight: number;
                points: number | null;
            }[];
        };
        ProblemReply: {
            type: string;
            title: string;
            status: number;
            detail: string;
            code: string;
            currentVersion?: number;
            versions?: {
                /** @description As it was when the change began */
                base: unknown;
                /** @description As somebody else has saved it since */
                current: unknown;
            };
            problems?: components["schemas"]["Problem"][];
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    CampusesController_list: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The campuses */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CampusList"];
                };
            };
        };
    };
    CampusesController_add: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CampusFile"];
            };
        };
        responses: {
            /** @description Saved */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CampusSaved"];
                };
            };
            /** @description body-not-json: The body is not JSON */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description body-too-large: The body is too large */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description media-type: The body must be application/json */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-refused: The campus file has errors; nothing was saved */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    CampusesController_read: {
        parameters: {
            query?: {
                version?: number;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The campus */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Campus"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    CampusesController_replace: {
        parameters: {
            query?: never;
            header: {
                /** @description The ETag last read */
                "If-Match": string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CampusFile"];
            };
        };
        responses: {
            /** @description Saved */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CampusSaved"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description version-conflict: Somebody else saved this campus first */
            412: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-refused: The campus file has errors; nothing was saved */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description version-missing: Say which version the change is based on */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    DecisionsController_record: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewDecision"];
            };
        };
        responses: {
            /** @description Recorded */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Decision"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-plan: There is no such plan */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    DecisionsController_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The decisions */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DecisionList"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    ExplanationsController_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The explanations */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExplanationList"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    ExplanationsController_ask: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewExplanation"];
            };
        };
        responses: {
            /** @description Queued */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Explanation"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-plan: There is no such plan */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    ExplanationsController_listOfCampus: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The explanations */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExplanationList"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    ExplanationsController_askCampus: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewCampusExplanation"];
            };
        };
        responses: {
            /** @description Queued */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Explanation"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    ExplanationsController_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The explanation */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Explanation"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-explanation: There is no such question */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    DefaultsController_list: {
        parameters: {
            query?: {
                units?: components["schemas"]["UnitSystem"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The defaults */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Defaults"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    DefaultsController_ofCampus: {
        parameters: {
            query?: {
                units?: components["schemas"]["UnitSystem"];
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The defaults */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Defaults"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-outdated: The stored campus no longer passes the checks */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    DocumentsController_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The documents */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanDocumentList"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-plan: There is no such plan */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description plan-outdated: The stored plan no longer reads */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    DocumentsController_write: {
        parameters: {
            query?: {
                /** @description US Letter or A4 */
                paper?: "letter" | "a4";
            };
            header?: never;
            path: {
                id: string;
                fileName: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The document */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-plan: There is no such plan; unknown-document: The plan has no such document */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description plan-outdated: The stored plan no longer reads */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    EstimatesController_read: {
        parameters: {
            query?: {
                /** @description Build type; left out: every one that the site may become */
                type?: string;
                units?: components["schemas"]["UnitSystem"];
            };
            header?: never;
            path: {
                id: string;
                site: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The estimates */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteEstimates"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus; unknown-site: The campus has no such site; unknown-type: The site may not become that build type */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-outdated: The stored campus no longer passes the checks */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    ExportsController_read: {
        parameters: {
            query?: {
                /** @description Left out: a bundle holds all plans of the newest version, other files none */
                plan?: string;
                /** @description The one table of a CSV file; a workbook holds all of them */
                table?: "sites" | "schedule" | "care-hours" | "ledger" | "dictionary";
                /** @description Work year of a calendar; left out: the first year of the plan */
                year?: string;
                /** @description public: no lab values, utility detail, notes or names of funds */
                audience?: "campus" | "public";
            };
            header?: never;
            path: {
                id: string;
                format: "geojson" | "csv" | "xlsx" | "ics" | "bundle";
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The file */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/octet-stream": string;
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus; unknown-plan: There is no such plan */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-outdated: The stored campus no longer passes the checks; export-impossible: This cannot be exported so */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    HealthController_read: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Both answer */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
            /** @description store-unavailable: The store cannot be reached at the moment */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    ImportsController_preview: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/octet-stream": string;
            };
        };
        responses: {
            /** @description The dry run */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportPreview"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-outdated: The stored campus no longer passes the checks */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description body-too-large: The body is too large */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description media-type: The body must be application/json */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    ImportsController_apply: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
                token: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/octet-stream": string;
            };
        };
        responses: {
            /** @description Saved */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportApplied"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-outdated: The stored campus no longer passes the checks; import-stale: The import is not the one of the dry run */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description version-conflict: Somebody else saved this campus first */
            412: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description body-too-large: The body is too large */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description media-type: The body must be application/json */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description import-rejected: The file has records that cannot be taken */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    PlansController_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The plans */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanList"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    PlansController_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The plan */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StoredPlan"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-plan: There is no such plan */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    PlansController_overview: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The overview */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanOverview"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-plan: There is no such plan */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description plan-outdated: The stored plan no longer reads */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    PlansController_verify: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The verdict */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanVerdict"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-plan: There is no such plan */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    SitesController_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                site: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SiteChange"];
            };
        };
        responses: {
            /** @description Saved */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartSaved"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description edit-conflict: Somebody else changed the same record */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-refused: The campus file has errors; nothing was saved */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    SitesController_check: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                site: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SiteToCheck"];
            };
        };
        responses: {
            /** @description The findings */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteCheck"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    SitesController_place: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
                /** @description Identifier: letters, digits, dot, dash or underscore, 60 at most. */
                site: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["HandPlacements"];
            };
        };
        responses: {
            /** @description Saved */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartSaved"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description edit-conflict: Somebody else changed the same record */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-refused: The campus file has errors; nothing was saved */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    SolvesController_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The solves */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SolveList"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    SolvesController_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SolveWish"];
            };
        };
        responses: {
            /** @description Queued */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Solve"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus; unknown-plan: There is no such plan */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    SolvesController_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The solve */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Solve"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-solve: There is no such solve */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    SolvesController_cancel: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Cancelled or told to stop */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Solve"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-solve: There is no such solve */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description solve-final: The solve has already ended */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    SolvesController_events: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Events whose data is the solve */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/event-stream": string;
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-solve: There is no such solve */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
    SuitabilityController_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The list */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SuitabilityList"];
                };
            };
            /** @description request-invalid: The request is not as documented */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description unknown-campus: There is no such campus */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
            /** @description campus-outdated: The stored campus no longer passes the checks */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["ProblemReply"];
                };
            };
        };
    };
}
