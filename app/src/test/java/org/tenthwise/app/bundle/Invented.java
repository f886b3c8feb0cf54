package org.tenthwise.app.bundle;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.tenthwise.app.export.CsvRecord;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.JsonRecord;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.export.pdf.Paper;
import org.tenthwise.app.export.pdf.PdfRecord;
import org.tenthwise.app.export.pdf.RecordLayout;
import org.tenthwise.app.key.StationKey;
import org.tenthwise.model.words.Words;

/** Bundles of invented runs, and files laid out like bundles that are none. */
final class Invented {

    static final Making MAKING =
            new Making(place -> List.of(new CsvRecord(), new JsonRecord()), Locale.ENGLISH, "0.1.0");

    private Invented() {}

    /** As a station makes them: with the printed record and the one by QIF. */
    static final Making WHOLE = new Making(
            place -> Stream.concat(
                            Stream.of(new PdfRecord(new RecordLayout(Words.ENGLISH, Paper.A4, Records.DATA))),
                            Records.DATA.stream())
                    .toList(),
            Locale.ENGLISH,
            "0.1.0");

    static byte[] bundle(Evidence evidence, StationKey key) throws IOException {
        return bundle(MAKING, evidence, key);
    }

    static byte[] bundle(Making making, Evidence evidence, StationKey key) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        String run = evidence.sheet().run().id();
        new BundleMaker(making, key, evidence.first().hash())
                .write(Scope.ofRun(run), List.of(run), id -> evidence, out);
        return out.toByteArray();
    }

    /** A file in a bundle, whatever it is called. */
    record Piece(String name, byte[] bytes) {

        Packed packed() {
            CRC32 crc = new CRC32();
            crc.update(bytes);
            return new Packed(name, bytes.length, (int) crc.getValue());
        }
    }

    /** Laid out as a bundle is, with any names. */
    static byte[] laidOut(List<Piece> pieces) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (Piece piece : pieces) {
            out.write(piece.packed().local());
            out.write(piece.bytes());
        }
        out.write(Packed.directory(pieces.stream().map(Piece::packed).toList()));
        return out.toByteArray();
    }

    /** The pieces of a bundle. */
    static List<Piece> pieces(Path bundle) throws IOException, NotABundle {
        try (BundleFile file = BundleFile.open(bundle)) {
            List<Piece> pieces = new ArrayList<>();
            for (String ahead : List.of(Manifest.FILE, Manifest.SIGNATURE, Manifest.KEY)) {
                pieces.add(new Piece(ahead, file.bytes(ahead)));
            }
            for (Manifest.OfFile of : file.manifest().files()) {
                pieces.add(new Piece(of.name(), file.bytes(of.name())));
            }
            return pieces;
        }
    }

    /** Why a file is refused. */
    static String refusal(Path folder, byte[] bytes) throws IOException {
        Path path = Files.write(folder.resolve("b.tenthwise"), bytes);
        return assertThrows(NotABundle.class, () -> BundleFile.open(path).close())
                .why()
                .key();
    }
}
