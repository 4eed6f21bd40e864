package org.scantling.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** The program as it was compiled, without its tests. */
final class Imported {
  static final String ROOT = "org.scantling";

  /** The compiled rules, which nobody wrote as Java. */
  static final String RULES = ROOT + ".rules";

  static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(ROOT);

  private Imported() {}
}
