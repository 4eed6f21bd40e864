package org.scantling.cli;

/** The command above all others, for those of them that ask. */
interface Answering {
  /** Where the commands that ask take the answers from. */
  AnswerInput answers();
}
