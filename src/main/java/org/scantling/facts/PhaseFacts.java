package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.Grading;
import org.scantling.candidates.HeaderCuts;
import org.scantling.candidates.JointChecks;
import org.scantling.design.WayOfBuilding;
import org.scantling.problem.DesignProblem;
import org.scantling.problem.Detail;
import org.scantling.reasons.Candidate;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Fact;
import org.scantling.reasons.GradeByRole;
import org.scantling.reasons.OptionCheck;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.TimberRole;
import org.scantling.rulebase.Fired;
import org.scantling.tables.JointRow;

/**
 * Lays out, for one phase, the facts that its rules read and the options that its questions have.
 */
public final class PhaseFacts {
  private final DesignProblem problem;
  private final Answers answers;
  private final DerivedQuantities derived;
  private final CheckContext context;
  private final List<Fact> facts = new ArrayList<>();
  private final Map<Question, List<String>> options = new EnumMap<>(Question.class);
  private final AskedQuestions asked;
  private final Detail detail;
  private final LeftOut leftOut = new LeftOut();
  private final Map<Question, String> floors;
  private final PutOffChecks putOff = new PutOffChecks();

  /**
   * @param floors sizes below which the answers will not go
   * @param detail where it is only the answers, sizes and joints are laid out from the smallest up
   *     to the first whose checks pass, and no further; and of a size that cannot be the answer no
   *     more checks are worked than tell that
   */
  public PhaseFacts(
      DesignProblem problem,
      Answers answers,
      Phase phase,
      Map<Question, String> floors,
      Detail detail) {
    this.problem = problem;
    this.answers = answers;
    this.floors = floors;
    this.detail = detail;
    this.context = problem.context(answers);
    this.asked = new AskedQuestions(problem, answers, context);
    this.derived = new DerivedQuantities(problem, context);
    facts.addAll(derived.facts(phase));
    questions(phase).forEach(this::layOut);
  }

  public List<Fact> facts() {
    return facts;
  }

  public List<String> options(Question question) {
    return options.getOrDefault(question, List.of());
  }

  /** The larger sizes and stronger joints that were not laid out. */
  public LeftOut leftOut() {
    return leftOut;
  }

  /** The questions of a phase that this structure has at all. */
  public List<Question> questions(Phase phase) {
    return asked.of(phase);
  }

  private void layOut(Question question) {
    switch (question) {
      case BAYS -> parts(question, new Divisions(problem, answers).bays());
      case CROSSBEAMS_PER_BAY ->
          parts(question, new Divisions(problem, answers).crossbeamsPerBay());
      case CROSSBEAM_SIZE, HEADER_SIZE, POST_SIZE, RAIL_SIZE, BRACE_SIZE -> sizes(question);
      case CROSSBEAM_JOINT, HEADER_JOINT, RAIL_JOINT, BRACE_JOINT, HEADER_STEP, BASE_JOINT ->
          joints(question);
      case HEADER_SPLICE -> cuts(question);
      case CROSSBEAM_BLOCKING -> blocking(question);
      case POST_GRADE, HEADER_GRADE, CROSSBEAM_GRADE, RAIL_GRADE, BRACE_GRADE -> grades(question);
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
    List<Candidate.Cut> ways = HeaderCuts.of(problem.context(answers)).ways();
    facts.addAll(ways);
    options.put(question, ways.stream().map(Candidate.Cut::option).toList());
  }

  private void plain(Question question) {
    List<String> words = problem.words(question);
    options.put(question, words);
    words.forEach(word -> facts.add(new Candidate.Plain(question, word)));
  }

  private void blocking(Question question) {
    plain(question);
    JointChecks joints = new JointChecks(context);
    options(question).forEach(way -> checked(question, way, joints.blocking(way)));
  }

  /** Every grade from the weakest up, with those that know no strength for the role's size. */
  private void grades(Question question) {
    plain(question);
    if (asked.ofItsOwn(question)) {
      return;
    }
    Question size = TimberRole.of(question).orElseThrow().size();
    String option = answers.option(size);
    facts.add(new GradeByRole(question, option));
    facts.add(problem.tables().check("member.graded"));
    for (String grade : options(question)) {
      if (!context.grading().published(size, option, grade)) {
        String species = context.grading().species(size);
        facts.add(new Candidate.Ungraded(question, grade, species, grade));
      }
    }
  }

  private void joints(Question question) {
    JointChecks joints = new JointChecks(context);
    String style = answers.option(HEADER_STYLE);
    List<String> ways =
        problem.tables().joints().rows().stream()
            .filter(row -> row.question() == question && row.fits(style))
            .map(JointRow::id)
            .toList();
    upTo(question, ways, way -> joint(question, way, joints));
  }

  /** Lays one joint out; true where all its checks pass. */
  private boolean joint(Question question, String way, JointChecks joints) {
    facts.add(new Candidate.Plain(question, way));
    return checked(question, way, joints.checks(problem.tables().joints().row(way)));
  }

  private void sizes(Question question) {
    List<String> offered = tried(question);
    int floor = Math.max(0, offered.indexOf(floors.getOrDefault(question, "")) - 1);
    List<Integer> serve = new ArrayList<>();
    upTo(
        question,
        offered,
        option -> {
          int rank = offered.indexOf(option);
          boolean serves = size(question, option, rank < floor);
          if (serves) {
            serve.add(rank);
          }
          return serves;
        });
    // What stops a size beside one that serves is told.
    for (int rank = floor; rank < options(question).size(); rank++) {
      if (serve.contains(rank - 1) || serve.contains(rank + 1)) {
        workAll(question, offered.get(rank));
      }
    }
  }

  /**
   * Lays one size out.
   *
   * @param below true where the answer will not go down to it
   * @return true where all its checks pass
   */
  private boolean size(Question question, String option, boolean below) {
    facts.add(problem.stock().candidate(question, option));
    boolean graded = context.material(question, option).isPresent();
    if (!graded) {
      Grading grading = context.grading();
      facts.add(
          new Candidate.Ungraded(
              question, option, grading.species(question), grading.grade(question, option)));
    }
    if (detail == Detail.ANSWERS && below) {
      putOff.add(question, option, () -> context.checks(question, option));
      return false;
    }
    boolean passes = checked(question, option, context.unbraced(question, option));
    if (detail == Detail.ANSWERS && !passes) {
      putOff.add(question, option, () -> context.braced(question, option));
      return false;
    }
    return checked(question, option, context.braced(question, option)) && passes && graded;
  }

  /** Works the checks of a size that were put off, if any were. */
  private boolean workAll(Question question, String option) {
    Optional<List<Checked>> checks = putOff.worked(question, option);
    checks.ifPresent(each -> checked(question, option, each));
    return checks.isPresent();
  }

  /**
   * Works the checks that were put off of those sizes of which the rules, by what they found
   * without, tell what stopped them.
   *
   * @return true where that may change what they find
   */
  public boolean worksWhatIsTold(List<Fired> fired) {
    boolean worked = false;
    for (Question question : putOff.questions()) {
      List<String> options = options(question);
      int floor = Math.max(0, options.indexOf(floors.getOrDefault(question, "")));
      Set<String> open = putOff.options(question);
      for (String option : ToldStops.of(question, fired).unsure(options, floor, open)) {
        worked |= workAll(question, option);
      }
    }
    return worked;
  }

  private boolean checked(Question question, String option, List<Checked> checks) {
    boolean passes = true;
    for (Checked checked : checks) {
      facts.add(new OptionCheck(question, option, checked));
      passes &= checked.check().passes(problem.tables().check(checked.id()).limitRatio());
    }
    return passes;
  }

  /**
   * Lays options out from the smallest up to the one answered so far, and on to the first that
   * passes; all of them where somebody reads what the rules say of each.
   *
   * @param layOut true of an option whose checks pass
   */
  private void upTo(Question question, List<String> offered, Predicate<String> layOut) {
    int largest = offered.size() - 1;
    int least = detail == Detail.FULL ? largest : soFar(question, offered);
    int last = 0;
    while (last <= largest && (!layOut.test(offered.get(last)) || last < least)) {
      last++;
    }
    List<String> laidOut = offered.subList(0, Math.min(last, largest) + 1);
    options.put(question, laidOut);
    leftOut.add(question, offered, laidOut.size());
  }

  private int soFar(Question question, List<String> offered) {
    return answers.find(question).map(each -> offered.indexOf(each.option())).orElse(0);
  }

  /** Every size that the yard sells, or the one that is given. */
  private List<String> tried(Question question) {
    boolean paired = answers.option(HEADER_STYLE).equals(WayOfBuilding.PAIRED);
    return problem
        .fixed(question, answers)
        .map(given -> List.of(given.option()))
        .orElseGet(() -> problem.offer().sizes(question, paired));
  }
}
