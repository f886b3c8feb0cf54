package org.tenthwise.app.text;

import java.util.Optional;
import org.tenthwise.model.compute.drilling.DrillPoint;
import org.tenthwise.model.compute.thread.AcrossGrooves;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Clamping;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Step;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * How the part is read: held or let go, square across or askew, to the point of a drill or not, and what that took off.
 */
public final class TouchWords {

    private final Words words;

    public TouchWords(Words words) {
        this.words = words;
    }

    /** What must be done before it is read; empty where the plan says nothing of holding the part. */
    public String clamping(Step step) {
        return step.clamping()
                .map(clamping -> words.say("touch.clamping", clamping))
                .orElse("");
    }

    /**
     * What must come before a cut of a part that was let go to be read; empty where it was not, and where nothing is
     * left to cut.
     */
    Optional<Weighed> beforeACut(Finding finding) {
        boolean released =
                finding.step().clamping().filter(Clamping.RELEASED::equals).isPresent();
        boolean cut = finding.verdict().standing() == VerdictKind.CUT_AGAIN
                || finding.proposal().isPresent();
        return released && cut ? Optional.of(Weighed.stays(words.say("touch.before-a-cut"))) : Optional.empty();
    }

    /** How the gauge touches and what is taken off for it, in a sentence; empty where contact changes nothing. */
    Optional<Weighed> of(SizeFinding finding) {
        Contact contact = finding.check().asSize().map(CheckOfSize::contact).orElse(Contact.SQUARE);
        if (contact instanceof Contact.DrilledHole hole) {
            Length point = DrillPoint.length(hole.diameter().length(), hole.pointAngle());
            return Optional.of(Weighed.beforehand(words.say(
                    words.key("touch.drill", hole.readTo()),
                    StepFigures.of(finding).withUnit(point))));
        }
        return contact instanceof Contact.InGrooves grooves ? Optional.of(across(finding, grooves)) : Optional.empty();
    }

    private Weighed across(SizeFinding finding, Contact.InGrooves grooves) {
        if (!grooves.standsAskew()) {
            return Weighed.how(words.say("touch.grooves.even", grooves.starts()));
        }
        Optional<Measured> shown =
                finding.deciding().or(() -> finding.measured().stream().findFirst());
        if (shown.isEmpty()) {
            return Weighed.how(words.say("touch.grooves.asked"));
        }
        return shown.flatMap(Measured::forContact)
                .map(correction -> correction.signum() == 0
                        ? Weighed.how(words.say("touch.grooves.square"))
                        : new Weighed(
                                Weighed.Weight.CORRECTED,
                                words.say("touch.grooves.askew", Heat.signed(finding, correction))))
                .orElseGet(() -> unsaid(finding, grooves, shown.orElseThrow()));
    }

    private Weighed unsaid(SizeFinding finding, Contact.InGrooves grooves, Measured shown) {
        Length askew = AcrossGrooves.askew(grooves.pitch(), grooves.starts());
        return shown.value().isAbove(askew)
                ? Weighed.stays(words.say(
                        "touch.grooves.unsaid",
                        StepFigures.of(finding)
                                .withUnit(shown.value()
                                        .minus(AcrossGrooves.diameter(
                                                shown.value(), grooves.pitch(), grooves.starts())))))
                : Weighed.how(words.say("touch.grooves.asked"));
    }
}
