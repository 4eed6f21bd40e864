package org.scantling.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.scantling.drawing.Xml;
import org.scantling.sayings.Sayings;
import org.scantling.sheets.SheetDocument;

/**
 * Writes a sheet as a file of PDF. The same sheet gives the same file, to the byte.
 *
 * <p>Source: ISO 14289-1:2014 (PDF/UA-1).
 */
public final class PdfWriter {
  private static final Sayings SAYINGS = Sayings.of("sheets");
  private static final String LANGUAGE = "en-US";
  private static final float VERSION = 1.7f;

  private PdfWriter() {}

  public static byte[] write(SheetDocument sheet) {
    try (PDDocument document = new PDDocument()) {
      String title = SAYINGS.say("page", "title", sheet.title(), "kind", sheet.kind());
      describe(document, title);
      Flow flow = new Flow(document, sheet.paper(), new Fonts(document), new Tags(document));
      new PdfParts(flow).write(sheet);
      flow.finish(title);
      document.setDocumentId((long) title.hashCode());
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  private static void describe(PDDocument document, String title) throws IOException {
    document.setVersion(VERSION);
    document.getDocumentInformation().setTitle(title);
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage(LANGUAGE);
    PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
    shown.setDisplayDocTitle(true);
    catalog.setViewerPreferences(shown);
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(xmp(title).getBytes(StandardCharsets.UTF_8));
    catalog.setMetadata(metadata);
  }

  private static String xmp(String title) {
    return "<?xpacket begin=\"\ufeff\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
        + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">"
        + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">"
        + "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
        + " xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">"
        + "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">"
        + Xml.escaped(title)
        + "</rdf:li></rdf:Alt></dc:title>"
        + "<pdfuaid:part>1</pdfuaid:part>"
        + "</rdf:Description></rdf:RDF></x:xmpmeta>\n"
        + "<?xpacket end=\"w\"?>";
  }
}
