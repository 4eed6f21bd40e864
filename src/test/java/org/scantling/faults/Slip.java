package org.scantling.faults;

import java.util.Random;

/**
 * One slip of the hand: at a place, in thousandths of a file, some signs are lost and others
 * appear.
 */
record Slip(String file, int place, int lost, String appears) implements Edit {
  private static final String[] SIGNS = {
    "",
    " ",
    "\n",
    "\t",
    ":",
    ",",
    "-",
    "[",
    "]",
    "{",
    "}",
    "&a",
    "*a",
    "!x ",
    "|",
    ">",
    "'",
    "\"",
    "%",
    "@",
    "`",
    "#",
    "?",
    "0",
    "9",
    "1e99",
    "NaN",
    "~",
    "null",
    "true",
    "- ",
    ": ",
    "\\",
    "\u0000",
    "\u001b[31m",
    "\u202e",
    "\u0085",
    "é",
    "\uD83C\uDF39",
    "\uFEFF",
    "...\n",
    "---\n",
    "[]",
    "{}",
    "0x10",
    ".5",
    "1/0",
    "1/3",
    "=1+1",
    ";",
    "0 in",
    "9999 ft",
    "-3 in",
    "3 m",
    "½",
    "''",
    "\"\"",
    "12 ft 6 in",
    "\r\n",
    "# x\n"
  };

  static Slip any(String file, Random random) {
    StringBuilder appears = new StringBuilder();
    for (int i = random.nextInt(3); i >= 0; i--) {
      appears.append(SIGNS[random.nextInt(SIGNS.length)]);
    }
    int lost = random.nextInt(10) == 0 ? random.nextInt(400) : random.nextInt(7);
    return new Slip(file, random.nextInt(1001), lost, appears.toString());
  }

  @Override
  public String on(String text) {
    int from = Math.min(text.length(), text.length() * place / 1000);
    int to = Math.min(text.length(), from + lost);
    return text.substring(0, from) + appears + text.substring(to);
  }
}
