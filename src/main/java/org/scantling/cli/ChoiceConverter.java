package org.scantling.cli;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.scantling.intake.NearMiss;
import org.scantling.sayings.Listed;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

/** Reads an option that is one of a few words, by the words that people type. */
final class ChoiceConverter<T> implements ITypeConverter<T> {
  private final List<T> all;
  private final Function<T, String> word;

  ChoiceConverter(T[] all, Function<T, String> word) {
    this.all = List.copyOf(Arrays.asList(all));
    this.word = word;
  }

  /** The constants of an enum, each by its name in small letters. */
  static <E extends Enum<E>> ChoiceConverter<E> of(Class<E> type) {
    return new ChoiceConverter<>(
        type.getEnumConstants(), each -> each.name().toLowerCase(java.util.Locale.ROOT));
  }

  /** Every option that is one of an enum's constants is read so, in all commands. */
  static void read(CommandLine commands) {
    for (CommandLine command : commands.getSubcommands().values()) {
      for (OptionSpec option : command.getCommandSpec().options()) {
        if (option.type().isEnum() && option.converters().length == 0) {
          register(command, option.type().asSubclass(Enum.class));
        }
      }
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the class of an option is known to picocli alone
  private static void register(CommandLine command, Class type) {
    command.registerConverter(type, of(type));
  }

  @Override
  public T convert(String typed) {
    return all.stream()
        .filter(each -> word.apply(each).equalsIgnoreCase(typed.strip()))
        .findFirst()
        .orElseThrow(() -> new TypeConversionException(refusal(typed.strip())));
  }

  private String refusal(String typed) {
    List<String> words = all.stream().map(word).toList();
    return CommandWords.say(
        "option.choice",
        "found",
        CommandWords.found(typed.isEmpty() ? "" : CommandWords.say("found.word", "word", typed)),
        "words",
        Listed.or(words),
        "maybe",
        NearMiss.advice(typed, words));
  }
}
