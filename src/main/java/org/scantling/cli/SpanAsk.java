package org.scantling.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.scantling.quantity.QuantityException;
import org.scantling.quantity.QuantityKind;
import org.scantling.spans.Role;
import org.scantling.tables.WrittenSize;
import org.scantling.words.RoleWords;

/**
 * What stands behind {@code spans} without an option, in whatever order: a role, sizes, and the
 * spacings, widths or heights that the table goes by.
 */
final class SpanAsk {
  private static final Pattern SIZE = Pattern.compile("(?:[1-9]-)?\\d+x\\d+");

  private final OptionReader reader;
  private final RoleWords others = RoleWords.read();
  private final List<Role> roles = new ArrayList<>();
  private final List<String> sizes = new ArrayList<>();
  private final List<String> steps = new ArrayList<>();
  private final List<String> told = new ArrayList<>();

  /** Complains of words that are nothing of that. */
  SpanAsk(List<String> words, OptionReader reader) {
    this.reader = reader;
    words.stream().flatMap(each -> Arrays.stream(each.split(","))).forEach(this::take);
  }

  /** Those that are named. */
  List<Role> roles() {
    return List.copyOf(roles);
  }

  List<String> sizes() {
    return List.copyOf(sizes);
  }

  List<String> steps() {
    return List.copyOf(steps);
  }

  /** What is said of words for which this program has others. */
  List<String> told() {
    return List.copyOf(told);
  }

  private void take(String word) {
    String size = WrittenSize.plain(word);
    if (SIZE.matcher(size).matches()) {
      sizes.add(size);
    } else if (length(word)) {
      steps.add(word.strip());
    } else {
      role(word);
    }
  }

  private void role(String word) {
    Optional<RoleWords.Meant> meant = others.find(word);
    meant.map(RoleWords.Meant::why).filter(why -> !why.isEmpty()).ifPresent(told::add);
    List<String> known = Arrays.stream(Role.values()).map(Role::word).toList();
    String plain = reader.word("ROLE", meant.map(RoleWords.Meant::role).orElse(word), known);
    Role role = known.contains(plain) ? Role.values()[known.indexOf(plain)] : null;
    if (role != null && !roles.contains(role)) {
      roles.add(role);
    }
  }

  private static boolean length(String word) {
    try {
      return QuantityKind.LENGTH.parse(word.strip()) > 0;
    } catch (QuantityException nothingOfThat) {
      return false;
    }
  }
}
