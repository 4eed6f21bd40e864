package org.scantling.pdf;

import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/**
 * What each mark on the pages is: the tree of headings, paragraphs, lists, tables and figures.
 *
 * <p>Source: ISO 14289-1:2014, 7.1 and 7.2.
 */
final class Tags {
  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final PDStructureElement top = new PDStructureElement("Document", root);
  private final Map<Integer, PDParentTreeValue> parents = new HashMap<>();
  private final Map<PDPage, COSArray> marks = new HashMap<>();

  Tags(PDDocument document) {
    root.appendKid(top);
    document.getDocumentCatalog().setStructureTreeRoot(root);
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    document.getDocumentCatalog().setMarkInfo(marked);
  }

  PDStructureElement top() {
    return top;
  }

  static PDStructureElement under(PDStructureNode parent, String type) {
    PDStructureElement element = new PDStructureElement(type, parent);
    parent.appendKid(element);
    return element;
  }

  void page(PDPage page) {
    int number = parents.size();
    COSArray array = new COSArray();
    page.setStructParents(number);
    marks.put(page, array);
    parents.put(number, new PDParentTreeValue(array));
  }

  /** The number of the next mark of an element on a page. */
  int mark(PDStructureElement element, PDPage page) {
    COSArray array = marks.get(page);
    if (array == null) {
      throw new IllegalStateException("a page without marks");
    }
    int number = array.size();
    array.add(element.getCOSObject());
    PDMarkedContentReference reference = new PDMarkedContentReference();
    reference.setPage(page);
    reference.setMCID(number);
    element.appendKid(reference);
    return number;
  }

  /** For whom a cell of the head speaks. */
  static void scope(PDStructureElement cell, String scope) {
    COSDictionary table = attributes(cell, "Table");
    table.setName(COSName.getPDFName("Scope"), scope);
  }

  /** Where a figure stands. */
  static void box(PDStructureElement figure, PDRectangle box) {
    COSDictionary layout = attributes(figure, "Layout");
    layout.setItem(COSName.BBOX, box.getCOSArray());
    layout.setName(COSName.getPDFName("Placement"), "Block");
  }

  private static COSDictionary attributes(PDStructureElement element, String owner) {
    COSDictionary attributes = new COSDictionary();
    attributes.setName(COSName.O, owner);
    element.getCOSObject().setItem(COSName.A, attributes);
    return attributes;
  }

  void finish() {
    PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
    tree.setNumbers(parents);
    root.setParentTree(tree);
    root.setParentTreeNextKey(parents.size());
  }
}
