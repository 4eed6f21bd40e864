package org.scantling.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever reads the name of a class knows which one is meant. */
class UniqueNamesTest {
  @Test
  void no_two_classes_have_one_name() {
    Map<String, TreeSet<String>> packages = new TreeMap<>();
    written()
        .forEach(
            each ->
                packages
                    .computeIfAbsent(each.getSimpleName(), name -> new TreeSet<>())
                    .add(each.getPackageName()));

    List<String> twice =
        packages.entrySet().stream()
            .filter(each -> each.getValue().size() > 1)
            .map(each -> each.getKey() + " in " + String.join(" and ", each.getValue()))
            .toList();

    assertThat(twice).isEmpty();
  }

  @Test
  void the_whole_program_was_looked_at() {
    assertThat(written().map(JavaClass::getPackageName).distinct()).hasSizeGreaterThan(15);
    assertThat(written().count()).isGreaterThan(300);
  }

  /** What stands in a file of its own; the compiled rules were named by their compiler. */
  private static Stream<JavaClass> written() {
    return Imported.CLASSES.stream()
        .filter(JavaClass::isTopLevelClass)
        .filter(each -> !each.getPackageName().startsWith(Imported.RULES + "."))
        .filter(each -> !each.getSimpleName().equals("package-info"));
  }
}
