package org.scantling.intake;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.Bays;
import org.scantling.design.WayOfBuilding;
import org.scantling.quantity.Length;
import org.scantling.tables.SizeRow;

/**
 * What a base file says by the length of a piece instead of by what it projects or by how deep it
 * stands: a header of 20 ft instead of its overhang. Where it says both they agree to a sixteenth.
 */
final class PieceLengths {
  private static final double SIXTEENTH_IN = 1.0 / 16;
  private static final double SLACK_IN = 1e-6;

  private final Node.Group file;
  private final Readings said;
  private final TradeWords trade;
  private final Problems problems;

  PieceLengths(Node.Group file, Readings said, TradeWords trade, Problems problems) {
    this.file = file;
    this.said = said;
    this.trade = trade;
    this.problems = problems;
  }

  /** Works out what is not said, or says what is missing or does not agree. */
  void work() {
    take("headers", "overhang", headerWithoutTails(), 2);
    take("crossbeams", "overhang", crossbeamWithoutTails(), 2);
    take("posts", "embedment", postAboveGround(), 1);
  }

  /** First to last post and half a post at each end. */
  private OptionalDouble headerWithoutTails() {
    Optional<Bays> bays = DesignAssembly.bays(said);
    Optional<SizeRow> post = size("posts.size");
    return bays.isPresent() && post.isPresent()
        ? OptionalDouble.of(bays.get().overallIn() + post.get().thicknessIn())
        : OptionalDouble.empty();
  }

  /** Row to row and half of what carries it on each side. */
  private OptionalDouble crossbeamWithoutTails() {
    OptionalDouble rows = said.maybeNumber("posts.row-spacing");
    Optional<SizeRow> post = size("posts.size");
    Optional<SizeRow> header = size("headers.size");
    Optional<String> style = said.maybeWord("headers.style");
    if (rows.isEmpty() || post.isEmpty() || header.isEmpty() || style.isEmpty()) {
      return OptionalDouble.empty();
    }
    double boardIn = header.get().thicknessIn();
    double seatIn =
        style.get().equals(WayOfBuilding.PAIRED)
            ? post.get().thicknessIn() + boardIn + boardIn
            : boardIn;
    return OptionalDouble.of(rows.getAsDouble() + seatIn);
  }

  private OptionalDouble postAboveGround() {
    return said.maybeNumber("posts.height");
  }

  private Optional<SizeRow> size(String path) {
    return said.maybeWord(path).flatMap(trade::size);
  }

  private void take(String group, String key, OptionalDouble withoutIn, int ends) {
    String path = group + "." + key;
    String lengthPath = group + ".length";
    OptionalDouble length = said.maybeNumber(lengthPath);
    boolean written = stands(group, key);
    if (length.isEmpty()) {
      if (!written && !stands(group, "length") && file.at(group) instanceof Node.Group there) {
        problems.add(
            there
                .origin()
                .lacking(
                    path,
                    ProblemPhrases.say("missing.length", "key", key),
                    EntryKind.LENGTH.accepted()));
      }
      return;
    }
    if (withoutIn.isPresent()) {
      double workedIn = (length.getAsDouble() - withoutIn.getAsDouble()) / ends;
      hold(path, lengthPath, workedIn, withoutIn.getAsDouble());
    }
  }

  private void hold(String path, String lengthPath, double workedIn, double withoutIn) {
    OptionalDouble given = said.maybeNumber(path);
    Bounds.Range range = Bounds.ofTheProgram().range(path);
    if (!range.holds(workedIn)) {
      problems.add(
          origin(lengthPath)
              .problem(
                  lengthPath,
                  said.original(lengthPath),
                  ProblemPhrases.say(
                      "accepted.longer", "length", Length.feetAndInches(withoutIn), "key", path)));
    } else if (given.isEmpty()) {
      said.putNumber(path, workedIn, Length.inches(workedIn));
    } else if (Math.abs(given.getAsDouble() - workedIn) > SIXTEENTH_IN + SLACK_IN) {
      problems.add(
          origin(path)
              .problem(
                  path,
                  ProblemPhrases.say(
                      "found.beside-length",
                      "found",
                      said.original(path),
                      "length",
                      said.original(lengthPath)),
                  ProblemPhrases.say("accepted.worked", "worked", Length.inches(workedIn)))
              .withAdvice(ProblemPhrases.maybe(Length.inches(workedIn))));
    }
  }

  private boolean stands(String group, String key) {
    return file.at(group) instanceof Node.Group there && there.members().containsKey(key);
  }

  private Origin origin(String path) {
    int dot = path.indexOf('.');
    return file.at(path.substring(0, dot)) instanceof Node.Group there
        ? there.originOf(path.substring(dot + 1))
        : file.origin();
  }
}
