package org.scantling.words;

import org.scantling.design.Structure;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;
import org.scantling.tables.JointRow;
import org.scantling.tables.PostBed;
import org.scantling.tables.Sold;
import org.scantling.tables.TimberUse;

/** What is bought, as it is said to one reader. */
public final class TimberWords {
  private static final Sayings SAYINGS = Sayings.of("voice");

  private final Voice voice;

  private TimberWords(Voice voice) {
    this.voice = voice;
  }

  public static TimberWords of(Voice voice) {
    return new TimberWords(voice);
  }

  /** What holds a joint together, in full, with the number of joints and of their fasteners. */
  public String fastened(String option, int joints) {
    JointRow row = voice.words().tables().joints().row(option);
    return SAYINGS.say(
        "fastened",
        "fasteners",
        voice.metric(row.fasteners()),
        "joints",
        Integer.toString(joints),
        "all",
        Integer.toString(joints * row.count()));
  }

  /** The longest piece of a size that can be bought for a use: of this yard, or of any. */
  public Measure longest(String size, TimberUse use) {
    return Measure.inches(voice.words().sold(size, use).longestIn());
  }

  /** The longest piece of a size that its market sells, whatever this yard has. */
  public Measure longestAnywhere(String size) {
    return Measure.inches(Sold.anywhere(size, voice.words().tables()).longestIn());
  }

  /** That nothing longer is sold. */
  public String noneLonger(String size, TimberUse use) {
    return voice.words().sold(size, use).byTheYard()
        ? SAYINGS.say("longest.here", "size", size, "longest", voice.say(longest(size, use)))
        : noneLongerAnywhere(size);
  }

  /** That nothing longer is to be had. */
  public String noneLongerAnywhere(String size) {
    return SAYINGS.say("longest", "size", size, "longest", voice.say(longestAnywhere(size)));
  }

  /** What is dug below a post for gravel, and for the pad on it where there is one. */
  public Measure bed(Structure.Footings footings) {
    PostBed bed =
        footings.onRock() ? PostBed.onRock() : PostBed.of(this::allowanceIn, footings.padded());
    return Measure.inches(bed.depthIn());
  }

  /** As the lists have it. */
  private double allowanceIn(String row) {
    double inches = voice.words().tables().shop(row).amount();
    return voice.units() == UnitSystem.METRIC ? Length.handyMetric(inches) : inches;
  }
}
