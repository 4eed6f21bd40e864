package org.scantling.faults;

/** One change to the text of one file; a trial that fails is shrunk by leaving changes out. */
interface Edit {
  String file();

  String on(String text);
}
