package org.tenthwise.app.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.ui.theme.LookStore;
import org.tenthwise.app.ui.theme.LookStore.Kept;

class DeviceTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            textBlock =
                    """
            # system,    DISPLAY,  way windows are made,  whether there is a display
            Linux,       :0,       -,                     true
            Linux,       '',       -,                     false
            Linux,       -,        -,                     false
            Mac OS X,    -,        -,                     true
            Windows 11,  -,        -,                     true
            Linux,       -,        Monocle Headless,      false
            Linux,       :0,       Monocle Headless,      false
            Linux,       -,        Monocle EGL,           true
            """)
    void aDisplayIsThereWhereTheSystemHasOneOrIsToldOfOne(String system, String display, String way, boolean there) {
        Map<String, String> environment = display == null ? Map.of() : Map.of("DISPLAY", display);
        assertEquals(there, new Windowing(environment, system, Optional.ofNullable(way)).hasDisplay());
    }

    @Test
    void theLookIsThereAgainNextTime() {
        Kept look = new Kept(true, false, true);
        kept().keep(look);
        assertEquals(look, kept().kept());
        kept().keep(new Kept(false, true, false));
        assertEquals(new Kept(false, true, false), kept().kept());
    }

    @Test
    void theLanguageIsThereAgainNextTime() {
        Kept look = new Kept(false, false, false, Optional.of("de"));
        kept().keep(look);
        assertEquals(look, kept().kept());
        kept().keep(Kept.PLAIN);
        assertEquals(Optional.empty(), kept().kept().language());
    }

    @Test
    void aLookThatCannotBeReadIsPlain() throws Exception {
        assertEquals(Kept.PLAIN, kept().kept());
        Files.write(folder.resolve("look.properties"), new byte[] {'n', '=', '\\', 'u', 'x', (byte) 0xff});
        assertEquals(Kept.PLAIN, kept().kept());
    }

    @Test
    void aLookThatCannotBeWrittenIsNoTrouble() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "");
        LookStore look = new KeptLook(file.resolve("look.properties"), Runnable::run);
        look.keep(new Kept(true, true, true));
        assertEquals(Kept.PLAIN, look.kept());
    }

    @Test
    void thePrivateFolderIsOfOurOwnInTheStorageOfTheDevice() {
        assertEquals(
                "tenthwise", new AttachStorage(folder).folder().getFileName().toString());
    }

    @Test
    void recordsGoWhereThePersonKeepsDocuments() {
        assertTrue(new AttachStorage(folder).records().endsWith(Path.of("Documents", "Tenthwise")));
    }

    private LookStore kept() {
        return new KeptLook(folder.resolve("look.properties"), Runnable::run);
    }
}
