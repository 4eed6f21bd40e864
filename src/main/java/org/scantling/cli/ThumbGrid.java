package org.scantling.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.intake.Setting;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Grid;
import org.scantling.rulebook.Rulebook;

/** Tries thumb against calculation on every site of a grid, laid over one site file. */
final class ThumbGrid {
  private static final String FOLDER = "agreement";

  private final Workplace workplace;
  private final List<Grid.Axis> axes;
  private final Map<Question, List<RuleNote>> thumbs = new EnumMap<>(Question.class);

  ThumbGrid(Workplace workplace, Rulebook book, List<Grid.Axis> axes) {
    this.workplace = workplace;
    this.axes = axes;
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
    return ShippedFiles.read(FOLDER, this::over);
  }

  private Agreement over(Path site) {
    Agreement agreement = new Agreement(axes);
    for (List<String> values : Grid.sites(axes)) {
      List<Setting> settings = new ArrayList<>();
      for (int axis = 0; axis < axes.size(); axis++) {
        settings.add(Setting.parse(axes.get(axis).path() + "=" + values.get(axis)));
      }
      agreement.add(values, workplace.thumbs(workplace.read(site, settings), thumbs));
    }
    return agreement;
  }
}
