package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.export.Records;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.words.Words;

class PdfContentTest {

    private byte[] printed;

    @BeforeEach
    void print() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, List.of()))
                .write(Records.whole(DemoPart.WINCH_BARREL_END, Records.passing(DemoPart.WINCH_BARREL_END)), out);
        printed = out.toByteArray();
    }

    /** Something done with the first stream of the file. */
    private interface Change {
        byte[] of(byte[] content);
    }

    private byte[] again(boolean packed, Change change) throws Exception {
        try (PDDocument document = Loader.loadPDF(printed)) {
            boolean changed = false;
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSStream stream
                        && stream.getFilters() != null
                        && !PdfContent.Packing.isAll(stream)) {
                    byte[] content = stream.createInputStream().readAllBytes();
                    byte[] wanted = changed ? content : change.of(content);
                    changed = true;
                    stream.removeItem(COSName.FILTER);
                    try (OutputStream out =
                            packed ? stream.createOutputStream(COSName.FLATE_DECODE) : stream.createOutputStream()) {
                        out.write(wanted);
                    }
                }
            }
            assertTrue(changed);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.setDocumentId(1L);
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        }
    }

    @Test
    void aFileIsTheSameAsItself() {
        assertTrue(PdfContent.isSame(printed, printed.clone()));
    }

    @Test
    void oneByteMoreInAStreamIsSeen() throws Exception {
        byte[] plain = again(false, content -> content);
        byte[] changed = again(false, content -> Arrays.copyOf(content, content.length + 1));
        assertFalse(PdfContent.isSame(plain, changed));
    }

    /** Packed and not packed, what is said is the same, and the files are not. */
    @Test
    void howAStreamIsPackedDoesNotMatter() throws Exception {
        byte[] plain = again(false, content -> content);
        byte[] packed = again(true, content -> content);
        assertFalse(Arrays.equals(plain, packed));
        assertTrue(PdfContent.isSame(plain, packed));
    }

    @Test
    void whatIsNoPdfIsNotTheSame() {
        assertFalse(PdfContent.isSame(printed, new byte[] {1, 2, 3}));
        assertFalse(PdfContent.isSame(new byte[0], new byte[0]));
    }
}
