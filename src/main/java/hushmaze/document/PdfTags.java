package hushmaze.document;

import hushmaze.drawing.Page;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * The structure of a tagged PDF: the document, a section with its title for every page, and in it every text as a paragraph in
 * the order it was set. Lines and fills belong to no text and are marked as artifacts.
 *
 * <p>Source: ISO 32000, logical structure and tagged PDF, from memory.
 */
final class PdfTags {
    private final PDStructureElement whole;
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final Map<Integer, PDParentTreeValue> parents = new TreeMap<>();
    private PDPage sheet;
    private PDStructureElement section;
    private COSArray paragraphs;

    PdfTags(PDDocument document) {
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
        document.getDocumentCatalog().setStructureTreeRoot(root);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        whole = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
        root.appendKid(whole);
    }

    /** Begins a page. */
    void begin(Page page, PDPage on) {
        sheet = on;
        on.setStructParents(parents.size());
        section = new PDStructureElement(StandardStructureTypes.SECT, whole);
        section.setTitle(page.title());
        section.setPage(on);
        whole.appendKid(section);
        paragraphs = new COSArray();
        parents.put(parents.size(), new PDParentTreeValue(paragraphs));
    }

    /** Tags the next text of the page and gives the number its content is marked with. */
    int paragraph() {
        int number = paragraphs.size();
        PDStructureElement paragraph = new PDStructureElement(StandardStructureTypes.P, section);
        paragraph.setPage(sheet);
        paragraph.getCOSObject().setInt(COSName.K, number);
        section.appendKid(paragraph);
        paragraphs.add(paragraph.getCOSObject());
        return number;
    }

    /** Closes the structure after the last page. */
    void end() {
        PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
        tree.setNumbers(parents);
        root.setParentTree(tree);
        root.setParentTreeNextKey(parents.size());
    }
}
