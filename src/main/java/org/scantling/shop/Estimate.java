package org.scantling.shop;

import java.math.BigDecimal;

/**
 * What a job costs and how long it takes.
 *
 * @param title of the proposal
 * @param priceList the file that the prices are from; empty where there is none
 * @param cost as far as it is priced
 * @param work by common practice
 * @param size of the structure, for whoever pays for it
 * @param rounding up to what
 */
public record Estimate(
    String title, String priceList, Cost cost, WorkHours work, Outline size, Rounding rounding) {
  /**
   * @param hours of each task
   * @param volume of what is priced by volume, in the unit of its price
   */
  public record Rounding(BigDecimal hours, BigDecimal volume) {}

  /**
   * @param lengthIn from first to last post
   * @param widthIn clear between the posts
   * @param headroomIn clear overhead
   * @param posts how many
   * @param plants how many
   */
  public record Outline(
      double lengthIn, double widthIn, double headroomIn, int posts, int plants) {}
}
