package org.scantling.spans;

/** A species and a grade, by their keys. */
public record TimberGrade(String species, String grade) {}
