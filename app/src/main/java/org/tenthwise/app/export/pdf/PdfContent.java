package org.tenthwise.app.export.pdf;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * All that a printed record holds, however it is packed. Two makes of Java can pack the same stream into different
 * bytes, so a file made again on another machine need not be the same file to be the same record.
 */
public final class PdfContent {

    /** What says how a stream is packed, and what only holds other objects. */
    static final class Packing {

        private static final List<COSName> SAID = List.of(COSName.FILTER, COSName.LENGTH, COSName.DECODE_PARMS);
        private static final List<COSName> HOLDS = List.of(COSName.OBJ_STM, COSName.XREF);

        private Packing() {}

        static boolean isAll(COSBase object) {
            return object instanceof COSStream stream
                    && Optional.ofNullable(stream.getCOSName(COSName.TYPE))
                            .filter(HOLDS::contains)
                            .isPresent();
        }
    }

    private PdfContent() {}

    /** Whether two files hold the same, object for object and byte for byte once unpacked; not where one is no PDF. */
    public static boolean isSame(byte[] one, byte[] other) {
        try {
            return objects(one).equals(objects(other));
        } catch (IOException | RuntimeException e) {
            return false; // what cannot be read is not the same
        }
    }

    static Map<String, String> objects(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Map<String, String> objects = new HashMap<>();
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                COSBase object = document.getDocument().getObjectFromPool(key).getObject();
                if (!Packing.isAll(object)) {
                    objects.put(key.toString(), text(object));
                }
            }
            COSDictionary trailer = document.getDocument().getTrailer();
            for (COSName end : List.of(COSName.ROOT, COSName.INFO, COSName.ID)) {
                objects.put(end.getName(), text(trailer.getItem(end)));
            }
            return objects;
        }
    }

    static String text(COSBase object) throws IOException {
        if (object instanceof COSObject reference && reference.getKey() != null) {
            return reference.getKey() + " R";
        }
        if (object instanceof COSArray array) {
            StringBuilder all = new StringBuilder("[");
            for (int i = 0; i < array.size(); i++) {
                all.append(text(array.get(i))).append(' ');
            }
            return all.append(']').toString();
        }
        if (object instanceof COSDictionary dictionary) {
            return entries(dictionary) + (object instanceof COSStream stream ? unpacked(stream) : "");
        }
        return String.valueOf(object);
    }

    private static String entries(COSDictionary dictionary) throws IOException {
        Map<String, String> entries = new TreeMap<>();
        for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
            if (!(dictionary instanceof COSStream) || !Packing.SAID.contains(entry.getKey())) {
                entries.put(entry.getKey().getName(), text(entry.getValue()));
            }
        }
        return entries.toString();
    }

    private static String unpacked(COSStream stream) throws IOException {
        try (InputStream in = stream.createInputStream()) {
            return new String(in.readAllBytes(), ISO_8859_1);
        }
    }
}
