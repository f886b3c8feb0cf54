package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.CertifiedEnds;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.gauge.LimitGaugeForm;
import org.tenthwise.model.tolerance.Limits;

/** What is not measured: a question or two, answered by a tap. */
public sealed interface AskedCheck extends Check {

    /** What {@code cases} has for this kind. */
    <R> R match(Cases<R> cases);

    @Override
    default List<Slot> slots() {
        return List.of();
    }

    @Override
    default List<Integer> restsOn() {
        return List.of();
    }

    @Override
    default Optional<Limits> judgedAgainst() {
        return Optional.empty();
    }

    @Override
    default Optional<String> judgedBy() {
        return Optional.empty();
    }

    @Override
    default <R> R match(Check.Cases<R> cases) {
        return cases.asked(this);
    }

    /** Something for each kind of check that only asks. */
    interface Cases<R> {

        R confirm(Confirm check);

        R look(VisualCheck check);

        R goNotGo(GoNotGo check);
    }

    /** Something done or so, or not: a set-up, a tip, the lot on the bar. */
    record Confirm(String what) implements AskedCheck {

        /** The word plans and files for programs have for it. */
        public static final String KEY = "confirm";

        @Override
        public String key() {
            return KEY;
        }

        @Override
        public List<Question> questions() {
            return List.of(Question.CONFIRMED);
        }

        @Override
        public Optional<Means> means() {
            return Optional.empty();
        }

        @Override
        public StepClass usualClass() {
            return StepClass.SET_UP;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.confirm(this);
        }
    }

    /** Something that can only be seen. */
    record VisualCheck(String what) implements AskedCheck {

        /** The word plans and files for programs have for it. */
        public static final String KEY = "look";

        @Override
        public String key() {
            return KEY;
        }

        @Override
        public List<Question> questions() {
            return List.of(Question.LOOKS_RIGHT);
        }

        @Override
        public Optional<Means> means() {
            return Optional.empty();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.look(this);
        }
    }

    /**
     * A limit gauge with a go and a not-go end.
     *
     * @param go what the go end must do, in the plan's words
     * @param notGo what the not-go end must not do, in the plan's words
     * @param form what it looks like; absent where the plan does not say
     * @param certified its ends by its certificate; absent where the plan does not have them
     */
    record GoNotGo(
            String go,
            String notGo,
            Optional<String> gauge,
            Optional<LimitGaugeForm> form,
            Optional<CertifiedEnds> certified)
            implements AskedCheck {

        /** One of which nothing more is known. */
        public GoNotGo(String go, String notGo, Optional<String> gauge) {
            this(go, notGo, gauge, Optional.empty(), Optional.empty());
        }

        /** The word plans and files for programs have for it. */
        public static final String KEY = "go-not-go";

        @Override
        public String key() {
            return KEY;
        }

        @Override
        public List<Question> questions() {
            return List.of(Question.GO_ENTERS, Question.NOT_GO_STAYS_OUT);
        }

        @Override
        public Optional<CertifiedEnds> certifiedEnds() {
            return certified;
        }

        @Override
        public Optional<Means> means() {
            return Optional.of(new Means(GaugeKind.LIMIT_GAUGE, gauge, Optional.empty()));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.goNotGo(this);
        }
    }
}
