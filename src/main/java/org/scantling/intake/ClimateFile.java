package org.scantling.intake;

import com.fasterxml.jackson.annotation.JsonInclude;

/** The keys of a climate. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ClimateFile(
    @Entry(kind = EntryKind.LENGTH) String frostDepth,
    @Entry(kind = EntryKind.LOAD) String groundSnow,
    @Entry(kind = EntryKind.WIND_SPEED) String windSpeed,
    @Entry(
            kind = EntryKind.WORD,
            words = {"B", "C", "D"})
        String exposure,
    @Entry(kind = EntryKind.ZONE) String hardinessZone,
    @Entry(kind = EntryKind.DEGREE_DAYS) String airFreezingIndex,
    @Entry(kind = EntryKind.TEMPERATURE) String meanAnnualTemperature) {}
