package org.tenthwise.app.export;

import static org.tenthwise.app.export.CsvColumn.*;

import java.util.Optional;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.words.Word;

/** What a pass came to and what was signed for it, written into the cells that all rows of the pass have alike. */
final class CsvFound {

    private CsvFound() {}

    /** What was signed for the pass in hand; an earlier pass had another size. */
    static void disposed(CsvRow row, Line line) {
        line.disposed().ifPresent(disposed -> disposed(row, disposed));
    }

    /** What was signed, by whom, and under which number. */
    static void disposed(CsvRow row, StepEvent.DispositionSigned disposed) {
        row.text(DISPOSITION, Word.of(disposed.disposition()));
        row.text(DISPOSITION_REASON, disposed.reason());
        row.text(DISPOSITION_SIGNED_BY, disposed.signedBy());
        disposed.document().ifPresent(number -> row.text(DISPOSITION_NUMBER, number));
    }

    static void pass(CsvRow row, PassStory story) {
        row.number(PASS, story.pass().number());
        story.pass().why().ifPresent(why -> row.text(PASS_BEGUN_FOR, Word.of(why)));
        row.text(PASS_COUNTS, story.pass().ended().isEmpty() ? "yes" : "replaced");
        story.finding().ifPresent(of -> finding(row, of));
        story.cut().ifPresent(cut -> cut(row, cut, counting(story)));
    }

    /**
     * One column says how a row counts: as what was offered in it did at its time, otherwise as the machine is known to
     * now.
     */
    private static Optional<Register> counting(PassStory story) {
        return story.finding()
                .flatMap(Finding::proposal)
                .filter(proposal -> proposal.change().isPresent())
                .map(Proposal::register)
                .orElseGet(story::register);
    }

    private static void cut(CsvRow row, CutSoFar cut, Optional<Register> counting) {
        row.number(CUT, cut.number());
        cut.asked().ifPresent(asked -> row.size(CUT_ASKED, Register.counted(asked, counting)));
        cut.atMost().ifPresent(most -> row.size(CUT_ASKED_AT_MOST, Register.counted(most, counting)));
        row.size(CUT_CAME_OFF, Register.counted(cut.cameOff(), counting));
        row.text(REGISTER, counting.map(Word::of).orElse("size"));
    }

    private static void proposed(CsvRow row, Proposal proposal) {
        if (proposal.cut() instanceof EvenCut.NoCut refused) {
            refused.safe().ifPresent(safe -> row.size(SAFE_CUT, safe));
            row.text(NO_CUT_FOR, Word.of(refused.reason()));
        } else {
            row.size(OFFSET_CHANGE, proposal.offset().or(proposal::change).orElseThrow());
            row.text(REGISTER, proposal.register().map(Word::of).orElse("size"));
        }
    }

    static void finding(CsvRow row, Finding finding) {
        Verdict verdict = finding.verdict();
        row.text(VERDICT, Word.of(verdict.standing()));
        finding.check().judgedBy().ifPresent(what -> row.text(JUDGED_BY, what));
        finding.check()
                .asDimension()
                .flatMap(CheckOfDimension::drawingSays)
                .ifPresent(modifier -> row.text(MODIFIER, modifier.name()));
        finding.value().ifPresent(value -> row.size(JUDGED, value));
        finding.allowed().ifPresent(allowed -> row.size(ALLOWED, allowed));
        finding.clearance().ifPresent(clearance -> {
            row.size(LEAST, clearance.least());
            row.size(GREATEST, clearance.greatest());
        });
        if (!finding.bothEnds().isEmpty()) {
            row.size(LEAST, finding.bothEnds().get(0));
            row.size(GREATEST, finding.bothEnds().get(1));
        }
        verdict.margin().ifPresent(margin -> {
            row.size(
                    DISTANCE,
                    margin.inside() ? margin.distance() : margin.distance().negated());
            row.text(FROM_LIMIT, Word.of(margin.limit()));
        });
        finding.proposal().ifPresent(proposal -> proposed(row, proposal));
    }
}
