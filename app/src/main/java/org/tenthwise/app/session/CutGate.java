package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.verdict.VerdictKind;

/** What is said against cutting the work again. */
final class CutGate {

    private CutGate() {}

    /** Against a cut before everything is read and settled; of a size, unless someone signed for it. */
    static Optional<Objection> cutting(Finding finding, Pass pass) {
        Objection.Kind unread = isCut(finding) ? Objection.Kind.PLACES_UNREAD : Objection.Kind.TEETH_UNREAD;
        return Objection.where(
                isCutAgain(finding) && isMissing(finding) && pass.onThese().isEmpty(), unread);
    }

    /**
     * Against signing for a cut on what is read so far: where nothing is, or everything, where it was done, it is past
     * size, or teeth are judged: nobody cuts all round on one place.
     */
    static Optional<Objection> onThese(Finding finding, Pass pass) {
        boolean wanted = isCut(finding)
                && isMissing(finding)
                && !pass.standing().isEmpty()
                && pass.onThese().isEmpty()
                && finding.verdict().standing() != VerdictKind.FAIL;
        return wanted ? Optional.empty() : Optional.of(Objection.of(Objection.Kind.NOT_ASKED_HERE));
    }

    /** Of the pass itself, or the root that its wires may lie on. */
    private static boolean isMissing(Finding finding) {
        return finding.missing() > 0 || finding.awaitsAnother();
    }

    /** A size, or teeth. */
    private static boolean isCutAgain(Finding finding) {
        return isCut(finding)
                || finding.check()
                        .asDimension()
                        .flatMap(CheckOfDimension::cutAgainBeyond)
                        .isPresent();
    }

    private static boolean isCut(Finding finding) {
        return finding.check().asSize().isPresent();
    }
}
