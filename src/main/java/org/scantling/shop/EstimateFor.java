package org.scantling.shop;

import org.scantling.print.Page;
import org.scantling.quantity.UnitSystem;

/** For whom an estimate is. */
public enum EstimateFor {
  /** What it costs, what is in it and what is not. */
  CLIENT,
  /** All of that with the insides: every line, every task, the markup. */
  BUILDER;

  public Page page(Estimate estimate, UnitSystem units) {
    Said said = new Said(units);
    return this == CLIENT
        ? new ClientEstimate(estimate, said).page()
        : new EstimatePage(estimate, said).page();
  }

  public String csv(Estimate estimate) {
    EstimateCsv csv = new EstimateCsv(estimate);
    return this == CLIENT ? csv.client() : csv.builder();
  }

  public String json(Estimate estimate) {
    return this == CLIENT ? EstimateJson.client(estimate) : EstimateJson.builder(estimate);
  }
}
