package org.scantling.reasons;

import java.util.Optional;

/** A part of the structure that may be of another species or grade than the rest. */
public enum TimberRole {
  POSTS("posts", Question.POST_SIZE, Question.POST_SPECIES, Question.POST_GRADE),
  HEADERS("headers", Question.HEADER_SIZE, Question.HEADER_SPECIES, Question.HEADER_GRADE),
  CROSSBEAMS(
      "crossbeams", Question.CROSSBEAM_SIZE, Question.CROSSBEAM_SPECIES, Question.CROSSBEAM_GRADE),
  RAILS("rails", Question.RAIL_SIZE, Question.RAIL_SPECIES, Question.RAIL_GRADE),
  BRACES("braces", Question.BRACE_SIZE, Question.BRACE_SPECIES, Question.BRACE_GRADE);

  private final String key;
  private final Question size;
  private final Question species;
  private final Question grade;

  TimberRole(String key, Question size, Question species, Question grade) {
    this.key = key;
    this.size = size;
    this.species = species;
    this.grade = grade;
  }

  /** As the site file calls it. */
  public String key() {
    return key;
  }

  /** As members and checks call it. */
  public String member() {
    return size.subject();
  }

  public Question size() {
    return size;
  }

  public Question species() {
    return species;
  }

  public Question grade() {
    return grade;
  }

  /** The role whose size, species or grade a question is about. */
  public static Optional<TimberRole> of(Question question) {
    for (TimberRole role : values()) {
      if (question == role.size || question == role.species || question == role.grade) {
        return Optional.of(role);
      }
    }
    return Optional.empty();
  }
}
