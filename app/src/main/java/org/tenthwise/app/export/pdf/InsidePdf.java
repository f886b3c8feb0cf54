package org.tenthwise.app.export.pdf;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** What lies inside a printed record, taken out again. */
public final class InsidePdf {

    /** A hundred times the record of a long run. */
    private static final int MOST = 64 << 20;

    private InsidePdf() {}

    /** Whether a file begins as every PDF does. */
    public static boolean isPdf(byte[] file) {
        return file.length > 4 && file[0] == '%' && file[1] == 'P' && file[2] == 'D' && file[3] == 'F';
    }

    /**
     * The one file inside whose name ends so; absent where there is none, or more than one.
     *
     * @param ending with its point: {@code .json}
     * @throws IOException if the bytes are no PDF, or the file inside is larger than any record
     */
    public static Optional<byte[]> file(byte[] pdf, String ending) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Map<String, PDComplexFileSpecification> named = Optional.ofNullable(
                            document.getDocumentCatalog().getNames())
                    .map(PDDocumentNameDictionary::getEmbeddedFiles)
                    .map(InsidePdf::names)
                    .orElse(Map.of());
            String[] fitting = named.keySet().stream()
                    .filter(name -> name.endsWith(ending))
                    .toArray(String[]::new);
            if (fitting.length != 1) {
                return Optional.empty();
            }
            Optional<PDEmbeddedFile> file =
                    Optional.ofNullable(named.get(fitting[0])).map(PDComplexFileSpecification::getEmbeddedFile);
            return file.isPresent() ? Optional.of(bytes(file.get())) : Optional.empty();
        }
    }

    private static Map<String, PDComplexFileSpecification> names(PDEmbeddedFilesNameTreeNode tree) {
        try {
            return Optional.ofNullable(tree.getNames()).orElse(Map.of());
        } catch (IOException e) {
            return Map.of();
        }
    }

    private static byte[] bytes(PDEmbeddedFile file) throws IOException {
        try (var in = file.createInputStream()) {
            byte[] read = in.readNBytes(MOST + 1);
            if (read.length > MOST) {
                throw new IOException("Larger than any record");
            }
            return read;
        }
    }
}
