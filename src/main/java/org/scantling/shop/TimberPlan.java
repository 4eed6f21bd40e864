package org.scantling.shop;

import java.util.List;
import java.util.OptionalLong;
import org.scantling.tables.TimberUse;

/**
 * How the pieces of one size come out of the lengths sold.
 *
 * @param stock what is bought
 * @param roles what is cut from it
 * @param cuts sticks and what each is cut into
 * @param special pieces longer than anything sold, to be ordered by their length
 * @param spare sticks bought beyond the cuts
 * @param result how good the plan is
 */
public record TimberPlan(
    Stock stock,
    List<String> roles,
    List<StickCut> cuts,
    List<Special> special,
    List<Spare> spare,
    Result result) {
  public TimberPlan {
    roles = List.copyOf(roles);
    cuts = List.copyOf(cuts);
    special = List.copyOf(special);
    spare = List.copyOf(spare);
  }

  /**
   * @param size nominal size
   * @param called what to ask for: the size, and where the job has several timbers which of them
   * @param forTheGround true for posts that stand in soil and are treated for it
   * @param breadthIn dressed
   * @param depthIn dressed
   * @param timber species and grade
   * @param weightPcf wet
   */
  public record Stock(
      String size,
      String called,
      boolean forTheGround,
      double breadthIn,
      double depthIn,
      PieceTimber timber,
      double weightPcf) {
    /** What its sticks are bought for. */
    TimberUse use() {
      return timber.use(forTheGround);
    }

    double weightLb(double lengthIn) {
      return breadthIn * depthIn * lengthIn * weightPcf / (12 * 12 * 12);
    }
  }

  /**
   * @param mark the piece
   * @param lengthIn the least that will do
   */
  public record Special(String mark, double lengthIn, int count) {}

  /** Sticks of one length that no piece is cut from. */
  public record Spare(double lengthIn, int count) {}

  /**
   * @param byCost true where the least cost was looked for, false where the least length bought
   * @param proven true where no other plan is better
   * @param gapRatio how much better another could be at most, as a share
   * @param piecesIn finished length of all pieces cut
   * @param boughtIn length of the sticks they are cut from
   * @param cents what everything costs, spare sticks too, where the yard's list says
   */
  public record Result(
      boolean byCost,
      boolean proven,
      double gapRatio,
      double piecesIn,
      double boughtIn,
      OptionalLong cents) {
    /** Share of the bought length that is not in a piece. */
    public double wasteRatio() {
      // Metric lengths are written in inches, so a piece may be a hair longer than its own stick.
      return boughtIn > 0 ? Math.max(0, 1 - piecesIn / boughtIn) : 0;
    }
  }

  /** True where some stick is cut so. */
  boolean cuts(StickCut.Ends ends) {
    return cuts.stream().anyMatch(each -> each.ends() == ends);
  }

  /** Length of everything that is bought, spare sticks too. */
  double boughtIn() {
    return result.boughtIn()
        + spare.stream().mapToDouble(each -> each.count() * each.lengthIn()).sum()
        + special.stream().mapToDouble(each -> each.count() * each.lengthIn()).sum();
  }

  /** Pieces that are ordered by their length, since nothing as long is listed. */
  public int specials() {
    return special.stream().mapToInt(Special::count).sum();
  }

  /** All sticks, spare ones and special orders too. */
  public int sticks() {
    return cuts.stream().mapToInt(StickCut::times).sum()
        + specials()
        + spare.stream().mapToInt(Spare::count).sum();
  }

  /** Weight of everything as it comes from the yard. */
  public double weightLb() {
    double lengthIn = cuts.stream().mapToDouble(each -> each.times() * each.lengthIn()).sum();
    lengthIn += spare.stream().mapToDouble(each -> each.count() * each.lengthIn()).sum();
    lengthIn += special.stream().mapToDouble(each -> each.count() * each.lengthIn()).sum();
    return stock.weightLb(lengthIn);
  }
}
