/**
 * Proposals and explanations as text, Markdown and JSON: pure functions, no files and no streams.
 *
 * <p>A page is built once as blocks and then printed as text or as Markdown.
 *
 * <p>May depend on: quantity, design, reasons, sayings, tables, words. Entry points: {@link
 * org.scantling.print.ProposalText}, {@link org.scantling.print.ProposalMarkdown}, {@link
 * org.scantling.print.ProposalJson}, {@link org.scantling.print.WhyText}, {@link
 * org.scantling.print.ReviewText}.
 */
@NullMarked
package org.scantling.print;

import org.jspecify.annotations.NullMarked;
