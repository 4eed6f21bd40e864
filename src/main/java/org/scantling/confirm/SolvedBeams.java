package org.scantling.confirm;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scantling.mechanics.ContinuousBeam;

/**
 * Beams that were solved already: the same beam under the same loads is solved once, however many
 * sizes, posts, holes and joints ask for it.
 *
 * <p>The key is all that a solution depends on, by value: the length, the supports and every load.
 * Only the last few are kept, because a long header is a lot to remember. Not safe to share between
 * threads; one run of the engine owns one.
 */
public final class SolvedBeams {
  private static final int MOST = 32;

  private final Map<Key, LoadedBeam> solved =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, LoadedBeam> eldest) {
          return size() > MOST;
        }
      };

  private record Key(double lengthIn, List<Double> supportsIn, BeamLoads loads) {}

  LoadedBeam of(double lengthIn, double[] supportsIn, BeamLoads loads) {
    List<Double> supports = Arrays.stream(supportsIn).boxed().toList();
    Key key = new Key(lengthIn, supports, loads);
    LoadedBeam beam = solved.get(key);
    if (beam == null) {
      beam = new LoadedBeam(ContinuousBeam.of(lengthIn, supportsIn), loads);
      solved.put(key, beam);
    }
    return beam;
  }
}
