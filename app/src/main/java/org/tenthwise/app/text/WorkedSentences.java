package org.tenthwise.app.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.WorkedFinding;
import org.tenthwise.model.tolerance.Limit;
import org.tenthwise.model.words.Words;
import org.tenthwise.model.worked.WorkedBy;

/** What is said of a size or an angle that is worked out of what was read. */
final class WorkedSentences extends OfSizeSentences {

    /** What a reading is thought to be off by: a hundredth of a millimetre, or half a thousandth of an inch. */
    private static final Length SLIP_OF_MILLIMETRES = Length.of("0.01", Unit.MILLIMETRE);

    private static final MathContext TWO_FIGURES = new MathContext(2, RoundingMode.HALF_UP);

    private static final Length SLIP_OF_INCHES = Length.of("0.0005", Unit.INCH);

    /** What is left within fewer than so many places more is hit by no cut. */
    private static final int PLACES_MORE = 2;

    private final WorkedFinding finding;

    WorkedSentences(WorkedFinding finding, Words words) {
        super(finding, words);
        this.finding = finding;
    }

    @Override
    List<Weighed> remarks() {
        List<Weighed> said = new ArrayList<>();
        finding.refused().ifPresent(why -> said.add(Weighed.stays(words.say("worked.refused", words.say(why)))));
        said.add(Weighed.beforehand(with()));
        expanded().ifPresent(said::add);
        shown().flatMap(this::beside).ifPresent(said::add);
        shown().ifPresent(place -> said.add(Weighed.how(sensitivity(place))));
        said.add(Weighed.how(words.say("worked.proves", finding.check().by().way())));
        guardBand(finding.check().guardBand(), said);
        return said;
    }

    /** The sizes it is worked out with: another pin makes another size of the same reading. */
    private String with() {
        return words.say(
                "worked.with",
                finding.check().by().given().stream()
                        .map(given ->
                                words.say("worked.with.each", words.say("worked.given", given.what()), given.figure()))
                        .toList());
    }

    /** Of readings that fit no such work nobody knows which is the wrong one. */
    @Override
    boolean tellsWhatIsFarOff() {
        return finding.refused().isPresent();
    }

    @Override
    String doubts() {
        return finding.refused().map(words::say).orElse("");
    }

    /** Of all but teeth nobody can tell here whether metal is left to put it right. */
    @Override
    Optional<ToDo> failed() {
        return finding.step().stepClass() == StepClass.DRAWING
                        && finding.check().cutAgainBeyond().isEmpty()
                ? Optional.of(ToDo.of(words.say("next.fail.angle")))
                : super.failed();
    }

    /** What is left of teeth, as it is read, and on the teeth; how deep a cutter goes for it hangs on the cutter. */
    @Override
    Optional<String> againstACut() {
        return finding.left()
                .map(left -> left.isUneven()
                        ? words.say("worked.left.uneven")
                        : words.say(
                                words.key(
                                        "worked.left",
                                        finding.check().by().readings().get(0)),
                                range(left, Length::abs),
                                range(left, this::onTheTeeth)));
    }

    /**
     * Into the limits, never out of them: with as many places more as keep the least from being shown above the most.
     * No cut hits what is narrower still, and both are shown to the nearest.
     */
    private String range(WorkedFinding.Left left, UnaryOperator<Length> as) {
        int places = StepFigures.of(finding).places();
        Length least = as.apply(left.least());
        if (left.most().isEmpty()) {
            return words.say("worked.left.least", shown(rounded(least, places, RoundingMode.UP), places));
        }
        Length most = as.apply(left.most().get());
        return IntStream.rangeClosed(places, places + PLACES_MORE)
                .filter(at -> !rounded(least, at, RoundingMode.UP).isAbove(rounded(most, at, RoundingMode.DOWN)))
                .mapToObj(at -> fromTo(
                        shown(rounded(least, at, RoundingMode.UP), at),
                        shown(rounded(most, at, RoundingMode.DOWN), at)))
                .findFirst()
                .orElseGet(() -> fromTo(shown(least, places), shown(most, places)));
    }

    private String fromTo(String least, String most) {
        return least.equals(most) ? least : words.say("worked.left.range", least, most);
    }

    private Length rounded(Length length, int places, RoundingMode inwards) {
        Unit unit = StepFigures.of(finding).unit();
        return Length.of(length.in(unit).setScale(places, inwards), unit);
    }

    private String shown(Length length, int places) {
        Unit unit = StepFigures.of(finding).unit();
        return Figures.withUnit(Figures.plain(length, unit, places), unit);
    }

    /** How much thinner the teeth of the place that decides are, once so much came off what is read. */
    private Length onTheTeeth(Length off) {
        Length now = shown().flatMap(WorkedFinding.At::worked).orElseThrow().value();
        Length then =
                finding.check().cutAgainBeyond().filter(Limit.UPPER::equals).isPresent()
                        ? now.minus(off)
                        : now.plus(off);
        return thickness(now).minus(thickness(then));
    }

    private Length thickness(Length read) {
        return finding.check().by().beside(List.of(read)).orElseThrow();
    }

    /** The place that decides, or the one read last. */
    private Optional<WorkedFinding.At> shown() {
        return finding.at().stream()
                .filter(place -> place.worked().isPresent())
                .filter(place -> finding.deciding().isEmpty() || place.worked().equals(finding.deciding()))
                .reduce((earlier, later) -> later);
    }

    private Optional<Weighed> beside(WorkedFinding.At place) {
        return place.beside()
                .map(length -> Weighed.form(words.say(
                        words.key("worked.beside", finding.check().by().way()),
                        shown(length, place.raw().get(0)))));
    }

    /** How far the result goes with each reading, all in one sentence. */
    private String sensitivity(WorkedFinding.At place) {
        Unit read = place.raw().get(0).reading().typed().unit();
        Length slip = read.equals(Unit.INCH) ? SLIP_OF_INCHES : SLIP_OF_MILLIMETRES;
        WorkedBy by = finding.check().by();
        List<String> each = IntStream.range(0, place.sensitivity().size())
                .filter(which -> place.sensitivity().get(which).isPresent())
                .mapToObj(which -> words.say(
                        "worked.moves.each",
                        words.say("worked.reading", by.readings().get(which)),
                        moved(place.sensitivity().get(which).get(), slip)))
                .toList();
        return words.say("worked.moves", Figures.withUnit(Figures.number(slip.in(read), read), read), words.list(each));
    }

    private String moved(BigDecimal sensitivity, Length slip) {
        Unit unit = StepFigures.of(finding).unit();
        Length moved = new Length(
                slip.base().multiply(sensitivity).abs(), finding.check().by().gives());
        BigDecimal figure = moved.in(unit).round(TWO_FIGURES);
        return Figures.withUnit(
                Figures.plain(
                        Length.of(figure, unit),
                        unit,
                        Math.max(0, figure.stripTrailingZeros().scale())),
                unit);
    }

    /** Whether what was judged lies further inside than it may be off. */
    private Optional<Weighed> expanded() {
        return finding.expanded().flatMap(expanded -> finding.verdict()
                .margin()
                .filter(margin -> finding.verdict().passed())
                .map(margin -> {
                    boolean nearer = margin.distance().isBelow(expanded);
                    StepFigures figures = StepFigures.of(finding);
                    return new Weighed(
                            nearer ? Weighed.Weight.NEARER : Weighed.Weight.PROOF,
                            words.say(
                                    nearer ? "proof.nearer" : "proof.proven",
                                    Figures.withUnit(
                                            Figures.plain(expanded, figures.unit(), figures.places() + 1),
                                            figures.unit())));
                }));
    }

    private static String shown(Length length, Measured like) {
        Unit unit = like.reading().typed().unit();
        return Figures.withUnit(
                Figures.plain(length, unit, like.reading().typed().places() + 1), unit);
    }
}
