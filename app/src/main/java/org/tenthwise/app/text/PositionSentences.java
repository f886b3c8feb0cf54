package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.PositionReading;
import org.tenthwise.model.record.AtPoint;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** What is said of where axes lie. */
final class PositionSentences extends FindingSentences {

    private final PositionFinding finding;

    PositionSentences(PositionFinding finding, Words words) {
        super(finding, words);
        this.finding = finding;
    }

    /** Outside, a zone has no above and no below. */
    @Override
    String distance() {
        if (finding.sizeFailed() && finding.verdict().margin().isEmpty()) {
            return words.say("position.size-failed", finding.check().restsOn().get(0));
        }
        return finding.verdict()
                .margin()
                .filter(margin -> !margin.inside())
                .map(margin -> words.say(
                        "position.outside",
                        Figures.withUnit(
                                figures().distance(margin.distance()), figures().unit()),
                        limit(margin)))
                .orElseGet(super::distance);
    }

    @Override
    String limit(Verdict.Margin margin) {
        boolean more = finding.decidingPoint()
                .filter(point -> point.bonus().signum() > 0)
                .isPresent();
        return words.say(more ? "position.zone-with-bonus" : "position.zone");
    }

    /** What may be, where the size adds to the zone of the drawing. */
    @Override
    String answeredBeside() {
        return finding.decidingPoint()
                .filter(point -> finding.check().hasBonus() && finding.size().isPresent())
                .map(point -> words.say(
                        "position.allowed",
                        figures().plain(point.allowed()),
                        figures().plain(point.bonus())))
                .orElse("");
    }

    @Override
    List<Weighed> remarks() {
        List<Weighed> remarks = new ArrayList<>();
        finding.decidingPoint().map(this::off).map(Weighed::form).ifPresent(remarks::add);
        if (finding.check().hasBonus()) {
            remarks.add(Weighed.how(words.say("position.datum-shift")));
        }
        finding.directionMayMove()
                .map(across -> words.say(
                        "position.angle-uncertainty",
                        Figures.withUnit(
                                finding.check().ofDirection().orElseThrow().expanded()),
                        Figures.withUnit(figures().amount(across), figures().unit())))
                .map(Weighed::how)
                .ifPresent(remarks::add);
        if (finding.check().by() == PositionReading.POLAR) {
            remarks.add(Weighed.how(words.say("position.polar")));
        }
        if (finding.check().ends().isEmpty()) {
            remarks.add(Weighed.how(words.say("position.one-end")));
        }
        return remarks;
    }

    private String off(AtPoint point) {
        String x = figures().off(point.deviation().x());
        String y = figures().off(point.deviation().y());
        List<String> called = point.point().called();
        return called.isEmpty() ? words.say("position.off", x, y) : words.say("position.off-at", called, x, y);
    }

    private StepFigures figures() {
        return StepFigures.of(finding);
    }

    /** No offset moves a hole that is there. */
    @Override
    Optional<ToDo> failed() {
        return Optional.of(ToDo.of(
                finding.sizeFailed() && finding.verdict().margin().isEmpty()
                        ? words.say(
                                "next.fail.position.size",
                                finding.check().restsOn().get(0))
                        : words.say("next.fail.position")));
    }

    @Override
    Optional<String> unproven() {
        return finding.size()
                .filter(VerdictKind.UNPROVEN::equals)
                .map(size -> words.say(
                        "next.unproven.position", finding.check().restsOn().get(0)));
    }
}
