package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.CutSoFar;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.record.TemperatureEffect;
import org.tenthwise.model.run.StepEvent;
import org.tenthwise.model.words.Words;

/**
 * What to cut next, or why nothing is, in short sentences: one figure, as the register of the machine counts it, and
 * none while anything is still to be read.
 */
final class CutAdvice {

    private final Words words;

    CutAdvice(Words words) {
        this.words = words;
    }

    /** Metal is left beyond the limit. */
    String again(Line line, Optional<CutSoFar> last) {
        return moreThanThereWas(line.finding(), last).orElseGet(() -> toCut(line, last));
    }

    private String toCut(Line line, Optional<CutSoFar> last) {
        Finding finding = line.finding();
        return FindingSentences.of(finding, words)
                .againstACut()
                .or(() -> finding.proposal().map(proposal -> String.join(" ", cut(line, proposal, last))))
                .orElseGet(() -> stillToRead(finding));
    }

    /**
     * Too near the limit to be proven, on the side where metal is left; a light cut is spoken of only where one can be
     * taken.
     */
    String unproven(Line line, Optional<CutSoFar> last) {
        return moreThanThereWas(line.finding(), last).orElseGet(() -> light(line, last));
    }

    /** After a cut that is said to have left more metal no amount is told: one of the readings it rests on is wrong. */
    private Optional<String> moreThanThereWas(Finding finding, Optional<CutSoFar> last) {
        return last.filter(cut -> finding.proposal().isPresent()
                        && cut.leftMoreThanThereWas(size(finding).limits()))
                .map(cut -> words.say(
                        "next.cut.more-metal",
                        StepFigures.of(finding).withUnit(cut.cameOff().abs())));
    }

    /**
     * Where nothing more is to be cut, that the last cut took off twice as much as was asked; empty where it did not.
     */
    String twice(Finding finding, Optional<CutSoFar> last) {
        return last.filter(cut ->
                        cut.countsRather().filter(Register.RADIUS::equals).isPresent())
                .map(cut -> String.join(" ", soFar(cut, cut.said(), StepFigures.of(finding))))
                .orElse("");
    }

    private String light(Line line, Optional<CutSoFar> last) {
        Finding finding = line.finding();
        Proposal proposal = finding.proposal().orElseThrow();
        List<String> said = new ArrayList<>(
                List.of(words.say(proposal.change().isPresent() ? "next.cut.unproven" : "next.cut.unproven-as-it-is")));
        said.addAll(cut(line, proposal, last));
        boolean signingIsSaid =
                proposal.cut() instanceof EvenCut.NoCut && way(finding, proposal, last) != Proposal.Way.AT_MOST;
        said.add(words.say(signingIsSaid ? "next.cut.or-measure-alone" : "next.cut.or-measure"));
        return String.join(" ", said);
    }

    private static Proposal.Way way(Finding finding, Proposal proposal, Optional<CutSoFar> last) {
        return proposal.way(size(finding), last);
    }

    private static CheckOfSize size(Finding finding) {
        return finding.check().asSize().orElseThrow();
    }

    private List<String> cut(Line line, Proposal proposal, Optional<CutSoFar> last) {
        Finding finding = line.finding();
        StepFigures figures = StepFigures.of(finding);
        List<String> said = new ArrayList<>();
        last.ifPresent(cut -> said.addAll(soFar(cut, proposal.register(), figures)));
        if (proposal.cut() instanceof EvenCut.NoCut refused) {
            said.addAll(refused(finding, proposal, refused, last, figures));
        } else {
            said.addAll(unevenReadOnce(line, figures));
            said.addAll(notTwice(last));
            said.add(offered(finding, proposal, figures));
            FindingSentences.of(finding, words).withACut().ifPresent(said::add);
            last.ifPresent(cut -> said.add(words.say("next.cut.holds")));
        }
        if (!proposal.unread().isEmpty()) {
            said.add(words.say("next.cut.on-these", CutOnTheseWords.places(proposal.unread())));
        }
        return said;
    }

    /**
     * One even cut would bring them in, yet they lie further apart than half the tolerance: one misread place is
     * likelier than a wall like that, and would scrap the others. Read again and still so, it is the wall. Common
     * practice.
     */
    private List<String> unevenReadOnce(Line line, StepFigures figures) {
        Finding finding = line.finding();
        boolean again = line.pass()
                .why()
                .filter(StepEvent.PassBegun.Why.MEASURED_AGAIN::equals)
                .isPresent();
        Length by = apart(finding);
        return !again
                        && !size(finding).isOne()
                        && size(finding)
                                .limits()
                                .width()
                                .filter(width -> by.isAbove(width.half()))
                                .isPresent()
                ? List.of(words.say("next.cut.uneven-read-again", figures.plain(by), unit(figures)))
                : List.of();
    }

    private static Length apart(Finding finding) {
        List<Length> sizes = finding.measured().stream().map(Measured::value).toList();
        return Length.greatest(sizes).minus(Length.least(sizes));
    }

    private String offered(Finding finding, Proposal proposal, StepFigures figures) {
        Length change = proposal.change().orElseThrow();
        return proposal.register()
                .map(register -> words.say(
                        words.key("next.cut.offset", register), figures.change(register.counts(change)), unit(figures)))
                .orElseGet(() -> words.say(comesOff(feature(finding)), figures.amount(change.abs()), unit(figures)));
    }

    private static String comesOff(Feature feature) {
        return switch (feature.form()) {
            case TURNED, HOLE -> "next.cut.diameter";
            case FACES -> feature.isInside() ? "next.cut.width" : "next.cut.in-all";
            case LENGTH, CHAMFER, RADIUS -> feature.isInside() ? "next.cut.depth" : "next.cut.comes-off";
        };
    }

    /** An offset that was not taken up by the control yet comes on top of the next. */
    private List<String> notTwice(Optional<CutSoFar> last) {
        return last.filter(CutSoFar::tookNothing).map(cut -> words.say("next.cut.not-twice")).stream()
                .toList();
    }

    private List<String> refused(
            Finding finding, Proposal proposal, EvenCut.NoCut refused, Optional<CutSoFar> last, StepFigures figures) {
        return switch (refused.reason()) {
            case BELOW_LEAST_CUT -> List.of(belowLeast(finding, proposal, last));
            case PAST_SIZE -> List.of(words.say("next.cut.past-size"), words.say("next.cut.nothing-more"));
            case NO_AIM -> // no figure: half of the readings of work on its limit would reject it
                Stream.concat(
                                Stream.of(words.say(
                                        "next.cut.no-aim", feature(finding).key())),
                                FindingSentences.of(finding, words).withACut().stream())
                        .toList();
            case UNEVEN -> noEvenCut(finding, proposal, refused, last, figures);
        };
    }

    /** A bore can be honed where a tool would only rub; common practice. */
    private String belowLeast(Finding finding, Proposal proposal, Optional<CutSoFar> last) {
        boolean spring = way(finding, proposal, last) == Proposal.Way.SPRING_PASS;
        return words.say(
                spring ? "next.cut.below-least.spring" : "next.cut.below-least",
                feature(finding).key());
    }

    /** One size alone, of one place or made of all by the drawing, is missed only by the steps of the register. */
    private List<String> noEvenCut(
            Finding finding, Proposal proposal, EvenCut.NoCut refused, Optional<CutSoFar> last, StepFigures figures) {
        Length by = apart(finding);
        boolean uneven = !size(finding).isOne() && by.signum() > 0;
        List<String> said = new ArrayList<>(List.of(
                uneven
                        ? words.say("next.cut.uneven", figures.plain(by), unit(figures))
                        : words.say("next.cut.no-step")));
        if (proposal.comesOff(size(finding)).isPresent()) {
            if (uneven && last.filter(CutSoFar::tookNothing).isEmpty()) {
                said.add(words.say("next.cut.find-out"));
            }
            said.addAll(notTwice(last));
        }
        refused.safe().ifPresent(safe -> said.add(atMost(finding, safe, proposal.register(), figures)));
        return said;
    }

    /** Counted as it is typed: a figure on diameter in a register of radii takes off twice as much. */
    private String atMost(Finding finding, Length safe, Optional<Register> register, StepFigures figures) {
        if (safe.signum() == 0) {
            return words.say("next.cut.nothing-more-signed");
        }
        if (size(finding).isTooLittleToCut(safe)) {
            return words.say("next.cut.at-most-below-least");
        }
        Length change = feature(finding).isOutside() ? safe.negated() : safe;
        return register.map(counting -> words.say(
                        words.key("next.cut.at-most", counting),
                        figures.change(counting.counts(change)),
                        unit(figures)))
                .orElseGet(() -> words.say("next.cut.at-most", figures.amount(safe), unit(figures)));
    }

    private List<String> soFar(CutSoFar cut, Optional<Register> register, StepFigures figures) {
        List<String> said = new ArrayList<>();
        String off = figures.plain(Register.counted(cut.cameOff(), register));
        said.add(cut.asked()
                .map(asked -> words.say("next.cut.asked", figures.amount(Register.counted(asked, register)), off))
                .or(() -> cut.atMost()
                        .map(most -> words.say(
                                "next.cut.asked-at-most", figures.amount(Register.counted(most, register)), off)))
                .orElseGet(() -> words.say("next.cut.came-off", off)));
        if (cut.tookNothing()) {
            said.add(words.say("next.cut.nothing-came-off"));
        } else {
            cut.countsRather()
                    .filter(rather -> register.filter(rather::equals).isEmpty())
                    .ifPresent(rather -> said.add(words.say("next.cut.counts", rather)));
        }
        return said;
    }

    private String stillToRead(Finding finding) {
        int places = finding.step().check().slots().size() - finding.measured().size();
        if (places > 0) {
            return words.say("next.cut.unread", places);
        }
        return finding.warmth()
                .map(TemperatureEffect::missing)
                .filter(missing -> missing > 0)
                .map(missing -> words.say("next.cut.temperatures"))
                .orElse("");
    }

    private static Feature feature(Finding finding) {
        return size(finding).feature();
    }

    private static String unit(StepFigures figures) {
        return figures.unit().symbol();
    }
}
