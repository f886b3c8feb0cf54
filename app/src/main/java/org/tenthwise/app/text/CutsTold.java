package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.SizeFinding;

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
        Optional<Register> counting = register.filter(any -> isRound(line.finding()));
        return cuts.stream().map(cut -> cut.asked()
                .map(asked -> words.say("cut.told", cut.number(), counted(asked, counting, figures), counted(cut.cameOff(), counting, figures)))
                .orElseGet(() -> words.say("cut.told.unasked", cut.number(), counted(cut.cameOff(), counting, figures)))).toList();
    }

    private static String counted(Length onSize, Optional<Register> register, StepFigures figures) {
        return figures.amount(register.map(counting -> counting.counts(onSize)).orElse(onSize));
    }

    private static boolean isRound(Finding finding) {
        return !(finding instanceof SizeFinding size) || size.check().feature().isRound();
    }
}
