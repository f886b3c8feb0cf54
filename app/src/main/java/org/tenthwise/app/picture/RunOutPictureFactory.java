package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.JawWords;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.compute.roundness.Angle;
import org.tenthwise.model.compute.roundness.JawMoves;
import org.tenthwise.model.compute.roundness.Move;
import org.tenthwise.model.plan.RunOutCheck;
import org.tenthwise.model.plan.SectionSlots;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.AtSection;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.words.Words;

/** Turns what was found about a run-out into its picture. */
final class RunOutPictureFactory {

    private final Words words;
    private final JawWords jaws;

    RunOutPictureFactory(Words words) {
        this.words = words;
        this.jaws = new JawWords(words);
    }

    /** One ring, or two side by side where the plan names two sections. */
    Picture picture(RunOutFinding finding, boolean advised, String spoken) {
        List<RunOutPicture> rings = IntStream.range(0, finding.sections().size())
                .mapToObj(which -> ring(finding, which, advised, spoken))
                .toList();
        if (rings.size() == 1) {
            return rings.get(0);
        }
        return new RunOutSections(
                IntStream.range(0, rings.size())
                        .mapToObj(which -> new RunOutSections.SectionRing(
                                finding.sections()
                                        .get(which)
                                        .section()
                                        .map(section -> words.say(
                                                "picture.section", section.name(), Figures.written(section.at())))
                                        .orElse(""),
                                rings.get(which)))
                        .toList(),
                spoken);
    }

    private RunOutPicture ring(RunOutFinding finding, int which, boolean advised, String spoken) {
        StepFigures figures = StepFigures.of(finding);
        AtSection at = finding.sections().get(which);
        SectionSlots slots = finding.check().bySection().get(which);
        boolean farOut = which > 0;
        List<Move> moves = finding.truingUp()
                .filter(advice -> advised)
                .map(advice -> farOut ? advice.far() : advice.near())
                .orElse(List.of());
        boolean sweptOnly = !at.swept().isEmpty() && at.byAngle().isEmpty();
        return new RunOutPicture(
                new RunOutPicture.Sized(
                        finding.check().limit().length(),
                        words.say(
                                "picture.limit", Figures.written(finding.check().limit()))),
                at.movement()
                        .map(movement -> new RunOutPicture.Sized(
                                movement, words.say("picture.movement", figures.size(movement)))),
                sweptOnly ? List.of() : readings(finding.check(), at, slots, figures),
                sweep(at, slots, figures),
                at.fit()
                        .map(fit -> RunOutPicture.Fit.of(
                                words,
                                fit.mean(),
                                fit.eccentricity(),
                                fit.highAtDegrees(),
                                figures.plain(fit.eccentricity()))),
                jaws(finding.check(), moves, figures),
                new RunOutPicture.Hints(
                        farOut,
                        sweptOnly || finding.verdict().passed() ? Optional.empty() : way(finding.check(), moves),
                        tap(moves, figures)),
                notes(at, moves, figures),
                spoken);
    }

    private List<RunOutPicture.Reading> readings(
            RunOutCheck check, AtSection at, SectionSlots slots, StepFigures figures) {
        List<Length> taken = at.byAngle().stream().map(Measured::value).toList();
        List<RunOutPicture.Reading> readings = new ArrayList<>();
        for (Slot slot : slots.byAngle()) {
            Optional<Measured> read = read(at.byAngle(), slot);
            boolean extreme = read.map(Measured::value)
                    .filter(length -> length.equals(Length.greatest(taken)) || length.equals(Length.least(taken)))
                    .isPresent();
            BigDecimal angle = slot.place().angle().orElseThrow();
            readings.add(new RunOutPicture.Reading(angle, jaws.brief(check, angle), sized(read, figures), extreme));
        }
        return readings;
    }

    private Optional<RunOutPicture.Sweep> sweep(AtSection at, SectionSlots slots, StepFigures figures) {
        return at.swept().isEmpty()
                ? Optional.empty()
                : Optional.of(new RunOutPicture.Sweep(
                        sized(read(at.swept(), slots.highest()), figures),
                        sized(read(at.swept(), slots.lowest()), figures),
                        words.say("picture.highest"),
                        words.say("picture.lowest")));
    }

    private static Optional<Measured> read(List<Measured> measured, Slot slot) {
        return measured.stream().filter(reading -> reading.slot().equals(slot)).findFirst();
    }

    private static Optional<RunOutPicture.Sized> sized(Optional<Measured> read, StepFigures figures) {
        return read.map(one -> new RunOutPicture.Sized(one.value(), figures.indicated(one)));
    }

    private List<RunOutPicture.Jaw> jaws(RunOutCheck check, List<Move> moves, StepFigures figures) {
        List<BigDecimal> at = jaws(check);
        return IntStream.range(0, at.size())
                .mapToObj(i -> jaw(i + 1, at.get(i), moves, figures))
                .toList();
    }

    private static List<BigDecimal> jaws(RunOutCheck check) {
        return check.jaws() == 0 ? List.of() : JawMoves.evenly(check.jaws(), check.firstJaw());
    }

    private RunOutPicture.Jaw jaw(int jaw, BigDecimal at, List<Move> moves, StepFigures figures) {
        for (Move move : moves) {
            if (move instanceof Move.Jaw turned && turned.tighten() == jaw) {
                String in = words.say("picture.jaw.in", figures.plain(turned.fall()));
                return RunOutPicture.Jaw.moved(words, jaw, at, turned.fall(), in);
            }
            if (move instanceof Move.Jaw turned && turned.loosen() == jaw) {
                return new RunOutPicture.Jaw(
                        String.valueOf(jaw), at, turned.fall().negated(), words.say("picture.jaw.loosen"), "");
            }
        }
        return RunOutPicture.Jaw.still(jaw, at);
    }

    /** From jaw 1 to jaw 2, or from the first angle to the next; not beside a mallet. */
    private Optional<RunOutPicture.Way> way(RunOutCheck check, List<Move> moves) {
        if (moves.stream().anyMatch(Move.Tap.class::isInstance)) {
            return Optional.empty();
        }
        List<BigDecimal> places = check.jaws() > 0 ? jaws(check) : check.angles();
        BigDecimal from = places.get(0);
        return places.stream()
                .map(angle -> Angle.inOneTurn(angle.subtract(from)))
                .filter(angle -> angle.signum() > 0)
                .min(Comparator.naturalOrder())
                .map(angle -> new RunOutPicture.Way(from, from.add(angle), words.say("picture.way")));
    }

    private Optional<RunOutPicture.Tap> tap(List<Move> moves, StepFigures figures) {
        return moves.stream()
                .filter(Move.Tap.class::isInstance)
                .map(move -> ((Move.Tap) move).from())
                .findFirst()
                .map(from -> new RunOutPicture.Tap(
                        from.highAtDegrees(), words.say("picture.mallet", figures.plain(from.amount()))));
    }

    private List<String> notes(AtSection at, List<Move> moves, StepFigures figures) {
        List<String> notes = new ArrayList<>();
        at.refusal().ifPresent(why -> notes.add(words.say("run-out.refusal", why)));
        at.fit().filter(fit -> at.byAngle().size() > 3).ifPresent(fit -> {
            notes.add(words.say("picture.out-of-round", figures.plain(fit.residual())));
            if (!moves.isEmpty()) {
                notes.add(words.say("picture.stays"));
            }
        });
        return notes;
    }
}
