package org.scantling.confirm;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.loads.LoadCombination;

/** Which loads, lying how, work each check of a beam hardest. */
public final class BeamStory {
  private final List<BeamChecks> parts;
  private final Material material;

  /**
   * @param parts the beam as it runs, and in its pieces where it is cut
   * @param material the board that is checked for the whole
   */
  BeamStory(List<BeamChecks> parts, Material material) {
    this.parts = List.copyOf(parts);
    this.material = material;
  }

  /** The board that is checked: one of a pair. */
  public Material material() {
    return material;
  }

  /** Where a check is worked hardest in a combination; empty where nothing works it. */
  public Optional<BeamScene> hardest(BeamAsk ask, LoadCombination combination) {
    return parts.stream()
        .flatMap(part -> part.scenes(ask, combination, material))
        .filter(scene -> scene.ratio() > 0)
        .max(Comparator.comparingDouble(BeamScene::ratio));
  }
}
