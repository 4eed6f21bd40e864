package org.scantling.intake;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a key of an input file accepts; the reader and the JSON schema both follow it. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD})
@interface Entry {
  EntryKind kind() default EntryKind.TEXT;

  /** The words that are accepted, where the contract fixes them. */
  String[] words() default {};

  /** The table that owns the accepted words. */
  TableWords table() default TableWords.NONE;

  boolean required() default false;

  /** Whether leaving it out leaves something to assume; not where it is an exception. */
  boolean exception() default false;
}
