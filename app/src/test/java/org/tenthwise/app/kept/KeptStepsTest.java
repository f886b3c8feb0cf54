package org.tenthwise.app.kept;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptStepsTest {

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void named() {
        file = folder.resolve("own").resolve(KeptSteps.FILE);
    }

    private OptionalInt of(String run) {
        return new KeptSteps(file).of(run);
    }

    @Test
    void theLastStepOfEachRunIsThereForTheNextProcess() {
        KeptSteps steps = new KeptSteps(file);
        steps.keep("LG-2207-C-014", 9);
        steps.keep("LG-2207-C-015", 2);
        steps.keep("LG-2207-C-014", 13);
        assertEquals(OptionalInt.of(13), of("LG-2207-C-014"));
        assertEquals(OptionalInt.of(2), of("LG-2207-C-015"));
        assertEquals(OptionalInt.empty(), of("LG-2207-C-01"));
    }

    @Test
    void theRunsWorkedOnLongAgoAreLetGo() {
        KeptSteps steps = new KeptSteps(file);
        for (int run = 0; run < 30; run++) {
            steps.keep("R-" + run, run);
        }
        assertEquals(OptionalInt.empty(), of("R-9"));
        assertEquals(OptionalInt.of(10), of("R-10"));
        assertEquals(OptionalInt.of(29), of("R-29"));
    }

    @Test
    void aSpoiltFileKeepsNothingAndIsWrittenAnew() throws Exception {
        Files.createDirectories(file.getParent());
        Files.writeString(file, "run.0=R-1\nstep.0=seven\nrun.1=R-2\nstep.1=99999999999\nrun.2=R-3\n\\u00");
        assertEquals(OptionalInt.empty(), of("R-1"));
        new KeptSteps(file).keep("R-1", 7);
        assertEquals(OptionalInt.of(7), of("R-1"));
        assertEquals(OptionalInt.empty(), of("R-2"));
    }
}
