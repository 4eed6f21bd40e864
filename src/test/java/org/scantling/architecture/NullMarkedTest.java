package org.scantling.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The build looks for what may be null in marked packages alone, so every package is one. */
class NullMarkedTest {
  @Test
  void every_package_is_marked() {
    TreeSet<String> packages =
        Imported.CLASSES.stream()
            .map(JavaClass::getPackageName)
            .filter(each -> !each.startsWith(Imported.RULES))
            .collect(Collectors.toCollection(TreeSet::new));

    List<String> unmarked = packages.stream().filter(each -> !marked(each)).toList();

    assertThat(packages).hasSizeGreaterThan(15);
    assertThat(unmarked).isEmpty();
  }

  private static boolean marked(String name) {
    try {
      return Class.forName(name + ".package-info").isAnnotationPresent(NullMarked.class);
    } catch (ClassNotFoundException none) {
      return false;
    }
  }
}
