/**
 * Order: phases to a fixed point, what becomes of their findings, and the ways out that are tried
 * where they lead nowhere. Owns no trade number.
 *
 * <p>Entry point: {@link org.scantling.engine.Engine}.
 */
@NullMarked
package org.scantling.engine;

import org.jspecify.annotations.NullMarked;
