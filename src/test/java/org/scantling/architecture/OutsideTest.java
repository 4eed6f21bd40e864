package org.scantling.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.Date;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Each thing from outside the house has one room. */
class OutsideTest {
  @Test
  void only_the_rule_base_imports_the_rule_engine() {
    check(only("the rule engine", "rulebase", "org.drools..", "org.kie.."));
  }

  @Test
  void what_runs_the_rules_brings_no_compiler_and_no_parser_of_theirs() {
    assertThat(System.getProperty("java.class.path"))
        .contains("drools-core")
        .doesNotContainPattern("drools-(engine|compiler|drl|ecj|mvel|model-codegen)")
        .doesNotContainPattern("javaparser|antlr|[/\\\\]ecj-");
  }

  @Test
  void only_the_command_line_imports_the_parser_of_arguments() {
    check(only("picocli", "cli", "picocli.."));
  }

  @Test
  void only_the_cutting_of_stock_imports_the_solver_of_programs() {
    check(only("the solver", "cutting", "org.ojalgo.."));
  }

  @Test
  void only_the_writer_of_paper_imports_the_library_of_pdf() {
    check(only("the library of PDF", "pdf", "org.apache.pdfbox..", "org.apache.fontbox.."));
  }

  @Test
  void only_readers_and_writers_of_files_import_their_formats() {
    check(
        noClasses()
            .that(
                not(
                    resideInAnyPackage(
                        rooms(
                            "intake",
                            "tables",
                            "sayings",
                            "rulebook",
                            "print",
                            "shop",
                            "batch",
                            "cli"))))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tools.jackson..", "com.fasterxml.jackson.."));
  }

  @Test
  void nothing_but_the_command_line_writes_to_the_streams_of_the_process() {
    check(
        noClasses()
            .that(not(resideInAnyPackage(rooms("cli"))))
            .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS));
  }

  @Test
  void nothing_depends_on_the_hour_or_on_chance() {
    check(
        noClasses()
            .that(not(resideInAnyPackage(rooms("cli"))))
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(Date.class, Random.class)
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.UUID")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(Math.class, "random"));
  }

  private static ArchRule only(String what, String room, String... packages) {
    return noClasses()
        .that(not(resideInAnyPackage(rooms(room, "rules"))))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(packages)
        .as("only " + room + " imports " + what);
  }

  private static String[] rooms(String... names) {
    String[] rooms = new String[names.length];
    for (int i = 0; i < names.length; i++) {
      rooms[i] = Imported.ROOT + "." + names[i] + "..";
    }
    return rooms;
  }

  private static void check(ArchRule rule) {
    rule.check(Imported.CLASSES);
  }
}
