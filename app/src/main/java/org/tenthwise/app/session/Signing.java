package org.tenthwise.app.session;

import java.util.Optional;
import org.tenthwise.model.plan.Signs;
import org.tenthwise.model.record.Outcome;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Person;
import org.tenthwise.model.run.Signature;
import org.tenthwise.model.run.SignedAs;

/** What is said against a signature before it is kept. */
final class Signing {

    private Signing() {}

    /** Against {@code signedBy} signing the run as it stands now. */
    static Optional<Objection> against(Sheet sheet, String signedBy, SignedAs meaning) {
        if (signedBy.isBlank()) {
            return Optional.of(Objection.of(Objection.Kind.BLANK));
        }
        Optional<Objection> hidden =
                inName(signedBy).or(() -> Objection.where(sheet.putAway().isPresent(), Objection.Kind.PUT_AWAY));
        return hidden.isPresent()
                ? hidden
                : switch (meaning) {
                    case MACHINED_AND_MEASURED ->
                        hasSigned(sheet, signedBy, SignedAs.MEASURED_AGAIN)
                                ? notASecondPerson(signedBy)
                                : Optional.empty();
                    case MEASURED_AGAIN ->
                        hasSigned(sheet, signedBy, SignedAs.MACHINED_AND_MEASURED)
                                        || sheet.run().wasReadBy(signedBy)
                                ? notASecondPerson(signedBy)
                                : Optional.empty();
                    case ACCEPTED ->
                        conforms(sheet.outcome())
                                ? Optional.empty()
                                : Optional.of(Objection.of(Objection.Kind.NOT_TO_BE_ACCEPTED));
                    case NOT_ACCEPTED -> Optional.empty();
                    case OTHER -> Optional.of(Objection.of(Objection.Kind.NOT_ASKED_HERE));
                };
    }

    /** Against a name that looks like another. */
    static Optional<Objection> inName(String name) {
        return Signs.hiddenIn(name.strip()).map(sign -> new Objection(Objection.Kind.HIDDEN_SIGN, sign));
    }

    /** Against words that say nothing, or in which a sign stands that nobody sees. */
    static Optional<Objection> inReason(String reason) {
        return reason.isBlank() ? Optional.of(Objection.of(Objection.Kind.BLANK)) : inName(reason);
    }

    private static Optional<Objection> notASecondPerson(String signedBy) {
        return Optional.of(new Objection(Objection.Kind.NOT_A_SECOND_PERSON, signedBy.strip()));
    }

    private static boolean conforms(Outcome outcome) {
        return outcome == Outcome.CONFORMS
                || outcome == Outcome.CONFORMS_WITH_CONCESSIONS
                || outcome == Outcome.ASKED_CONFORMS;
    }

    private static boolean hasSigned(Sheet sheet, String person, SignedAs meaning) {
        return sheet.run().signatures().stream()
                .anyMatch((Signature signature) ->
                        signature.meaning() == meaning && Person.isSame(signature.signedBy(), person));
    }
}
