/**
 * The command line: one class a command, thin; one place where an exception becomes a sentence and
 * an exit status.
 *
 * <p>May depend on: everything. Entry point: {@link org.scantling.cli.Main}.
 */
@NullMarked
package org.scantling.cli;

import org.jspecify.annotations.NullMarked;
