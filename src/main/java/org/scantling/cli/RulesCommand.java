package org.scantling.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.scantling.intake.NearMiss;
import org.scantling.print.RulesJson;
import org.scantling.print.RulesText;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.RuleNote;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Grid;
import org.scantling.rulebook.Lint;
import org.scantling.rulebook.LintReport;
import org.scantling.rulebook.RuleEntry;
import org.scantling.rulebook.Rulebook;
import org.scantling.tables.Tables;
import org.scantling.words.Topic;
import org.scantling.words.UnknownSubject;
import org.scantling.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The rule base in words. */
@Command(name = "rules", mixinStandardHelpOptions = true)
final class RulesCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private GeneralOptions general;

  @Parameters(index = "0", arity = "0..1", paramLabel = "ID", descriptionKey = "id")
  private @Nullable String id;

  @Option(names = "--lint")
  private boolean lint;

  @Option(names = "--agreement")
  private boolean agreement;

  @Option(names = "--format", paramLabel = "text|json|markdown")
  private Format format = Format.TEXT;

  @Override
  public Integer call() {
    Workplace workplace = Workplace.of(general.houseRules());
    Tables tables = workplace.tables();
    Words words = Words.load(tables);
    RulesText text =
        new RulesText(words, general.printing(UnitSystem.IMPERIAL), format == Format.MARKDOWN);
    SortedMap<String, RuleNote> notes = CompiledRules.notes();
    if (lint) {
      LintReport report = Lint.of(notes.keySet(), tables, words);
      print(format == Format.JSON ? RulesJson.of(report) : text.lint(report));
      return report.clean() ? ExitStatus.ANSWERED : ExitStatus.WRONG_INPUT;
    }
    Rulebook book = Rulebook.read(notes, tables, words);
    if (agreement) {
      ThumbGrid grid = new ThumbGrid(workplace, book, Grid.axes());
      Agreement found = grid.over(Optional.ofNullable(id));
      print(format == Format.JSON ? RulesJson.of(found) : text.agreement(found));
      return ExitStatus.ANSWERED;
    }
    print(id == null ? all(book, text) : asked(id, book, words, text));
    return ExitStatus.ANSWERED;
  }

  private String all(Rulebook book, RulesText text) {
    return format == Format.JSON ? RulesJson.of(book.rules()) : text.all(book);
  }

  private String asked(String id, Rulebook book, Words words, RulesText text) {
    Optional<RuleEntry> rule = book.rule(id);
    if (rule.isPresent()) {
      return format == Format.JSON ? RulesJson.of(List.of(rule.get())) : text.one(rule.get());
    }
    Topic topic = topic(id, book, words);
    List<RuleEntry> rules = new ArrayList<>();
    topic.questions().forEach(question -> rules.addAll(book.about(question)));
    return format == Format.JSON
        ? RulesJson.of(rules.stream().distinct().toList())
        : text.about(topic.questions(), book);
  }

  private static Topic topic(String id, Rulebook book, Words words) {
    try {
      return words.subjects().find(id);
    } catch (UnknownSubject unknown) {
      String maybe = NearMiss.advice(id, book.rules().stream().map(RuleEntry::id).toList());
      throw maybe.isEmpty()
          ? unknown
          : new WrongOption(CommandWords.say("rules.unknown", "asked", id, "maybe", maybe));
    }
  }

  private void print(String text) {
    spec.commandLine().getOut().print(text);
  }
}
