package org.scantling.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.scantling.sheets.Joined;

/** The faces of one document, each read when it is first set; only the letters used go into it. */
final class Fonts {
  private static final int THOUSAND = 1000;
  private static final int UNKNOWN = 0xFFFD;

  private final PDDocument document;
  private final Map<Face, Loaded> loaded = new EnumMap<>(Face.class);

  Fonts(PDDocument document) {
    this.document = document;
  }

  private record Loaded(PDType0Font font, CmapLookup letters, Map<Integer, Double> widths) {}

  private Loaded face(Face face) {
    return loaded.computeIfAbsent(face, this::load);
  }

  private Loaded load(Face face) {
    try (InputStream in = Fonts.class.getResourceAsStream(face.file())) {
      if (in == null) {
        throw new IllegalStateException(face.file() + " is not on the class path");
      }
      TrueTypeFont font = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
      return new Loaded(
          PDType0Font.load(document, font, true), font.getUnicodeCmapLookup(), new HashMap<>());
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  PDType0Font font(Face face) {
    return face(face).font();
  }

  /** With a sign in place of what the face has no letter for. */
  String settable(String text, Face face) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(letter -> out.appendCodePoint(settable(letter, face)));
    return out.toString();
  }

  private int settable(int letter, Face face) {
    if (Character.isWhitespace(letter) || Character.isISOControl(letter)) {
      return ' ';
    }
    return face(face).letters().getGlyphId(letter) == 0 ? UNKNOWN : letter;
  }

  /** How wide a line comes out. */
  double widePt(String text, Type type) {
    Loaded face = face(type.face());
    double thousandths = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      thousandths +=
          face.widths().computeIfAbsent(text.codePointAt(i), letter -> wide(face, letter));
    }
    return thousandths / THOUSAND * type.sizePt();
  }

  private static double wide(Loaded face, int letter) {
    try {
      return face.font().getStringWidth(Character.toString(letter));
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  /** Lines no wider than that; a word that is wider by itself is broken. */
  List<String> lines(String text, Type type, double roomPt) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : settable(Joined.of(text), type.face()).strip().split(" +")) {
      String with = line.isEmpty() ? word : line + " " + word;
      if (widePt(with, type) <= roomPt) {
        line = with;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      String rest = word;
      while (widePt(rest, type) > roomPt && rest.length() > 1) {
        int cut = fits(rest, type, roomPt);
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line = rest;
    }
    lines.add(line);
    return lines;
  }

  private int fits(String word, Type type, double roomPt) {
    int cut = word.offsetByCodePoints(0, 1);
    while (cut < word.length()
        && widePt(word.substring(0, word.offsetByCodePoints(cut, 1)), type) <= roomPt) {
      cut = word.offsetByCodePoints(cut, 1);
    }
    return cut;
  }

  /** The longest word, which a column must have room for. */
  double longestWordPt(String text, Type type) {
    double longest = 0;
    for (String word : settable(Joined.of(text), type.face()).split(" +")) {
      longest = Math.max(longest, widePt(word, type));
    }
    return longest;
  }
}
