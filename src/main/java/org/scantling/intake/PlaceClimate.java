package org.scantling.intake;

import org.scantling.design.Site;

/** The keys of the climate of a site: those of any climate, and what kind of wind it is. */
record PlaceClimate(
    @Entry(says = "depth to the bottom of the footing", kind = EntryKind.LENGTH) String frostDepth,
    @Entry(says = "ground snow load", kind = EntryKind.LOAD) String groundSnow,
    @Entry(says = "snow and rain as Canadian tables print them, instead of ground-snow") Snow snow,
    @Entry(
            says = "basic wind speed, a three-second gust unless wind-basis says otherwise",
            kind = EntryKind.WIND_SPEED)
        String windSpeed,
    @Entry(
            says = "what the wind speed is: a gust at strength level, where nothing is said",
            kind = EntryKind.WORD,
            words = {
              Site.Weather.STRENGTH_GUST,
              "allowable-gust",
              "mean-10-minute",
              ClimateRule.MEAN_HOURLY
            })
        String windBasis,
    @Entry(
            says = "hourly wind pressure, 1 in 50 years, as Canadian tables print it",
            kind = EntryKind.LOAD)
        String windPressure,
    @Entry(
            says = "wind exposure",
            kind = EntryKind.WORD,
            words = {"B", "C", "D"})
        String exposure,
    @Entry(says = "live load on the top, where the official asks for it", kind = EntryKind.LOAD)
        String roofLive,
    @Entry(says = "plant hardiness zone, for a first estimate", kind = EntryKind.ZONE)
        String hardinessZone,
    @Entry(says = "air-freezing index", kind = EntryKind.DEGREE_DAYS) String airFreezingIndex,
    @Entry(says = "mean annual air temperature", kind = EntryKind.TEMPERATURE)
        String meanAnnualTemperature) {

  record Snow(
      @Entry(says = "Ss, snow on the ground", kind = EntryKind.LOAD, required = true) String ss,
      @Entry(says = "Sr, rain that falls into it", kind = EntryKind.LOAD, required = true)
          String sr) {}

  record Hill(
      @Entry(
              says = "what it is",
              kind = EntryKind.WORD,
              words = {"ridge", "escarpment", "hill"},
              required = true)
          String shape,
      @Entry(
              says = "from the foot of the slope to the crest",
              kind = EntryKind.LENGTH,
              required = true)
          String height,
      @Entry(
              says = "from the crest to where the slope is half as high, toward the wind",
              kind = EntryKind.LENGTH,
              required = true)
          String halfLength,
      @Entry(
              says = "crest, or how far from it the walk stands",
              kind = EntryKind.PLACE_ON_HILL,
              required = true)
          String place) {}
}
