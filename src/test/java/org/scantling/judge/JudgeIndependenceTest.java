package org.scantling.judge;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;
import org.scantling.cli.Run;

/** The judge shares nothing with what it judges. */
class JudgeIndependenceTest {
  private static final DescribedPredicate<JavaClass> OUTSIDE =
      DescribedPredicate.describe(
          "the JDK, Jackson, test libraries, the judge itself or the command line's runner",
          each ->
              !each.getPackageName().startsWith("org.scantling")
                  || each.getPackageName().equals("org.scantling.judge")
                  || each.getName().equals(Run.class.getName()));

  @Test
  void the_judge_uses_no_class_of_the_program_but_the_runner_of_its_command_line() {
    classes()
        .that()
        .resideInAPackage("org.scantling.judge")
        .should()
        .onlyDependOnClassesThat(OUTSIDE)
        .check(new ClassFileImporter().importPackages("org.scantling.judge"));
  }

  @Test
  void what_judges_imports_only_the_language_and_jackson() {
    classes()
        .that()
        .resideInAPackage("org.scantling.judge")
        .and()
        .haveSimpleNameNotEndingWith("Test")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("java..", "tools.jackson..", "org.scantling.judge")
        .check(new ClassFileImporter().importPackages("org.scantling.judge"));
  }
}
