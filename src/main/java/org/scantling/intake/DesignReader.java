package org.scantling.intake;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.design.BaseDesign;
import org.scantling.design.ValidationError;

/** Reads a design file: the proven base, or a fixed design that is to be checked. */
public final class DesignReader {
  private final Vocabulary vocabulary;

  public DesignReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /**
   * Reads a design file by itself.
   *
   * @param file a YAML or JSON file
   * @return the design and what the file left out
   * @throws IntakeException with all problems of the file
   */
  public DesignIntake read(Path file) {
    Problems problems = new Problems();
    Optional<DesignIntake> design = read(file, file.toString(), whatever -> List.of(), problems);
    problems.throwIfAny();
    return design.orElseThrow();
  }

  /**
   * Reads a design file and holds it against what somebody else knows to be impossible.
   *
   * @param file a YAML or JSON file
   * @param validationErrors what of a design cannot be
   * @return the design and what the file left out
   * @throws IntakeException with all problems of the file, else with all of these, each on its line
   */
  public DesignIntake read(
      Path file, Function<BaseDesign, List<ValidationError>> validationErrors) {
    Problems problems = new Problems();
    SourceText source = SourceFile.read(file, file.toString(), problems);
    Optional<DesignIntake> design = fitting(source, validationErrors, problems);
    problems.throwIfAny();
    return design.orElseThrow();
  }

  /** Validation errors are looked for only where the file itself is in order. */
  private Optional<DesignIntake> fitting(
      SourceText source,
      Function<BaseDesign, List<ValidationError>> validationErrors,
      Problems problems) {
    Optional<DesignIntake> design = read(source, problems);
    if (design.isPresent() && problems.none()) {
      Node.Group written = TreeReader.readGroup(source, problems);
      for (ValidationError error : validationErrors.apply(design.get().design())) {
        problems.add(
            origin(written, error.field()).problem(error.field(), error.found(), error.accepted()));
      }
    }
    return design;
  }

  /** Where a field stands, or the group that lacks it. */
  private static Origin origin(Node.Group file, String field) {
    Node.Group group = file;
    Origin origin = file.origin();
    for (String key : field.split("\\.")) {
      Node.Member member = group.members().get(key);
      if (member == null) {
        return origin;
      }
      origin = member.value().origin();
      if (member.value() instanceof Node.Group below) {
        group = below;
      }
    }
    return origin;
  }

  /**
   * Reads a design from a text that is in memory already, and holds it against what somebody else
   * knows to be impossible.
   *
   * @param source the text with the name that problems show
   * @param validationErrors what of a design cannot be
   * @return the design and what the text left out
   * @throws IntakeException with all problems of the text, else with all of these
   */
  public DesignIntake read(
      SourceText source, Function<BaseDesign, List<ValidationError>> validationErrors) {
    Problems problems = new Problems();
    Optional<DesignIntake> design = fitting(source, validationErrors, problems);
    problems.throwIfAny();
    return design.orElseThrow();
  }

  /**
   * Reads a design from a text that is in memory already.
   *
   * @param source the text with the name that problems show
   * @return the design and what the text left out
   * @throws IntakeException with all problems of the text
   */
  public DesignIntake read(SourceText source) {
    return read(source, List.of());
  }

  /**
   * The same with some of its values overridden.
   *
   * @param settings values that replace those of the text, in this order
   */
  public DesignIntake read(SourceText source, List<Setting> settings) {
    Problems problems = new Problems();
    Optional<DesignIntake> design =
        read(
            SettingPatch.apply(TreeReader.readGroup(source, problems), settings, problems),
            problems);
    problems.throwIfAny();
    return design.orElseThrow();
  }

  /** Reads a design and collects its problems under the given name; empty if there were any. */
  Optional<DesignIntake> read(
      Path file,
      String name,
      Function<BaseDesign, List<ValidationError>> validationErrors,
      Problems problems) {
    Problems own = new Problems();
    try {
      Optional<DesignIntake> design =
          fitting(SourceFile.read(file, name, own), validationErrors, own);
      problems.addAll(own);
      return design;
    } catch (IntakeException unreadable) {
      problems.addAll(unreadable.problems());
      return Optional.empty();
    }
  }

  private Optional<DesignIntake> read(SourceText source, Problems problems) {
    return read(TreeReader.readGroup(source, problems), problems);
  }

  private Optional<DesignIntake> read(Node.Group file, Problems problems) {
    ShapeReader shapes = new ShapeReader(vocabulary, problems);
    Node.Group placed = ListedBays.OF_DESIGN.filled(shapes.repaired(DesignFile.class, file));
    Readings said = shapes.read(DesignFile.class, placed);
    ListedBays.OF_DESIGN.check(placed, said, problems);
    new PieceLengths(placed, said, vocabulary.trade(), problems).work();
    if (!problems.none()) {
      return Optional.empty();
    }
    return Optional.of(
        new DesignIntake(new DesignAssembly(said).design(), said.absent(), said.originals()));
  }
}
