package org.tenthwise.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.checklists.catalogue.DemoPart;

/** A store and a folder for records, for the tests that walk a plan with a readings file. */
abstract class Walking {

    @TempDir
    Path folder;

    Path store;
    Path out;

    @BeforeEach
    void name() {
        store = folder.resolve("s.db");
        out = folder.resolve("out");
    }

    final Typed walk(Object plan, Object readings) {
        return Typed.line("walk", plan, "--readings", readings, "--store", store, "--out", out);
    }

    /** Walks the screw carrier with these readings. */
    final Typed walkReadings(String readings) throws IOException {
        return walk("LG-2207", file("r.toml", readings));
    }

    /** Walks the screw carrier with the readings that pass, and something else instead of what stands there. */
    final Typed walkWith(String insteadOf, String something) throws IOException {
        return walkReadings(passing(insteadOf, something));
    }

    /** The readings of the screw carrier that pass, with something else instead of what stands there. */
    static String passing(String insteadOf, String something) {
        return replaced(DemoPart.SCREW_CARRIER.passingReadings(), insteadOf, something);
    }

    static String replaced(String text, String insteadOf, String something) {
        if (!text.contains(insteadOf)) {
            throw new AssertionError("Nowhere: " + insteadOf);
        }
        return text.replace(insteadOf, something);
    }

    final Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
