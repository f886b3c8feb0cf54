package org.tenthwise.app.export.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Whether what was added behind a printed record is signatures and nothing else. Who signs writes behind the record as
 * it was, and could write other pages there with the same stroke.
 *
 * <p>Every object must be as it was, but the catalog, which gains the form that the signatures stand in, and a page,
 * which gains their fields; and none of these takes room on it, or does anything.
 */
public final class OnlySigned {

    private static final List<COSName> DOES_SOMETHING = List.of(COSName.A, COSName.AA);

    private OnlySigned() {}

    /** Not where one of them is no PDF. */
    public static boolean isAllThatIsNew(byte[] before, byte[] signed) {
        try (PDDocument was = Loader.loadPDF(before);
                PDDocument is = Loader.loadPDF(signed)) {
            return isAllThatIsNew(was.getDocument(), is.getDocument());
        } catch (IOException | RuntimeException e) {
            return false; // what cannot be read is not what it was
        }
    }

    private static boolean isAllThatIsNew(COSDocument was, COSDocument is) throws IOException {
        for (COSName end : List.of(COSName.ROOT, COSName.INFO)) {
            if (!isSame(was.getTrailer().getItem(end), is.getTrailer().getItem(end))) {
                return false;
            }
        }
        for (COSObjectKey key : was.getXrefTable().keySet()) {
            COSBase before = was.getObjectFromPool(key).getObject();
            COSBase after = is.getObjectFromPool(key).getObject();
            if (!PdfContent.Packing.isAll(before) && !isSame(before, after) && !gainedASignature(before, after)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSame(COSBase one, COSBase other) throws IOException {
        return PdfContent.text(one).equals(PdfContent.text(other));
    }

    private static boolean gainedASignature(COSBase before, COSBase after) throws IOException {
        if (!(before instanceof COSDictionary was)
                || !(after instanceof COSDictionary is)
                || after instanceof COSStream) {
            return false;
        }
        if (COSName.CATALOG.equals(was.getCOSName(COSName.TYPE))) {
            return isSameBut(COSName.ACRO_FORM, was, is) && isFormOfSignatures(is);
        }
        return COSName.PAGE.equals(was.getCOSName(COSName.TYPE))
                && isSameBut(COSName.ANNOTS, was, is)
                && areNewOnesSignatures(array(was, COSName.ANNOTS), array(is, COSName.ANNOTS));
    }

    private static boolean isSameBut(COSName gained, COSDictionary was, COSDictionary is) throws IOException {
        COSDictionary before = new COSDictionary(was);
        COSDictionary after = new COSDictionary(is);
        before.removeItem(gained);
        after.removeItem(gained);
        return isSame(before, after);
    }

    private static boolean isFormOfSignatures(COSDictionary catalog) throws IOException {
        COSDictionary form = catalog.getCOSDictionary(COSName.ACRO_FORM);
        return form != null
                && !form.containsKey(COSName.XFA)
                && areNewOnesSignatures(Optional.empty(), array(form, COSName.FIELDS));
    }

    private static Optional<COSArray> array(COSDictionary of, COSName name) {
        return Optional.ofNullable(of.getCOSArray(name));
    }

    /** What was there before stands on, in its place. */
    private static boolean areNewOnesSignatures(Optional<COSArray> was, Optional<COSArray> is) throws IOException {
        int before = was.map(COSArray::size).orElse(0);
        if (is.isEmpty() || is.get().size() < before) {
            return false;
        }
        for (int i = 0; i < is.get().size(); i++) {
            boolean well = i < before
                    ? isSame(was.get().get(i), is.get().get(i))
                    : is.get().getObject(i) instanceof COSDictionary field && isUnseenSignature(field);
            if (!well) {
                return false;
            }
        }
        return true;
    }

    private static boolean isUnseenSignature(COSDictionary field) {
        return COSName.SIG.equals(field.getCOSName(COSName.FT))
                && !field.containsKey(COSName.KIDS)
                && DOES_SOMETHING.stream().noneMatch(field::containsKey)
                && takesNoRoom(field.getCOSArray(COSName.RECT));
    }

    private static boolean takesNoRoom(COSArray rectangle) {
        return rectangle != null
                && rectangle.size() == 4
                && rectangle.toCOSNumberFloatList().stream().allMatch(corner -> corner != null && corner == 0);
    }
}
