package org.scantling.confirm;

import java.util.List;
import java.util.Optional;
import org.scantling.loads.LoadCombination;

/** Which loads, lying how, work each check of a beam hardest. */
public final class BeamStory {
  private static final double LAST_BITS = 1e-9;

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

  /**
   * Where a check is worked hardest in a combination, first of those that work it alike; empty
   * where nothing works it.
   */
  public Optional<BeamScene> hardest(BeamAsk ask, LoadCombination combination) {
    return parts.stream()
        .flatMap(part -> part.scenes(ask, combination, material))
        .filter(scene -> scene.ratio() > 0)
        .reduce((one, next) -> next.ratio() > one.ratio() * (1 + LAST_BITS) ? next : one);
  }
}
