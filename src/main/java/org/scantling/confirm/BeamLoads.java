package org.scantling.confirm;

import java.util.List;
import org.scantling.mechanics.BeamLoad;

/**
 * The loads on one beam, by kind, without its own weight.
 *
 * @param dead weight of what it carries
 * @param vines climbers
 * @param liveBySpan live load on each span and overhang by itself, from the left
 * @param people one person, at each place worth trying
 * @param snowBySpan snow on each span and overhang by itself, from the left
 * @param windDown wind pressing down, strength level
 * @param windUp wind lifting, strength level
 */
record BeamLoads(
    List<BeamLoad> dead,
    List<BeamLoad> vines,
    List<List<BeamLoad>> liveBySpan,
    List<BeamLoad> people,
    List<List<BeamLoad>> snowBySpan,
    List<BeamLoad> windDown,
    List<BeamLoad> windUp) {}
