/**
 * From the files that people write to the nouns of the program: reads site and design files (YAML
 * or JSON), refuses what is unclear, and reports all problems of a file together.
 *
 * <p>The shape records {@code SiteFile} and {@code DesignFile} say which keys exist; the reader,
 * the JSON schemas and the writer all follow them. Words that belong to tables come in as a {@link
 * org.scantling.intake.Vocabulary}. Nothing is filled in silently: what a file leaves out is named
 * in {@link org.scantling.intake.Intake}.
 *
 * <p>May depend on: quantity, design, reasons, sayings, tables. Entry points: {@link
 * org.scantling.intake.SiteReader}, {@link org.scantling.intake.DesignReader}, {@link
 * org.scantling.intake.DesignWriter}.
 */
@NullMarked
package org.scantling.intake;

import org.jspecify.annotations.NullMarked;
