package org.scantling.confirm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.scantling.mechanics.ContinuousBeam;

/**
 * Beams that were solved already: the same beam under the same loads is solved once, however many
 * sizes, posts, holes and joints ask for it.
 *
 * <p>The key is all that a solution depends on, in numbers: the length, the supports, the cuts over
 * them and every load. Only the last few are kept, because a long header is a lot to remember. Not
 * safe to share between threads; one run of the engine owns one.
 */
public final class SolvedBeams {
  private static final int MOST = 32;

  private final Map<List<Double>, LoadedBeam> solved =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Double>, LoadedBeam> eldest) {
          return size() > MOST;
        }
      };

  LoadedBeam of(double lengthIn, double[] supportsIn, BeamLoads loads) {
    return of(lengthIn, supportsIn, List.of(), loads);
  }

  /**
   * The same in pieces.
   *
   * @param cuts inner supports over which two pieces meet, counted from 0
   */
  LoadedBeam of(double lengthIn, double[] supportsIn, List<Integer> cuts, BeamLoads loads) {
    List<Double> key = new ArrayList<>();
    key.add(lengthIn);
    key.add((double) supportsIn.length);
    for (double supportIn : supportsIn) {
      key.add(supportIn);
    }
    key.add((double) cuts.size());
    cuts.forEach(cut -> key.add((double) cut));
    key.addAll(loads.numbers());
    LoadedBeam beam = solved.get(key);
    if (beam == null) {
      ContinuousBeam bare = ContinuousBeam.of(lengthIn, supportsIn);
      beam = new LoadedBeam(cuts.isEmpty() ? bare : bare.cutOver(Set.copyOf(cuts)), loads);
      solved.put(key, beam);
    }
    return beam;
  }
}
