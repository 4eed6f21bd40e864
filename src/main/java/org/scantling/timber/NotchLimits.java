package org.scantling.timber;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Check;
import org.scantling.quantity.Require;

/**
 * The prescriptive limits on notches in sawn bending members.
 *
 * <p>Source: NDS, 2018, 4.4.3; IRC, 2018, R502.8.1.
 *
 * @param endDepthRatio greatest depth of an end notch over the member's depth
 * @param innerDepthRatio the same for a notch in the outer thirds
 * @param innerLengthRatio greatest length of a notch in the outer thirds over the member's depth
 * @param thickNominalIn nominal thickness from which no tension edge may be notched but at its ends
 */
public record NotchLimits(
    double endDepthRatio, double innerDepthRatio, double innerLengthRatio, double thickNominalIn) {
  public NotchLimits {
    Require.positive("end notch depth ratio", endDepthRatio, "");
    Require.positive("inner notch depth ratio", innerDepthRatio, "");
    Require.positive("inner notch length ratio", innerLengthRatio, "");
    Require.positive("nominal thickness of a thick member", thickNominalIn, "in");
  }

  /** Which limit. */
  public enum Limit {
    /** An end notch too deep. */
    END_DEPTH,
    /** A notch in an outer third too deep. */
    INNER_DEPTH,
    /** A notch in an outer third too long. */
    INNER_LENGTH,
    /** A notch in the middle third. */
    MIDDLE_THIRD,
    /** A notch in the tension edge of a thick member, away from its ends. */
    THICK_TENSION_EDGE
  }

  /**
   * One limit that was looked at.
   *
   * @param limit which
   * @param foundIn the notch's depth or length
   * @param allowedIn the greatest allowed, 0 where no notch is allowed
   */
  public record Finding(Limit limit, double foundIn, double allowedIn) {
    /** True where the notch breaks this limit. */
    public boolean broken() {
      return !(allowedIn > 0) || !new Check(foundIn, allowedIn).passes();
    }
  }

  /**
   * All limits that apply to one notch.
   *
   * @param findings each limit that was looked at, broken or not
   */
  public record Review(List<Finding> findings) {
    public Review {
      findings = List.copyOf(findings);
    }

    /** The limits that the notch breaks, none for a notch that may be cut. */
    public List<Finding> broken() {
      return findings.stream().filter(Finding::broken).toList();
    }

    /** True where every limit is kept. */
    public boolean allowed() {
      return broken().isEmpty();
    }
  }

  /**
   * Which limits a notch keeps and breaks.
   *
   * <p>The seat of a beam with a tail beyond it is no end notch: it lies in an outer third.
   *
   * @param notch the notch
   * @param depthIn dressed depth of the member, above 0
   * @param nominalThicknessIn nominal thickness, 2 for a 2x6, 4 for a 4x6 (not the dressed 3.5)
   * @return every limit that applies
   *     <p>Source: NDS, 2018, 4.4.3. Worked: 1 in deep in a 2x6 (5.5 in) breaks d/6 (0.92 in) in an
   *     outer third and keeps d/4 (1.375 in) at an end.
   */
  public Review review(Notch notch, double depthIn, double nominalThicknessIn) {
    Require.positive("depth", depthIn, "in");
    Require.positive("nominal thickness", nominalThicknessIn, "in");
    List<Finding> findings = new ArrayList<>();
    switch (notch.place()) {
      case END ->
          findings.add(new Finding(Limit.END_DEPTH, notch.depthIn(), endDepthRatio * depthIn));
      case OUTER_THIRD -> {
        findings.add(new Finding(Limit.INNER_DEPTH, notch.depthIn(), innerDepthRatio * depthIn));
        findings.add(new Finding(Limit.INNER_LENGTH, notch.lengthIn(), innerLengthRatio * depthIn));
      }
      case MIDDLE_THIRD -> findings.add(new Finding(Limit.MIDDLE_THIRD, notch.depthIn(), 0));
    }
    boolean thick = nominalThicknessIn >= thickNominalIn;
    if (notch.place() != NotchPlace.END && notch.onTensionEdge() && thick) {
      findings.add(new Finding(Limit.THICK_TENSION_EDGE, notch.depthIn(), 0));
    }
    return new Review(findings);
  }
}
