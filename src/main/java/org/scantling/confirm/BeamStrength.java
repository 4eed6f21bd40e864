package org.scantling.confirm;

import java.util.Optional;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bearing;
import org.scantling.timber.Bending;
import org.scantling.timber.NotchedShear;
import org.scantling.timber.Shear;

/**
 * How hard one demand works a beam.
 *
 * @param stability of rolling over
 * @param sagging between the supports
 * @param hogging over them, on the depth that notch and sinks leave
 * @param shear in the whole section
 * @param notched shear beside the notch; none where nothing is cut
 * @param seat pressure where the beam runs on over its support; none where bolts carry it
 * @param end pressure under the end of a piece; none where the beam is whole
 */
record BeamStrength(
    BeamStability stability,
    Bending sagging,
    Bending hogging,
    Shear shear,
    Optional<NotchedShear> notched,
    Optional<Bearing> seat,
    Optional<Bearing> end) {}
