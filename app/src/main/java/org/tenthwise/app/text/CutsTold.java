package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Line;

/** What the cuts so far were to take off and took off, a sentence each. */
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
        Optional<Register> counting = register.filter(any -> line.step().check().cutAs().filter(Feature::isRound).isPresent());
        return cuts.stream().map(cut -> told(cut, counting, figures)).toList();
    }

    private String told(CutSoFar cut, Optional<Register> counting, StepFigures figures) {
        String off = figures.plain(Register.counted(cut.cameOff(), counting));
        return cut.asked().map(asked -> words.say("cut.told", cut.number(), figures.amount(Register.counted(asked, counting)), off))
                .orElseGet(() -> words.say("cut.told.unasked", cut.number(), off));
    }
}
