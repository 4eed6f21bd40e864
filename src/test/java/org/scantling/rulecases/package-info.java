/**
 * The rule base read as text and run case by case: every {@code rules/<phase>/<question>.drl} has a
 * {@code <question>.cases.json} beside it, and both are held to the house's rules for rules.
 *
 * <p>Entry points: RuleCasesTest walks the cases, CoverageTest says which cases are missing,
 * RuleTextTest reads the rules as text.
 */
package org.scantling.rulecases;
