package org.scantling.search;

import org.scantling.design.Site;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;

/** Lets tests of other packages change one demand of a site. */
public final class DemandedSite {
  private DemandedSite() {}

  /** The same, with as many bays as were proposed where the demand is about their length. */
  public static Site with(Site site, Proposal today, String demand, Outcome value) {
    boolean bay = Demand.of(demand) == Demand.BAY;
    return with(bay ? ThresholdSearch.inItsBays(site, today) : site, demand, value);
  }

  public static Site with(Site site, String demand, Outcome value) {
    return new SiteDemand(Demand.of(demand)).with(site, value);
  }
}
