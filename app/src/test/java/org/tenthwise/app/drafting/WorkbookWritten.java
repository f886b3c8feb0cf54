package org.tenthwise.app.drafting;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.model.words.Refused;

/** What tests of workbooks write them with: another library than the one that reads them. */
abstract class WorkbookWritten {

    @TempDir
    protected Path folder;

    protected final Path file(Consumer<Workbook> written) throws IOException {
        Path file = folder.resolve("list.xlsx");
        try (OutputStream out = Files.newOutputStream(file);
                Workbook book = new Workbook(out, "test", "1.0")) {
            written.accept(book);
        }
        return file;
    }

    /** One sheet under the headings that are needed. */
    protected final Path sheet(Consumer<Worksheet> written) throws IOException {
        return file(book -> written.accept(headed(book, "Characteristics")));
    }

    protected static Worksheet headed(Workbook book, String name) {
        Worksheet sheet = book.newWorksheet(name);
        sheet.value(0, 0, "No.");
        sheet.value(0, 1, "Requirement");
        return sheet;
    }

    protected static Refused refused(Path file) {
        return assertThrows(Refused.class, () -> ListFile.rows(file));
    }

    protected static String refusal(Path file) {
        return refused(file).why().key();
    }
}
