package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.compute.roundness.Eccentricity;
import org.tenthwise.model.compute.roundness.Move;
import org.tenthwise.model.compute.roundness.TruingUp;
import org.tenthwise.model.plan.Holding;
import org.tenthwise.model.plan.Section;
import org.tenthwise.model.plan.SectionSlots;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.record.AtSection;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.words.Words;

/** What to do about work that runs out over its limit, sentence by sentence in the order of the hand. */
final class TruingAdvice {

    private final Words words;
    private final JawWords jaws;

    TruingAdvice(Words words) {
        this.words = words;
        this.jaws = new JawWords(words);
    }

    /**
     * A line a move, by sections; what is not moved by, in one line.
     *
     * @param asked what is read next, where that is known; otherwise the first of what is still to be read is taken for
     *     it
     */
    ToDo of(RunOutFinding finding, Optional<Slot> asked) {
        return finding.truingUp()
                .map(advice -> of(finding, advice))
                .orElseGet(() -> ToDo.of(readOn(
                        finding, asked.or(() -> finding.stillToRead().stream().findFirst()))));
    }

    /** Over the limit already, and not everything is read that tells which way: nothing is moved yet. */
    private String readOn(RunOutFinding finding, Optional<Slot> asked) {
        String said = asked.map(slot -> next(finding, slot)).orElseGet(() -> words.say("true-up.plain"));
        return finding.step().stepClass() == StepClass.DRAWING ? words.say("true-up.datum-first") + " " + said : said;
    }

    private String next(RunOutFinding finding, Slot asked) {
        List<SectionSlots> slots = finding.check().bySection();
        int which = IntStream.range(0, slots.size())
                .filter(i -> slots.get(i).slots().anyMatch(asked::equals))
                .findFirst()
                .orElseThrow();
        AtSection at = finding.sections().get(which);
        if (slots.get(which).sweep().contains(asked)) {
            return words.say("true-up.turn", at(at));
        }
        boolean noneRead = finding.sections().size() > 1
                && finding.sections().stream()
                        .allMatch(section -> section.byAngle().isEmpty());
        return words.say(
                at.byAngle().isEmpty() ? "true-up.by-angles" : "true-up.other-angles",
                noneRead
                        ? words.say(
                                "true-up.where.first",
                                at.section().orElseThrow().name())
                        : at(at));
    }

    private ToDo of(RunOutFinding finding, TruingUp advice) {
        StepFigures figures = StepFigures.of(finding);
        return switch (advice.state()) {
            case CONTRADICTION -> ToDo.of(words.say("true-up.contradiction"));
            case FORM -> ToDo.of(words.say("true-up.form", figures.withUnit(advice.formLeft())));
            case NOTHING_TO_MOVE -> ToDo.of(words.say("true-up.nothing-to-move", figures.withUnit(advice.formLeft())));
            case MOVE -> moves(finding, advice, figures);
        };
    }

    /**
     * Towards which side, goes for a needle on the outside: inside a bore the needle is pressed in where the wall is
     * near the axis.
     */
    private ToDo moves(RunOutFinding finding, TruingUp advice, StepFigures figures) {
        List<String> first = new ArrayList<>();
        if (finding.step().stepClass() == StepClass.DRAWING) {
            first.add(words.say("true-up.datum-first"));
        }
        boolean jaws = advice.near().stream().anyMatch(Move.Jaw.class::isInstance);
        first.add(words.say(jaws ? "true-up.one-at-a-time" : "true-up.locked-off"));
        if (Stream.of(advice.near(), advice.far())
                .flatMap(List::stream)
                .anyMatch(move -> !(move instanceof Move.Plain))) {
            first.add(words.say("true-up.in-a-bore"));
        }
        List<String> near = at(finding, advice.near(), figures);
        if (jaws) {
            near.add(words.say("true-up.all-tight"));
        }
        if (finding.sections().size() == 1) {
            near.add(words.say("true-up.sweep"));
            return new ToDo(first, List.of(new ToDo.OfSection("", near)));
        }
        List<String> far = at(finding, advice.far(), figures);
        String nearer = finding.near().section().map(Section::name).orElseThrow();
        String back = words.say("true-up.sweep-both", nearer);
        (far.isEmpty() ? near : far).add(back);
        return new ToDo(
                first,
                List.of(
                        new ToDo.OfSection(named(nearer), near),
                        new ToDo.OfSection(
                                named(finding.sections()
                                        .get(1)
                                        .section()
                                        .map(Section::name)
                                        .orElseThrow()),
                                far)));
    }

    private String named(String section) {
        return words.say("true-up.at", RunOutSentences.capital(section));
    }

    private List<String> at(RunOutFinding finding, List<Move> moves, StepFigures figures) {
        List<String> said = new ArrayList<>();
        for (int i = 0; i < moves.size(); i++) {
            boolean again = i > 0 && moves.get(i - 1).getClass() == moves.get(i).getClass();
            said.add(say(finding, moves.get(i), again, figures));
        }
        return said;
    }

    private String say(RunOutFinding finding, Move move, boolean again, StepFigures figures) {
        if (move instanceof Move.Jaw jaw) {
            return words.say("true-up.jaw", jaw.loosen(), jaw.tighten(), figures.plain(jaw.fall()));
        }
        if (move instanceof Move.Shim shim) {
            String last = finding.check().holding() == Holding.POWER_CHUCK ? "true-up.shim.last" : "true-up.shim.first";
            return words.say(again ? "true-up.shim.then" : last, shim.under(), figures.plain(shim.thickness()));
        }
        if (move instanceof Move.Tap tap) {
            return words.say(
                    "true-up.tap",
                    side(finding, tap.from()),
                    figures.plain(tap.from().amount()));
        }
        if (move instanceof Move.Away away) {
            return words.say(
                    "true-up.away",
                    side(finding, away.from()),
                    figures.plain(away.from().amount()));
        }
        if (move instanceof Move.Pack pack) {
            return words.say("true-up.pack", figures.plain(pack.lean().amount()), side(finding, pack.lean()));
        }
        Move.Plain plain = (Move.Plain) move;
        return plain == Move.Plain.BORE_SOFT_JAWS && finding.check().holding() == Holding.THREE_JAW
                ? words.say("true-up.or-bore-soft-jaws")
                : words.say("true-up", plain);
    }

    private String side(RunOutFinding finding, Eccentricity from) {
        return jaws.side(finding.check(), from.highAtDegrees());
    }

    private String at(AtSection at) {
        return at.section()
                .map(section -> words.say("true-up.where", section.name()))
                .orElse("");
    }
}
