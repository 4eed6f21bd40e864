/**
 * Order: phases to a fixed point, the resolver, and the alternatives that are tried. Owns no trade
 * number.
 *
 * <p>May depend on: the kernels, confirm, rulebase and what they see. Entry point: {@link
 * org.scantling.engine.Engine}.
 */
package org.scantling.engine;
