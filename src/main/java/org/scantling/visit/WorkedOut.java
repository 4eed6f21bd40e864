package org.scantling.visit;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.scantling.quantity.QuantityKind;
import org.scantling.sayings.Sayings;
import org.scantling.tables.SizeRow;
import org.scantling.tables.Tables;

/** What of a structure that stands follows from the pieces and the tape, each with its working. */
final class WorkedOut {
  private static final int LEAST_POSTS = 4;

  private final Tables tables;
  private final Sayings sayings;
  private final Function<String, Optional<String>> answers;

  /**
   * @param answers what was answered to a question, where it was asked
   */
  WorkedOut(Tables tables, Sayings sayings, Function<String, Optional<String>> answers) {
    this.tables = tables;
    this.sayings = sayings;
    this.answers = answers;
  }

  /** The answer to a question, where it follows from those before. */
  Optional<WorkedAnswer> of(String question) {
    return switch (question) {
      case "embedment" -> embedment();
      case "base-bays" -> bays();
      case "bay" -> bay();
      case "row-spacing" -> rowSpacing();
      case "header-overhang" -> headerOverhang();
      case "crossbeam-count" -> crossbeamCount();
      case "crossbeam-overhang" -> crossbeamOverhang();
      default -> Optional.empty();
    };
  }

  private Optional<WorkedAnswer> embedment() {
    OptionalDouble postIn = pieces("posts").map(TimberPieces::lengthIn).orElse(none());
    OptionalDouble heightIn = lengthIn("height");
    boolean inTheGround =
        !said("standing").equals("bracket") && !said("standing").equals("moment-base");
    if (postIn.isEmpty() || heightIn.isEmpty() || !inTheGround) {
      return Optional.empty();
    }
    return worked(
        postIn.getAsDouble() - heightIn.getAsDouble(),
        "worked-embedment",
        "post",
        tape(postIn.getAsDouble()),
        "height",
        tape(heightIn.getAsDouble()));
  }

  private Optional<WorkedAnswer> bays() {
    int posts = pieces("posts").map(each -> each.count().orElse(0)).orElse(0);
    return posts >= LEAST_POSTS && posts % 2 == 0
        ? Optional.of(
            new WorkedAnswer(
                String.valueOf(posts / 2 - 1),
                sayings.say("worked-bays", "posts", String.valueOf(posts))))
        : Optional.empty();
  }

  private Optional<WorkedAnswer> bay() {
    OptionalDouble overIn = lengthIn("over-ends");
    Optional<Double> postIn = across("posts");
    if (overIn.isEmpty() || postIn.isEmpty() || count("base-bays") == 0) {
      return Optional.empty();
    }
    return worked(
        (overIn.getAsDouble() - postIn.get()) / count("base-bays"),
        "worked-bay",
        "over",
        tape(overIn.getAsDouble()),
        "post",
        tape(postIn.get()),
        "bays",
        said("base-bays"));
  }

  private Optional<WorkedAnswer> rowSpacing() {
    OptionalDouble wideIn = lengthIn("wide");
    Optional<Double> postIn = across("posts");
    if (wideIn.isEmpty() || postIn.isEmpty()) {
      return Optional.empty();
    }
    boolean clear = said("wide-by").equals("clear");
    return worked(
        wideIn.getAsDouble() + (clear ? postIn.get() : -postIn.get()),
        clear ? "worked-rows-clear" : "worked-rows-outside",
        "wide",
        tape(wideIn.getAsDouble()),
        "post",
        tape(postIn.get()));
  }

  /** A header in pieces says nothing of its overhang. */
  private Optional<WorkedAnswer> headerOverhang() {
    Optional<TimberPieces> headers = pieces("headers");
    OptionalDouble longIn = headers.map(TimberPieces::lengthIn).orElse(none());
    OptionalDouble bayIn = lengthIn("bay");
    Optional<Double> postIn = across("posts");
    int whole = said("header-style").equals("paired") ? LEAST_POSTS : 2;
    boolean inOne = headers.map(each -> each.count().orElse(whole) == whole).orElse(false);
    if (longIn.isEmpty() || bayIn.isEmpty() || postIn.isEmpty() || !inOne) {
      return Optional.empty();
    }
    double postsIn = bayIn.getAsDouble() * count("base-bays") + postIn.get();
    return worked(
        (longIn.getAsDouble() - postsIn) / 2,
        "worked-header-overhang",
        "header",
        tape(longIn.getAsDouble()),
        "posts",
        tape(postsIn));
  }

  private Optional<WorkedAnswer> crossbeamCount() {
    int pieces = pieces("crossbeams").map(each -> each.count().orElse(0)).orElse(0);
    boolean doubled = said("at-posts").equals("doubled");
    int places = pieces - (doubled ? count("base-bays") + 1 : 0);
    if (places < 2) {
      return Optional.empty();
    }
    return Optional.of(
        new WorkedAnswer(
            String.valueOf(places),
            sayings.say(
                doubled ? "worked-count-doubled" : "worked-count",
                "pieces",
                String.valueOf(pieces))));
  }

  private Optional<WorkedAnswer> crossbeamOverhang() {
    OptionalDouble longIn = pieces("crossbeams").map(TimberPieces::lengthIn).orElse(none());
    OptionalDouble rowsIn = lengthIn("row-spacing");
    Optional<Double> seatIn = seat();
    if (longIn.isEmpty() || rowsIn.isEmpty() || seatIn.isEmpty()) {
      return Optional.empty();
    }
    double outsideIn = rowsIn.getAsDouble() + seatIn.get();
    return worked(
        (longIn.getAsDouble() - outsideIn) / 2,
        "worked-crossbeam-overhang",
        "crossbeam",
        tape(longIn.getAsDouble()),
        "headers",
        tape(outsideIn));
  }

  /** Outer face to outer face of what carries the crossbeams on one row. */
  private Optional<Double> seat() {
    Optional<Double> plyIn = size("headers").map(SizeRow::thicknessIn);
    return said("header-style").equals("paired")
        ? plyIn.flatMap(each -> across("posts").map(postIn -> postIn + 2 * each))
        : plyIn;
  }

  /** How far apart the crossbeams are, or that their number does not go up in the bays. */
  Optional<String> spacing() {
    OptionalDouble bayIn = lengthIn("bay");
    OptionalDouble overhangIn = lengthIn("header-overhang");
    Optional<Double> postIn = across("posts");
    Optional<Double> beamIn = size("crossbeams").map(SizeRow::thicknessIn);
    int count = count("crossbeam-count");
    if (bayIn.isEmpty() || overhangIn.isEmpty() || postIn.isEmpty() || beamIn.isEmpty()) {
      return Optional.empty();
    }
    double reachIn = postIn.get() / 2 + overhangIn.getAsDouble() - beamIn.get() / 2;
    for (int perBay = 1; perBay < count; perBay++) {
      double spacingIn = bayIn.getAsDouble() / perBay;
      int past = (int) Math.max(0, Math.floor(reachIn / spacingIn));
      if (count("base-bays") * perBay + 1 + 2 * past == count) {
        return Optional.of(
            past == 0
                ? sayings.say("spacing", "spacing", tape(spacingIn))
                : sayings.say(
                    "spacing-past", "spacing", tape(spacingIn), "past", String.valueOf(past)));
      }
    }
    return Optional.of(
        sayings.say("uneven", "count", String.valueOf(count), "bays", said("base-bays")));
  }

  private Optional<WorkedAnswer> worked(double inches, String saying, String... blanks) {
    return inches < 0
        ? Optional.empty()
        : Optional.of(new WorkedAnswer(tape(inches), sayings.say(saying, blanks)));
  }

  private String tape(double inches) {
    return TapeText.of(inches, metric());
  }

  /** Whoever measures a post by the meter has a metric tape. */
  private boolean metric() {
    return TapeText.isMetric(said("height"));
  }

  private Optional<Double> across(String timber) {
    return size(timber).map(SizeRow::widthIn);
  }

  private Optional<SizeRow> size(String timber) {
    return pieces(timber)
        .flatMap(TimberPieces::size)
        .or(() -> answers.apply(timber + "-size"))
        .flatMap(tables.sizes()::find);
  }

  private Optional<TimberPieces> pieces(String timber) {
    return answers.apply(timber).map(TimberPieces::ofKept);
  }

  private OptionalDouble lengthIn(String question) {
    Optional<String> text = answers.apply(question);
    return text.isPresent()
        ? OptionalDouble.of(QuantityKind.LENGTH.parse(text.get()))
        : OptionalDouble.empty();
  }

  private int count(String question) {
    return answers.apply(question).map(Integer::parseInt).orElse(0);
  }

  private String said(String question) {
    return answers.apply(question).orElse("");
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }
}
