package org.scantling.intake;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/** The keys of a climate; null is what a file that is written leaves out. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ClimateFile(
    @Entry(kind = EntryKind.LENGTH) @Nullable String frostDepth,
    @Entry(kind = EntryKind.LOAD) @Nullable String groundSnow,
    @Entry(kind = EntryKind.WIND_SPEED) @Nullable String windSpeed,
    @Entry(
            kind = EntryKind.WORD,
            words = {"B", "C", "D"})
        @Nullable String exposure,
    @Entry(kind = EntryKind.ZONE) @Nullable String hardinessZone,
    @Entry(kind = EntryKind.DEGREE_DAYS) @Nullable String airFreezingIndex,
    @Entry(kind = EntryKind.TEMPERATURE) @Nullable String meanAnnualTemperature) {}
