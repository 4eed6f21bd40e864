/**
 * The sheets of a proposal: for the client, for whoever builds it and for the engineer, each a page
 * that works by itself.
 *
 * <p>Takes what is said from {@code print} and {@code shop} and what is drawn from {@code drawing},
 * and works nothing out. A sheet is a list of parts; writers make a file of them.
 *
 * <p>May depend on: quantity, design, reasons, sayings, tables, words, print, shop, drawing. Entry
 * points: {@link org.scantling.sheets.SheetKind}, {@link org.scantling.sheets.HtmlWriter}.
 */
@NullMarked
package org.scantling.sheets;

import org.jspecify.annotations.NullMarked;
