package org.scantling.engine;

import org.scantling.design.Site;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;

/** Lets tests of other packages change one demand of a site. */
public final class DemandedSite {
  private DemandedSite() {}

  public static Site with(Site site, String demand, Outcome value) {
    return new SiteDemand(Demand.of(demand)).with(site, value);
  }
}
