package org.tenthwise.checklists.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;

class PlanFolderTest {

    private static final String PLAN = DemoPart.SCREW_CARRIER.planText();

    @TempDir
    private Path folder;

    @Test
    void plansAreListedByFileNameAndReadingsAreNoPlans() throws IOException {
        write("b.toml", PLAN);
        write("a.toml", PLAN.replace("revision = \"C\"", "revision = \"D\""));
        write("b-pass.readings.toml", DemoPart.SCREW_CARRIER.passingReadings());
        write("notes.txt", "none of it");
        Catalogue catalogue = new PlanFolder(folder).read();
        assertEquals(
                List.of("a.toml", "b.toml"),
                catalogue.listed().stream().map(Catalogue.Listed::file).toList());
        assertEquals(List.of(), catalogue.refused());
        assertEquals(
                List.of(new PartId("LG-2207", "D"), new PartId("LG-2207", "C")),
                catalogue.plans().stream().map(Plan::part).toList());
    }

    @Test
    void aWrongPlanIsRefusedWithItsProblemsAndTheOthersStay() throws IOException {
        write("a.toml", "format = 2\n");
        Files.write(folder.resolve("b.toml"), new byte[] {'n', '=', '"', (byte) 0xD8, '"'});
        write("c.toml", PLAN);
        Catalogue catalogue = new PlanFolder(folder).read();
        assertEquals(
                List.of(
                        "a.toml: [1:1: format 2 cannot be read here, only format 1]",
                        "b.toml: [1:1: is not UTF-8 text; save it as UTF-8]"),
                refused(catalogue));
        assertEquals(1, catalogue.plans().size());
    }

    @Test
    void whateverLiesUnderTheNameOfAPlanTheOthersAreRead() throws IOException {
        Files.createDirectory(folder.resolve("a.toml"));
        Files.createSymbolicLink(folder.resolve("b.toml"), folder.resolve("gone"));
        write("c.toml", "[[\"\\uD800\"step]]\n");
        write("d.toml", "[" + "a.".repeat(3_000) + "a]\n");
        write("e.toml", "");
        write("f.toml", "# " + "x".repeat(4_000_000));
        write("z.toml", PLAN);
        Catalogue catalogue = new PlanFolder(folder).read();
        assertEquals(
                List.of("LG-2207"),
                catalogue.plans().stream().map(plan -> plan.part().number()).toList());
        assertEquals(
                List.of(
                        "a.toml: is a folder, not a plan file",
                        "b.toml: cannot be read as a file",
                        "c.toml: cannot be read as TOML: invalid unicode escape sequence; write the character itself, "
                                + "not \\u and a number",
                        "d.toml: lists or tables are nested more than 32 deep; a plan needs five",
                        "e.toml: is empty",
                        "f.toml: is longer than any plan"),
                catalogue.refused().stream()
                        .map(file -> file.file() + ": " + file.problems().get(0).what())
                        .toList());
    }

    @Test
    void aSecondPlanForOnePartAndRevisionIsRefused() throws IOException {
        write("mine.toml", PLAN);
        write("yours.toml", PLAN);
        Catalogue catalogue = new PlanFolder(folder).read().orDemoParts();
        assertEquals(1, catalogue.plans().size());
        assertEquals(List.of("yours.toml: [1:1: LG-2207 rev C already has a plan, in mine.toml]"), refused(catalogue));
    }

    @Test
    void demoPartsStandOnlyWhereAShopHasNoSoundPlanOfItsOwn() throws IOException {
        assertEquals(List.of("LG-2207", "WB-118"), parts());
        write("unsound.toml", "format = 1");
        assertEquals(List.of("LG-2207", "WB-118"), parts());
        assertEquals(1, new PlanFolder(folder).read().orDemoParts().refused().size());
        write("own.toml", PLAN.replace("part = \"LG-2207\"", "part = \"OWN-1\""));
        assertEquals(List.of("OWN-1"), parts());
        assertEquals(1, new PlanFolder(folder).read().orDemoParts().refused().size());
    }

    private static List<String> refused(Catalogue catalogue) {
        return catalogue.refused().stream()
                .map(file -> file.file() + ": " + file.problems())
                .toList();
    }

    private List<String> parts() throws IOException {
        return new PlanFolder(folder)
                .read().orDemoParts().plans().stream()
                        .map(plan -> plan.part().number())
                        .toList();
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        assertThrows(IOException.class, () -> new PlanFolder(folder.resolve("none")).read());
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }
}
