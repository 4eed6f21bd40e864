package org.scantling.print;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.design.BaseDesign;
import org.scantling.design.BaseDesign.Braces;
import org.scantling.design.BaseDesign.Crossbeams;
import org.scantling.design.BaseDesign.Headers;
import org.scantling.design.BaseDesign.Posts;
import org.scantling.design.BaseDesign.SidePanels;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.design.Structure;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;

/** A proposal as a design, so that it can be written as a design file and checked again. */
public final class ProposedDesign {
  private final Proposal proposal;
  private final BaseDesign base;
  private final Structure structure;

  private ProposedDesign(Proposal proposal, BaseDesign base) {
    this.proposal = proposal;
    this.base = base;
    if (!(proposal.result() instanceof Proposal.Result.Proposed done)) {
      throw new IllegalArgumentException(
          "'" + proposal.title() + "' needs an engineer, so there is no design to write");
    }
    this.structure = done.structure();
  }

  /**
   * The design, with the tails cut as the base has them.
   *
   * @param base the design that was adapted
   * @throws IllegalArgumentException when the proposal holds no structure
   */
  public static BaseDesign of(Proposal proposal, BaseDesign base) {
    return new ProposedDesign(proposal, base).design();
  }

  private BaseDesign design() {
    Geometry geometry = structure.geometry();
    return new BaseDesign(
        proposal.title(),
        Optional.empty(),
        posts(geometry),
        new Headers(
            WayOfBuilding.headers(geometry.headers().paired()),
            size("header"),
            geometry.headers().overhangIn(),
            geometry.headers().notchIn()),
        new Crossbeams(
            size("crossbeam"),
            geometry.crossbeamCount(),
            geometry.crossbeams().overhangIn(),
            geometry.crossbeams().notchIn(),
            base.crossbeams().endCut(),
            geometry.crossbeams().doubled()
                ? WayOfBuilding.DOUBLED_AT_POSTS
                : WayOfBuilding.SINGLE_AT_POSTS),
        panels(),
        braces(),
        Optional.of(materials()));
  }

  /** Species and grade of all, and of the roles that are of others. */
  private Site.Materials materials() {
    Optional<String> species = word(Question.SPECIES);
    Optional<String> grade = word(Question.GRADE);
    Map<String, Site.Timber> byRole = new LinkedHashMap<>();
    for (TimberRole role : TimberRole.values()) {
      structure.members().stream()
          .filter(member -> member.role().equals(role.member()))
          .map(
              member ->
                  new Site.Timber(
                      Optional.of(member.species()).filter(it -> !species.equals(Optional.of(it))),
                      Optional.of(member.grade()).filter(it -> !grade.equals(Optional.of(it)))))
          .filter(timber -> timber.species().isPresent() || timber.grade().isPresent())
          .forEach(timber -> byRole.put(role.key(), timber));
    }
    return new Site.Materials(species, grade, Optional.empty(), byRole);
  }

  private Posts posts(Geometry geometry) {
    Structure.Footings footings = structure.footings();
    return new Posts(
        size("post"),
        geometry.plan().rowSpacingIn(),
        geometry.plan().along(),
        geometry.posts().heightIn(),
        footings.depthIn(),
        footings.kind(),
        Optional.of(footings.backfill()),
        OptionalDouble.of(footings.diameterIn()));
  }

  private Optional<SidePanels> panels() {
    return word(Question.RAIL_SIZE)
        .map(
            rail ->
                new SidePanels(
                    rail,
                    number(Question.RAIL_HEIGHT).orElseThrow(),
                    (int) Math.round(number(Question.PICKETS).orElse(0.0))));
  }

  private Optional<Braces> braces() {
    return word(Question.BRACE_SIZE)
        .map(size -> new Braces(size, number(Question.BRACE_LEG).orElseThrow()));
  }

  /** The nominal size of one ply. */
  private String size(String role) {
    return structure.members().stream()
        .filter(member -> member.role().equals(role))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the structure has no " + role))
        .size();
  }

  private Optional<String> word(Question question) {
    return proposal
        .decision(question)
        .map(Decision::proposed)
        .filter(Outcome.Word.class::isInstance)
        .map(outcome -> ((Outcome.Word) outcome).text());
  }

  private Optional<Double> number(Question question) {
    return proposal
        .decision(question)
        .map(Decision::proposed)
        .filter(Outcome.Amount.class::isInstance)
        .map(outcome -> ((Outcome.Amount) outcome).measure().amount());
  }
}
