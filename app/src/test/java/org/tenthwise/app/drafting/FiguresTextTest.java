package org.tenthwise.app.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.model.words.Refused;

class FiguresTextTest {

    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    @Test
    void theTextIsAsItStandsThere() throws IOException {
        assertEquals("balloon,value\n7,0.01\n", FiguresText.of(file("t.csv", "balloon,value\n7,0.01\n")));
    }

    @Test
    void whatIsNoSuchFileIsRefusedWithTheReason() throws IOException {
        Path latin = folder.resolve("latin.csv");
        Files.write(latin, new byte[] {(byte) 0xD8, '1', '0'});
        assertEquals("list.not-utf8", why(latin));
        assertEquals("list.no-file", why(folder.resolve("gone.csv")));
        assertEquals("list.too-long", why(file("long.csv", "1,".repeat(2_000_001))));
    }

    private static String why(Path file) {
        return assertThrows(Refused.class, () -> FiguresText.of(file)).why().key();
    }
}
