package org.tenthwise.app.ui.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.app.command.Replayed;
import org.tenthwise.app.ui.Display;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * The whole drawings that come along, at the run: one step a unit, kind, way and standing, before anything is read,
 * where all is right, and where things went wrong as they do.
 */
class WholeDrawingsScreenTest extends RunAtHand {

    private static final Set<String> NARROW = Set.of("day", "night-150-1024x600", "day-150-portrait");
    private static final Set<String> SEEN = new HashSet<>();

    @Override
    protected List<Display> displays() {
        return Display.ALL.stream()
                .filter(display -> NARROW.contains(display.name()))
                .toList();
    }

    @ParameterizedTest
    @EnumSource(ExamplePart.class)
    void everyKindHoldsInEveryStateItComesTo(ExamplePart part) throws Exception {
        beginARunOf(part.plan());
        everyStepNewToTheEye(part, "open");
        Replayed.play(run.session, part, part.passingReadings());
        assertEquals(0, lines(VerdictKind.OPEN));
        everyStepNewToTheEye(part, "right");
        beginARunOf(part.plan());
        Replayed.play(run.session, part, part.failingReadings());
        everyStepNewToTheEye(part, "wrong");
    }

    private long lines(VerdictKind standing) {
        return run.session.state().sheet().lines().stream()
                .filter(line -> line.finding().verdict().standing() == standing)
                .count();
    }

    private void everyStepNewToTheEye(ExamplePart part, String readings) throws Exception {
        for (Line line : run.session.state().sheet().lines()) {
            String standing = line.finding().verdict().standing().name().toLowerCase(Locale.ROOT);
            boolean read = line.finding().missing() < line.finding().readingsInAll();
            if (SEEN.add(part.plan().unit() + way(line.step().check()) + standing + read)) {
                run.session.goTo(line.step().number());
                seen(
                        "run",
                        "whole-%s-%s-%s-%s"
                                .formatted(
                                        part.plan().part().number(), line.step().number(), readings, standing),
                        this::screen);
            }
        }
    }

    /** A word for what differs at the screen between checks. */
    private static String way(Check check) {
        return check.asDimension()
                .flatMap(dimension -> dimension.asIndicated())
                .map(indicated -> indicated.of().name())
                .or(() -> check.asSize().map(size -> size.feature().toString()))
                .or(() -> check.asWorked().map(worked -> worked.by().getClass().getSimpleName()))
                .orElseGet(() -> check.getClass().getSimpleName());
    }
}
