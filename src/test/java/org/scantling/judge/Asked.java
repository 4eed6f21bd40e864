package org.scantling.judge;

/**
 * What a site file asks for that the proposal does not print as a number.
 *
 * @param gathered risk category II
 * @param fullSnow the whole snow of a closed top
 */
record Asked(boolean gathered, boolean fullSnow) {
  static Asked of(String siteFile) {
    return new Asked(siteFile.contains("risk-category: II"), siteFile.contains("snow-share: full"));
  }
}
