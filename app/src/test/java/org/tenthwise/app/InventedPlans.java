package org.tenthwise.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.tenthwise.checklists.catalogue.Catalogue;
import org.tenthwise.checklists.rules.PlanProblem;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.checklists.rules.PlanReading;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.words.Message;

/** Plans of parts that do not exist, for tests. */
public final class InventedPlans {

    /** A second section of {@link #spindle}. */
    public static final String NEAR_AND_FAR =
            "sections = [{ name = \"near\", at = 30.0 }, { name = \"far\", at = 140 }]\n";

    private static final Path SPINDLE = Path.of("../checklists/src/test/resources/plans/spindle.toml");

    private static final String ROOT_STEP =
            """
            [[step]]
            number = 1
            operation = 10
            kind = "diameter"
            name = "Root"
            method = "Vee pieces."
            lower = 16.5
            upper = 17.2
            places = ["middle"]
            gauge_kind = "micrometer"
            gauge = "MC-1"
            """;

    /** One step: the root of an M20 thread, 16.5 to 17.2. */
    public static final Plan ROOT = inMillimetres(ROOT_STEP);

    /** The root, and then the thread over wires of 1.443, which rests on it. */
    public static final Plan ROOT_THEN_WIRES = inMillimetres(
            ROOT_STEP
                    + """

            [[step]]
            number = 2
            operation = 10
            kind = "thread-over-wires"
            name = "M20 over wires"
            method = "Three wires."
            designation = "M20x2.5-6g"
            wire = 1.443
            minor_step = 1
            places = ["middle"]
            cut_again = "too big"
            gauge = "MW-1"
            """);

    private InventedPlans() {}

    /** A plan file in which two things are wrong, and a folder that is called like one. */
    public static Catalogue unsound() {
        String text = text(
                "mm",
                """
                [[step]]
                number = 7
                operation = 10
                kind = "diameter"
                name = "Journal"
                lower = 30.021
                upper = 30.000
                places = ["middle"]
                gauge_kind = "micrometer"
                """);
        return new Catalogue(
                List.of(),
                List.of(
                        new Catalogue.RefusedFile(
                                "KX-9.toml", ((PlanReading.Bad) new PlanReader().read(text)).problems()),
                        new Catalogue.RefusedFile("x.toml", List.of(PlanProblem.ofFile(Message.of("file.folder"))))));
    }

    /** The plan a text says; where the reader finds a problem, the test fails with it. */
    public static Plan read(String text) {
        PlanReading reading = new PlanReader().read(text);
        if (reading instanceof PlanReading.Good good) {
            return good.plan();
        }
        throw new AssertionError(((PlanReading.Bad) reading).problems().toString());
    }

    /**
     * The text of a part "T-1" rev A of one operation, 10.
     *
     * @param unit of the plan's figures: mm or in
     * @param steps the steps, and any further table
     */
    public static String text(String unit, String steps) {
        return """
                format = 1
                part = "T-1"
                revision = "A"
                issue = "1"
                name = "Test part, invented"
                material = "invented melt"
                drawing = "T-1 sheet 1"
                unit = "%s"
                remark = "Invented part, for trying out"

                [[operation]]
                number = 10
                name = "Turn"

                """
                        .formatted(unit)
                + steps;
    }

    public static Plan inMillimetres(String steps) {
        return read(text("mm", steps));
    }

    public static Plan inInches(String steps) {
        return read(text("in", steps));
    }

    /**
     * One run-out of 0.02 in four jaws, read at four places, with {@code more} behind it: a key of the same step, or
     * further steps.
     */
    public static Plan spindle(String more) {
        try {
            return read(Files.readString(SPINDLE) + more);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
