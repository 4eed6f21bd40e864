package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.scantling.design.WayOfBuilding;
import org.scantling.reasons.Candidate;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Fact;
import org.scantling.reasons.OptionCheck;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.tables.JointRow;

/**
 * Lays out, for one phase, the facts that its rules read and the options that its questions have.
 */
final class Desk {
  private final Job job;
  private final Answers answers;
  private final Works works;
  private final Bench bench;
  private final List<Fact> facts = new ArrayList<>();
  private final Map<Question, List<String>> options = new EnumMap<>(Question.class);

  Desk(Job job, Answers answers, Phase phase) {
    this.job = job;
    this.answers = answers;
    this.bench = job.bench(answers);
    this.works = new Works(job, bench);
    facts.addAll(works.facts(phase));
    questions(phase).forEach(this::layOut);
  }

  List<Fact> facts() {
    return facts;
  }

  List<String> options(Question question) {
    return options.getOrDefault(question, List.of());
  }

  /** The questions of a phase that this structure has at all. */
  List<Question> questions(Phase phase) {
    List<Question> asked = new ArrayList<>();
    for (Question question : Question.values()) {
      if (question.phase() == phase && applies(question)) {
        asked.add(question);
      }
    }
    return asked;
  }

  private boolean applies(Question question) {
    return switch (question) {
      case RAIL_SIZE, RAIL_HEIGHT, RAIL_NOTCH, PICKETS, RAIL_JOINT -> job.railed();
      case BRACE_SIZE, BRACE_LEG, BRACE_JOINT ->
          answers.has(BRACING) && answers.option(BRACING).equals(WayOfBuilding.KNEE_BRACES);
      case HEADER_SPLICE -> HeaderCuts.of(job, answers).needed();
      default -> true;
    };
  }

  private void layOut(Question question) {
    switch (question) {
      case BAYS -> parts(question, new Divisions(job, answers).bays());
      case CROSSBEAMS_PER_BAY -> parts(question, new Divisions(job, answers).crossbeamsPerBay());
      case CROSSBEAM_SIZE, HEADER_SIZE, POST_SIZE, RAIL_SIZE, BRACE_SIZE -> sizes(question);
      case CROSSBEAM_JOINT, HEADER_JOINT, RAIL_JOINT, BRACE_JOINT -> joints(question);
      case HEADER_SPLICE -> cuts(question);
      default -> {
        if (!question.numeric()) {
          plain(question);
        }
      }
    }
  }

  private void parts(Question question, List<Candidate.Parts> parts) {
    facts.addAll(parts);
    options.put(question, parts.stream().map(Candidate.Parts::option).toList());
  }

  private void cuts(Question question) {
    List<Candidate.Cut> ways = HeaderCuts.of(job, answers).ways();
    facts.addAll(ways);
    options.put(question, ways.stream().map(Candidate.Cut::option).toList());
  }

  private void plain(Question question) {
    List<String> words = job.words(question);
    options.put(question, words);
    words.forEach(word -> facts.add(new Candidate.Plain(question, word)));
  }

  private void joints(Question question) {
    JointBench joints = new JointBench(bench);
    List<String> ways = new ArrayList<>();
    for (JointRow row : job.tables().joints().rows()) {
      if (row.question() == question && row.fits(answers.option(HEADER_STYLE))) {
        ways.add(row.id());
        facts.add(new Candidate.Plain(question, row.id()));
        for (Checked checked : joints.checks(row)) {
          facts.add(new OptionCheck(question, row.id(), checked));
        }
      }
    }
    options.put(question, ways);
  }

  private void sizes(Question question) {
    List<String> offered = tried(question);
    for (String option : offered) {
      facts.add(job.stock().candidate(question, option));
      if (bench.material(option).isEmpty()) {
        facts.add(new Candidate.Ungraded(question, option));
      }
      for (Checked checked : bench.checks(question, option)) {
        facts.add(new OptionCheck(question, option, checked));
      }
    }
    options.put(question, offered);
  }

  /** Every size that the yard sells, or the one that is given. */
  private List<String> tried(Question question) {
    boolean paired = answers.option(HEADER_STYLE).equals(WayOfBuilding.PAIRED);
    return job.fixed(question, answers)
        .map(given -> List.of(given.option()))
        .orElseGet(() -> job.offer().sizes(question, paired));
  }
}
