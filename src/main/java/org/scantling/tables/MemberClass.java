package org.scantling.tables;

/** Which table of design values a timber is read from. */
public enum MemberClass {
  /** 2 to 4 in thick; a 4x4 belongs here. */
  DIMENSION("dimension"),
  /** 5 in and thicker, not more than 2 in wider than thick. */
  POST_TIMBER("post-timber"),
  /** 5 in and thicker, more than 2 in wider than thick. */
  BEAM_TIMBER("beam-timber");

  private static final double TIMBER_THICKNESS_IN = 5;
  private static final double POST_DIFFERENCE_IN = 2;

  private final String word;

  MemberClass(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  public boolean timber() {
    return this != DIMENSION;
  }

  /**
   * The class of a timber by its nominal size. Source: NDS 2018, 4.1.3.
   *
   * <p>A 4x4 is dimension lumber, a 6x6 and a 6x8 are posts and timbers, a 6x10 is a beam.
   */
  public static MemberClass of(double nominalThicknessIn, double nominalWidthIn) {
    if (nominalThicknessIn < TIMBER_THICKNESS_IN) {
      return DIMENSION;
    }
    return nominalWidthIn - nominalThicknessIn > POST_DIFFERENCE_IN ? BEAM_TIMBER : POST_TIMBER;
  }

  static MemberClass read(Row row) {
    String found = row.oneOf("member_class", "dimension", "post-timber", "beam-timber");
    for (MemberClass one : values()) {
      if (one.word.equals(found)) {
        return one;
      }
    }
    throw row.refuse("member_class", RefusalWords.say("sizes.class"));
  }
}
