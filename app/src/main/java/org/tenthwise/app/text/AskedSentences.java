package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.CertifiedEnds;
import org.tenthwise.model.gauge.LimitGaugeForm;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** What is said of what was only asked. */
final class AskedSentences extends FindingSentences {

    private final AskedFinding finding;

    AskedSentences(AskedFinding finding, Words words) {
        super(finding, words);
        this.finding = finding;
    }

    @Override
    String asked() {
        return finding.check().match(new AskedCheck.Cases<>() {
            @Override
            public String confirm(AskedCheck.Confirm confirm) {
                return words.readable(confirm.what());
            }

            @Override
            public String look(AskedCheck.VisualCheck look) {
                return words.readable(look.what());
            }

            @Override
            public String goNotGo(AskedCheck.GoNotGo gauge) {
                return words.say("run.go-not-go", gauge.go(), gauge.notGo());
            }
        });
    }

    @Override
    String distance() {
        return finding.verdict().standing() == VerdictKind.OPEN ? words.say("distance.not-answered") : super.distance();
    }

    @Override
    String value() {
        List<String> said = new ArrayList<>();
        for (Question question : finding.check().questions()) {
            Optional.ofNullable(finding.answers().get(question))
                    .ifPresent(answer -> said.add(words.say(words.key("answered", question), answer)));
        }
        return words.list(said);
    }

    /** What decides: the answer that is not as it must be, otherwise the last. */
    @Override
    String listed() {
        List<Question> answered = finding.check().questions().stream()
                .filter(finding.answers()::containsKey)
                .toList();
        return answered.stream()
                .filter(question ->
                        finding.answers().get(question) != question.answers().get(0))
                .findFirst()
                .or(() -> answered.stream().reduce((earlier, later) -> later))
                .map(question -> words.say(
                        words.key("answered", question), finding.answers().get(question)))
                .orElse("");
    }

    @Override
    List<Weighed> remarks() {
        return finding.check().match(new AskedCheck.Cases<>() {
            @Override
            public List<Weighed> confirm(AskedCheck.Confirm confirm) {
                return List.of();
            }

            @Override
            public List<Weighed> look(AskedCheck.VisualCheck look) {
                return List.of();
            }

            @Override
            public List<Weighed> goNotGo(AskedCheck.GoNotGo gauge) {
                return Stream.concat(
                                past(gauge).stream(),
                                gauge.form().map(form -> Weighed.how(ofTheGauge(form, gauge.certified()))).stream())
                        .toList();
            }
        });
    }

    /** What its ends let through, from before it is tried. */
    private List<Weighed> past(AskedCheck.GoNotGo gauge) {
        return gauge.certified().map(CertifiedEnds::past).orElse(List.of()).stream()
                .map(end -> Weighed.beforehand(words.say(
                        words.key(end.isGo() ? "limit-gauge.go-past" : "limit-gauge.not-go-past", end.limit()),
                        Figures.withUnit(end.end()),
                        Figures.withUnit(end.by()))))
                .toList();
    }

    /** What passes a gauge that lets through what is out is none the nearer to being proven by another try. */
    @Override
    Optional<String> unproven() {
        return Optional.of(words.say("limit-gauge.unproven"));
    }

    /** What it looks like, and what it really accepts. */
    private String ofTheGauge(LimitGaugeForm form, Optional<CertifiedEnds> certified) {
        String called = words.say("limit-gauge", form);
        return certified
                .map(ends -> words.say(
                        "limit-gauge.accepts",
                        called,
                        Figures.written(ends.least()),
                        Figures.withUnit(ends.greatest())))
                .orElseGet(() -> words.say("limit-gauge.with", called));
    }
}
