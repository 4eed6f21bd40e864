package org.scantling.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.engine.Engine;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.rulebase.RuleBase;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Grid;
import org.scantling.rulebook.Rulebook;

/** Tries thumb against calculation on every site of the grid, laid over one site file. */
final class ThumbGrid {
  private static final String FOLDER = "/org/scantling/agreement/";
  private static final List<String> FILES = List.of("site.yaml", "base.yaml");

  private final Workplace workplace;
  private final Map<Question, List<RuleNote>> thumbs = new EnumMap<>(Question.class);

  ThumbGrid(Optional<Path> houseRules, Rulebook book) {
    this.workplace = Workplace.of(houseRules);
    for (Question question : Question.values()) {
      thumbs.put(question, book.thumbs(question));
    }
  }

  /**
   * @param site a site file, or none for the one that comes with the program
   */
  Agreement over(Optional<String> site) {
    if (site.isPresent()) {
      return over(Path.of(site.get()));
    }
    try {
      Path folder = Files.createTempDirectory("scantling");
      try {
        for (String file : FILES) {
          copy(file, folder.resolve(file));
        }
        return over(folder.resolve(FILES.get(0)));
      } finally {
        for (String file : FILES) {
          Files.deleteIfExists(folder.resolve(file));
        }
        Files.delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void copy(String file, Path to) throws IOException {
    try (InputStream in = ThumbGrid.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException(FOLDER + file + " is not on the class path");
      }
      Files.copy(in, to);
    }
  }

  private Agreement over(Path site) {
    Engine engine = new Engine(RuleBase.load(), workplace.tables());
    List<Grid.Axis> axes = Grid.axes();
    Agreement agreement = new Agreement(axes);
    for (List<String> values : Grid.sites(axes)) {
      List<Setting> settings = new ArrayList<>();
      for (int axis = 0; axis < axes.size(); axis++) {
        settings.add(Setting.parse(axes.get(axis).path() + "=" + values.get(axis)));
      }
      Intake intake = workplace.read(site, settings);
      agreement.add(values, engine.thumbs(intake.site(), thumbs));
    }
    return agreement;
  }
}
