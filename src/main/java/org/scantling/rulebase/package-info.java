/**
 * The compiled rule base, one knowledge base a phase, and the audit that its findings tell the
 * truth about what was read. The only package that imports Drools.
 *
 * <p>May depend on: quantity, design, reasons. Entry point: {@link
 * org.scantling.rulebase.RuleBase}.
 */
@NullMarked
package org.scantling.rulebase;

import org.jspecify.annotations.NullMarked;
