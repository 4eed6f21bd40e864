package org.scantling.intake;

import com.fasterxml.jackson.annotation.JsonInclude;

/** The keys of a climate. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ClimateFile(
    @Entry(says = "depth to the bottom of the footing", kind = EntryKind.LENGTH) String frostDepth,
    @Entry(says = "ground snow load", kind = EntryKind.LOAD) String groundSnow,
    @Entry(says = "basic wind speed, three-second gust", kind = EntryKind.WIND_SPEED)
        String windSpeed,
    @Entry(
            says = "wind exposure",
            kind = EntryKind.WORD,
            words = {"B", "C", "D"})
        String exposure,
    @Entry(says = "plant hardiness zone, for a first estimate", kind = EntryKind.ZONE)
        String hardinessZone,
    @Entry(says = "air-freezing index", kind = EntryKind.DEGREE_DAYS) String airFreezingIndex,
    @Entry(says = "mean annual air temperature", kind = EntryKind.TEMPERATURE)
        String meanAnnualTemperature) {}
