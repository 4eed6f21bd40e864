package org.scantling.intake;

import org.scantling.design.Site;

/** The keys of the climate of a site: those of any climate, and what kind of wind it is. */
record PlaceClimate(
    @Entry(kind = EntryKind.LENGTH) String frostDepth,
    @Entry(kind = EntryKind.LOAD) String groundSnow,
    @Entry Snow snow,
    @Entry(kind = EntryKind.WIND_SPEED) String windSpeed,
    @Entry(
            kind = EntryKind.WORD,
            words = {
              Site.Weather.STRENGTH_GUST,
              "allowable-gust",
              "mean-10-minute",
              ClimateRule.MEAN_HOURLY
            })
        String windBasis,
    @Entry(kind = EntryKind.LOAD) String windPressure,
    @Entry(
            kind = EntryKind.WORD,
            words = {"B", "C", "D"})
        String exposure,
    @Entry(kind = EntryKind.LOAD) String roofLive,
    @Entry(kind = EntryKind.ZONE) String hardinessZone,
    @Entry(kind = EntryKind.DEGREE_DAYS) String airFreezingIndex,
    @Entry(kind = EntryKind.TEMPERATURE) String meanAnnualTemperature) {

  record Snow(
      @Entry(kind = EntryKind.LOAD, required = true) String ss,
      @Entry(kind = EntryKind.LOAD, required = true) String sr) {}

  record Hill(
      @Entry(
              kind = EntryKind.WORD,
              words = {"ridge", "escarpment", "hill"},
              required = true)
          String shape,
      @Entry(kind = EntryKind.LENGTH, required = true) String height,
      @Entry(kind = EntryKind.LENGTH, required = true) String halfLength,
      @Entry(kind = EntryKind.PLACE_ON_HILL, required = true) String place) {}
}
