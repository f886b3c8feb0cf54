package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.plan.PositionCheck;
import org.tenthwise.model.plan.PositionReading;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.TruePlace;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.AtPoint;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.words.Words;

/** Turns what was found about positions into the picture of their zone. */
final class PositionPictureFactory {

    private final Words words;

    PositionPictureFactory(Words words) {
        this.words = words;
    }

    PositionPicture picture(PositionFinding finding, String spoken) {
        Length zone = finding.check().zone().length();
        return new PositionPicture(
                zone,
                finding.decidingPoint().map(AtPoint::allowed).orElse(zone),
                spots(finding),
                notes(finding),
                spoken);
    }

    /** The hole that the next reading belongs to. */
    private static Optional<TruePlace> toRead(PositionFinding finding) {
        List<Slot> read = finding.measured().stream().map(Measured::slot).toList();
        return finding.check().points().stream()
                .filter(point -> !read.contains(point.first()) || !read.contains(point.second()))
                .findFirst()
                .map(PositionCheck.AxisAt::hole);
    }

    private static List<PositionPicture.Axis> spots(PositionFinding finding) {
        List<PositionPicture.Axis> spots = new ArrayList<>();
        Optional<AtPoint> before = Optional.empty();
        for (AtPoint point : finding.points()) {
            spots.add(new PositionPicture.Axis(
                    point.deviation().x(),
                    point.deviation().y(),
                    finding.decidingPoint().filter(point::equals).isPresent(),
                    before.filter(other ->
                                    other.point().hole().equals(point.point().hole()))
                            .isPresent()));
            before = Optional.of(point);
        }
        return spots;
    }

    private String truePlace(PositionReading by, TruePlace hole) {
        boolean one = hole.name().isEmpty();
        String name = hole.name().orElse("");
        return switch (by) {
            case X_AND_Y ->
                words.say(
                        one ? "picture.true-place" : "picture.true-place-of",
                        Figures.written(hole.x()),
                        Figures.written(hole.y()),
                        name);
            case POLAR ->
                words.say(
                        one ? "picture.true-place.polar" : "picture.true-place-of.polar",
                        Figures.written(hole.radius()),
                        Figures.withUnit(hole.direction()),
                        name);
        };
    }

    private List<String> notes(PositionFinding finding) {
        StepFigures figures = StepFigures.of(finding);
        List<String> notes = new ArrayList<>();
        finding.decidingPoint().ifPresent(point -> {
            List<String> called = point.point().called();
            String deviation = figures.judged(point.deviation().diameter());
            notes.add(
                    called.isEmpty()
                            ? words.say("picture.deviation", deviation)
                            : words.say("picture.deviation-at", called, deviation));
            notes.add(words.say("picture.off-x", figures.off(point.deviation().x())));
            notes.add(words.say("picture.off-y", figures.off(point.deviation().y())));
        });
        toRead(finding).map(hole -> truePlace(finding.check().by(), hole)).ifPresent(notes::add);
        notes.add(words.say("picture.zone", figures.plain(finding.check().zone().length())));
        finding.decidingPoint()
                .filter(point -> point.bonus().signum() > 0)
                .ifPresent(point -> notes.add(words.say("picture.bonus", figures.plain(point.bonus()))));
        return notes;
    }
}
