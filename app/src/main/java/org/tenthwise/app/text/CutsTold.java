package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.words.Words;

/**
 * What the cuts so far were to take off and took off, a sentence each. One counted in radii says so: the sizes beside
 * it are diameters.
 */
public final class CutsTold {

    private final Words words;

    public CutsTold(Words words) {
        this.words = words;
    }

    /** As the register counts, where it is known and the size goes round the axis; on the size otherwise. */
    public List<String> told(Line line, Optional<Register> register) {
        List<CutSoFar> cuts = CutSoFar.of(line);
        if (cuts.isEmpty()) {
            return List.of();
        }
        StepFigures figures = StepFigures.of(line.finding());
        return cuts.stream()
                .map(cut -> told(cut, counting(line, register), figures))
                .toList();
    }

    /** The same of one of them. */
    public String told(CutSoFar cut, Line line, Optional<Register> register) {
        return told(cut, counting(line, register), StepFigures.of(line.finding()));
    }

    private static Optional<Register> counting(Line line, Optional<Register> register) {
        return register.filter(any -> line.step().check().isTurned());
    }

    private String told(CutSoFar cut, Optional<Register> counting, StepFigures figures) {
        String off = figures.plain(Register.counted(cut.cameOff(), counting));
        String told = cut.asked()
                .map(asked ->
                        words.say("cut.told", cut.number(), figures.amount(Register.counted(asked, counting)), off))
                .or(() -> cut.atMost()
                        .map(most -> words.say(
                                "cut.told.at-most",
                                cut.number(),
                                figures.amount(Register.counted(most, counting)),
                                off)))
                .orElseGet(() -> words.say("cut.told.unasked", cut.number(), off));
        return counting.filter(Register.RADIUS::equals).isPresent() ? words.say("cut.told.radius", told) : told;
    }
}
