/**
 * Order: phases to a fixed point, the resolver, and the alternatives that are tried. Owns no trade
 * number.
 *
 * <p>May depend on: everything but cli, shop, drawing and sheets. Entry point: {@link
 * org.scantling.engine.Engine}.
 */
package org.scantling.engine;
