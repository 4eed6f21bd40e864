package org.scantling.design;

/**
 * Something in a design that cannot be, whatever the site.
 *
 * @param field path of the design file, such as {@code crossbeams.notch}
 * @param found what stands there
 * @param accepted what would be accepted, as it follows "must be"
 */
public record ValidationError(String field, String found, String accepted) {}
