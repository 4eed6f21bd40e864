package org.scantling.intake;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.scantling.quantity.Length;
import org.scantling.quantity.QuantityException;
import org.scantling.quantity.QuantityKind;

/**
 * Bays that a file tells one by one say by themselves how long they are together, or how long the
 * longest is. Where the file says that too, it agrees to a sixteenth.
 *
 * @param group that holds the bays
 * @param beside the key that the bays make needless
 * @param longest true where that key holds the longest bay, false for all of them together
 */
record ListedBays(String group, String beside, boolean longest) {
  static final ListedBays OF_SITE = new ListedBays("walkway", "length", false);
  static final ListedBays OF_DESIGN = new ListedBays("posts", "bay", true);

  private static final String BAYS = "bays";
  private static final double SIXTEENTH_IN = 1.0 / 16;
  private static final double SLACK_IN = 1e-6;

  /** The file with what the bays say by themselves, where it does not say it. */
  Node.Group filled(Node.Group file) {
    if (!(file.at(group) instanceof Node.Group there) || there.members().containsKey(beside)) {
      return file;
    }
    Optional<Node.Scalar> worked = listed(there).flatMap(this::worked);
    if (worked.isEmpty()) {
      return file;
    }
    Map<String, Node.Member> inner = new LinkedHashMap<>(there.members());
    inner.put(beside, new Node.Member(worked.get().origin(), worked.get()));
    Map<String, Node.Member> outer = new LinkedHashMap<>(file.members());
    outer.computeIfPresent(
        group, (key, old) -> new Node.Member(old.key(), new Node.Group(there.origin(), inner)));
    return new Node.Group(file.origin(), outer);
  }

  /** Adds a problem where the two do not agree. */
  void check(Node.Group file, Readings said, Problems problems) {
    String path = group + "." + BAYS;
    List<Double> baysIn = said.numbers(path);
    if (baysIn.isEmpty() || said.maybeNumber(besidePath()).isEmpty()) {
      return;
    }
    double workedIn = worked(baysIn.stream().mapToDouble(Double::doubleValue));
    if (file.at(group) instanceof Node.Group there
        && Math.abs(workedIn - said.number(besidePath())) > SIXTEENTH_IN + SLACK_IN) {
      problems.add(
          there
              .originOf(beside)
              .problem(
                  besidePath(),
                  said.original(besidePath()),
                  ProblemPhrases.say(
                      longest ? "accepted.bays-longest" : "accepted.bays-together",
                      "length",
                      Length.feetAndInches(workedIn)))
              .withAdvice(ProblemPhrases.maybe(Length.feetAndInches(workedIn))));
    }
  }

  private double worked(DoubleStream baysIn) {
    return longest ? baysIn.max().orElseThrow() : baysIn.sum();
  }

  private Optional<Node.Scalar> worked(Node.Items bays) {
    try {
      double workedIn =
          worked(
              IntStream.range(0, bays.items().size())
                  .mapToDouble(bay -> QuantityKind.LENGTH.parse(text(bays.items().get(bay)))));
      return Optional.of(
          new Node.Scalar(
              bays.origin(), WrittenAmount.of(workedIn, QuantityKind.LENGTH), Node.Form.TEXT));
    } catch (QuantityException unclear) {
      // The bays themselves are refused, each for what is wrong with it.
      return Optional.empty();
    }
  }

  private static String text(Node node) {
    return node instanceof Node.Scalar value ? value.text() : "";
  }

  private static Optional<Node.Items> listed(Node.Group there) {
    return Optional.ofNullable(there.at(BAYS))
        .flatMap(ListedBays::each)
        .filter(bays -> !bays.items().isEmpty());
  }

  /** True for a key that bays told one by one make needless, whether they can be read or not. */
  static boolean makeNeedless(String path, Node.Group group) {
    boolean beside = path.equals(OF_SITE.besidePath()) || path.equals(OF_DESIGN.besidePath());
    return beside && Optional.ofNullable(group.at(BAYS)).flatMap(ListedBays::each).isPresent();
  }

  private String besidePath() {
    return group + "." + beside;
  }

  /** The bays of a list, or of words with commas; empty for anything else, such as a number. */
  static Optional<Node.Items> each(Node node) {
    if (node instanceof Node.Items bays) {
      return Optional.of(bays);
    }
    return node instanceof Node.Scalar words && words.text().contains(",")
        ? Optional.of(
            new Node.Items(
                words.origin(),
                Arrays.stream(words.text().split(",", -1))
                    .<Node>map(
                        each -> new Node.Scalar(words.origin(), each.strip(), Node.Form.TEXT))
                    .toList()))
        : Optional.empty();
  }
}
