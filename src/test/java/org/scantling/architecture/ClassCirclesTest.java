package org.scantling.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Classes of one package that know each other, directly or in a circle, are those of {@code
 * class-circles.txt}, each line a package and its circle. The list may only shrink: a circle that
 * is not there fails, and so does a line that is no circle any more.
 */
class ClassCirclesTest {
  private static final Path LIST = Path.of("src/test/resources/architecture/class-circles.txt");

  private final Map<String, Set<String>> known = new TreeMap<>();

  @Test
  void no_classes_know_each_other_in_a_circle_but_those_of_the_list() throws IOException {
    Imported.CLASSES.stream()
        .filter(each -> !each.getPackageName().startsWith(Imported.RULES))
        .forEach(this::add);
    assertThat(known).hasSizeGreaterThan(900);

    Set<String> found = new TreeSet<>();
    for (String name : known.keySet()) {
      Set<String> circle = circle(name);
      if (circle.size() > 1) {
        found.add(line(circle));
      }
    }
    try (Stream<String> listed = Files.lines(LIST)) {
      assertThat(found).containsExactlyInAnyOrderElementsOf(listed.toList());
    }
  }

  private void add(JavaClass one) {
    Set<String> seen = known.computeIfAbsent(outermost(one), name -> new TreeSet<>());
    for (Dependency dependency : one.getDirectDependenciesFromSelf()) {
      JavaClass other = dependency.getTargetClass().getBaseComponentType();
      if (other.getPackageName().equals(one.getPackageName())
          && !outermost(other).equals(outermost(one))) {
        seen.add(outermost(other));
      }
    }
  }

  private static String outermost(JavaClass one) {
    return one.getName().split("\\$")[0];
  }

  /** All that a class reaches and that reach it. */
  private Set<String> circle(String name) {
    Set<String> circle = new TreeSet<>();
    for (String reached : reached(name)) {
      if (reached(reached).contains(name)) {
        circle.add(reached);
      }
    }
    return circle;
  }

  private Set<String> reached(String from) {
    Set<String> reached = new HashSet<>();
    Deque<String> open = new ArrayDeque<>(known.getOrDefault(from, Set.of()));
    while (!open.isEmpty()) {
      String next = open.pop();
      if (reached.add(next)) {
        open.addAll(known.getOrDefault(next, Set.of()));
      }
    }
    return reached;
  }

  private static String line(Set<String> circle) {
    String first = circle.iterator().next();
    String inside = first.substring(0, first.lastIndexOf('.') + 1);
    List<String> names = circle.stream().map(each -> each.substring(inside.length())).toList();
    return inside.substring(Imported.ROOT.length() + 1, inside.length() - 1)
        + ": "
        + String.join(" ", names);
  }
}
