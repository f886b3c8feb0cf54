package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.app.text.Words;
import org.tenthwise.model.compute.roundness.JawMove;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.RunOutFinding;

/** Turns what was found about a run-out into its picture. */
final class RunOutFound {

    private final Words words;

    RunOutFound(Words words) {
        this.words = words;
    }

    RunOutPicture picture(RunOutFinding finding, String spoken) {
        StepFigures figures = StepFigures.of(finding);
        return new RunOutPicture(
                new RunOutPicture.Sized(finding.check().limit().length(),
                        words.say("picture.limit", Figures.written(finding.check().limit()))),
                finding.movement().map(movement -> new RunOutPicture.Sized(movement,
                        words.say("picture.movement", figures.size(movement)))),
                finding.swept() && finding.near().byAngle().isEmpty() ? List.of() : readings(finding, figures),
                finding.swept() ? Optional.of(sweep(finding, figures)) : Optional.empty(),
                finding.fit().map(fit -> new RunOutPicture.Fit(fit.mean(), fit.eccentricity(), fit.highAtDegrees(),
                        List.of(words.say("picture.off-centre"), figures.plain(fit.eccentricity())))),
                jaws(finding, figures), RunOutPicture.Hints.NONE, notes(finding, figures), spoken);
    }

    private static Map<String, Length> taken(RunOutFinding finding) {
        Map<String, Length> taken = new HashMap<>();
        finding.measured().forEach(measured -> taken.put(measured.slot().key(), measured.value()));
        return taken;
    }

    private static List<RunOutPicture.Reading> readings(RunOutFinding finding, StepFigures figures) {
        Map<String, Length> taken = taken(finding);
        List<RunOutPicture.Reading> readings = new ArrayList<>();
        for (Slot slot : finding.check().rounds().get(0).byAngle()) {
            Optional<Length> value = Optional.ofNullable(taken.get(slot.key()));
            List<Length> byAngle = finding.near().byAngle().stream().map(Measured::value).toList();
            boolean extreme = value.filter(length -> length.equals(Length.greatest(byAngle))
                    || length.equals(Length.least(byAngle))).isPresent();
            readings.add(new RunOutPicture.Reading(slot.place().angle().orElseThrow(), slot.place().name(),
                    value.map(length -> new RunOutPicture.Sized(length, figures.plain(length))), extreme));
        }
        return readings;
    }

    private RunOutPicture.Sweep sweep(RunOutFinding finding, StepFigures figures) {
        Map<String, Length> taken = taken(finding);
        return new RunOutPicture.Sweep(sized(taken.get(Check.RunOut.HIGHEST), figures),
                sized(taken.get(Check.RunOut.LOWEST), figures), words.say("picture.highest"), words.say("picture.lowest"));
    }

    /** @param length null from a map where nothing was read */
    private static Optional<RunOutPicture.Sized> sized(Length length, StepFigures figures) {
        return Optional.ofNullable(length).map(read -> new RunOutPicture.Sized(read, figures.plain(read)));
    }

    private List<RunOutPicture.Jaw> jaws(RunOutFinding finding, StepFigures figures) {
        int jaws = finding.check().jaws();
        if (!finding.jawMoves().isEmpty()) {
            return finding.jawMoves().stream().map(move -> new RunOutPicture.Jaw(String.valueOf(move.jaw()), move.atDegrees(),
                    move.in(), moveWords(move, jaws, figures), told(move, jaws, figures))).toList();
        }
        return IntStream.range(0, jaws).mapToObj(jaw -> new RunOutPicture.Jaw(String.valueOf(jaw + 1),
                finding.check().firstJaw().add(BigDecimal.valueOf(360L / jaws * jaw)), Length.ZERO, "", "")).toList();
    }

    /** Four jaws go in or out; under one of three goes a shim. A jaw that stays says nothing. */
    private String moveWords(JawMove move, int jaws, StepFigures figures) {
        if (move.in().signum() == 0) {
            return "";
        }
        String key = jaws == 3 ? "picture.jaw.shim" : move.in().signum() > 0 ? "picture.jaw.in" : "picture.jaw.out";
        return words.say(key, figures.plain(move.in().abs()));
    }

    private String told(JawMove move, int jaws, StepFigures figures) {
        String words = moveWords(move, jaws, figures);
        return words.isEmpty() ? "" : this.words.say("picture.jaw.told", move.jaw(), words);
    }

    private List<String> notes(RunOutFinding finding, StepFigures figures) {
        List<String> notes = new ArrayList<>();
        finding.refusal().ifPresent(why -> notes.add(words.say("run-out.refusal", why)));
        finding.fit().filter(fit -> finding.near().byAngle().size() > 3).ifPresent(fit -> {
            notes.add(words.say("picture.out-of-round", figures.plain(fit.residual())));
            notes.add(words.say("picture.stays"));
        });
        return notes;
    }
}
