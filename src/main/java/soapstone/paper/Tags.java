package soapstone.paper;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/**
 * Gathers what says which piece of a page is a heading, a table, a drawing with what it shows. The library makes one tree for each layout
 * and puts it in the place of the one before; a file has one tree, with the trees of all layouts in order.
 */
final class Tags {

    private static final COSName NUMS = COSName.NUMS;

    private final PDDocument document;
    private final List<COSBase> parts = new ArrayList<>();
    private final COSArray parents = new COSArray();
    private PDStructureTreeRoot first;
    private int next;

    Tags(PDDocument document) {
        this.document = document;
    }

    /** Takes the tree of the pages from that one on. */
    void take(int from) {
        PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
        first = first == null ? root : first;
        kids(root.getCOSObject().getDictionaryObject(COSName.K));
        COSArray numbers = (COSArray) root.getParentTree().getCOSObject().getDictionaryObject(NUMS);
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            parents.add(COSInteger.get(((COSInteger) numbers.getObject(i)).intValue() + next));
            parents.add(numbers.get(i + 1));
        }
        for (int i = from; i < document.getNumberOfPages(); i++) {
            COSDictionary page = document.getPage(i).getCOSObject();
            if (page.containsKey(COSName.STRUCT_PARENTS)) {
                page.setInt(COSName.STRUCT_PARENTS, page.getInt(COSName.STRUCT_PARENTS) + next);
            }
        }
        next += numbers.size() / 2;
        document.getDocumentCatalog().getCOSObject().removeItem(COSName.STRUCT_TREE_ROOT);
    }

    private void kids(COSBase kids) {
        if (kids instanceof COSArray many) {
            many.forEach(parts::add);
        } else if (kids != null) {
            parts.add(kids);
        }
    }

    /** Puts the one tree into the file. */
    void finish() {
        if (first == null) {
            return;
        }
        COSArray all = new COSArray();
        for (COSBase part : parts) {
            all.add(part);
            COSDictionary element = (COSDictionary) (part instanceof org.apache.pdfbox.cos.COSObject object ? object.getObject() : part);
            element.setItem(COSName.P, first.getCOSObject());
        }
        first.getCOSObject().setItem(COSName.K, all);
        COSDictionary tree = new COSDictionary();
        tree.setItem(NUMS, parents);
        first.setParentTree(new PDNumberTreeNode(tree, tree.getClass()));
        first.setParentTreeNextKey(next);
        document.getDocumentCatalog().setStructureTreeRoot(first);
    }
}
