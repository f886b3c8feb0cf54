package org.tenthwise.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.form.WallShape;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.StepClass;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.record.Flanks;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.words.Words;

/** What is said of a plain size. */
final class SizeSentences extends OfSizeSentences {

    private final SizeFinding finding;

    SizeSentences(SizeFinding finding, Words words) {
        super(finding, words);
        this.finding = finding;
    }

    @Override
    List<Weighed> remarks() {
        List<Weighed> said = new ArrayList<>();
        StepFigures figures = StepFigures.of(finding);
        new TouchWords(words).of(finding).ifPresent(said::add);
        together(finding.check(), finding.measured(), said);
        finding.greatestBesideDeciding()
                .map(greatest -> words.say(
                        "combined.highest-of-a-rule",
                        figures.size(greatest),
                        figures.size(finding.deciding().orElseThrow())))
                .map(Weighed::how)
                .ifPresent(said::add);
        finding.check().asIndicated().ifPresent(indicated -> proves(indicated, said));
        first().ifPresent(said::add);
        past(finding.past(), figures, said);
        if (finding.check().combine() != Combine.RANGE) {
            wall(figures, said);
        }
        guardBand(finding.check().guardBand(), said);
        return said;
    }

    /** Of what is no length nobody can tell here whether metal is left to put it right. */
    @Override
    Optional<ToDo> failed() {
        Unit unit = finding.check().limits().unit();
        return unit.isOfLength() || finding.step().stepClass() != StepClass.DRAWING
                ? super.failed()
                : Optional.of(ToDo.of(words.say(unit.isOfAngle() ? "next.fail.angle" : "next.fail.scale")));
    }

    /** What jaws hold never proves it, however often it is read. */
    @Override
    Optional<String> unproven() {
        return finding.check()
                .asIndicated()
                .filter(indicated -> !indicated.isOfItsDatum())
                .map(indicated ->
                        words.say("next.unproven.chuck", indicated.datum().orElseThrow()));
    }

    /** What the movement proves and what it does not, and where the datum was none. */
    private void proves(IndicatedCheck indicated, List<Weighed> said) {
        said.add(new Weighed(Weighed.Weight.PROOF, words.say("indicated", indicated.of())));
        indicated.datumBy().ifPresent(by -> {
            String datum = indicated.datum().orElseThrow();
            said.add(
                    by == IndicatedCheck.DatumBy.CHUCK
                            ? Weighed.stays(words.say("indicated.datum.chuck", datum))
                            : new Weighed(Weighed.Weight.PROOF, words.say(words.key("indicated.datum", by), datum)));
        });
    }

    /** By the 16 % rule the first value may be enough. */
    private Optional<Weighed> first() {
        boolean alone = finding.check().combine() == Combine.SIXTEEN_PERCENT
                && finding.measured().size() == 1;
        return alone && finding.verdict().passed()
                ? Optional.of(Weighed.how(words.say("combined.first-of-a-rule")))
                : Optional.empty();
    }

    /** The flanks let nothing come off here. */
    @Override
    Optional<String> againstACut() {
        return finding.flanks().flatMap(flanks -> switch (flanks.how()) {
            case UNKNOWN -> Optional.of(words.say("next.cut.flanks-first", flanks.step()));
            case TAKEN_UNDER ->
                Optional.of(words.say(
                        feature().filter(Feature.DEPTH::equals).isPresent()
                                ? "next.cut.flanks-under.depth"
                                : "next.cut.flanks-under",
                        flanks.step()));
            case LEFT_INSIDE, NOT_YET_KNOWN -> Optional.empty();
        });
    }

    @Override
    Optional<String> withACut() {
        return finding.flanks()
                .flatMap(flanks -> flanks.how() == Flanks.How.NOT_YET_KNOWN
                        ? Optional.of(words.say("next.cut.flanks-not-yet", flanks.step()))
                        : finding.proposal()
                                .flatMap(proposal -> proposal.comesOff(size()))
                                .map(off -> words.say(
                                        "next.cut.flanks",
                                        StepFigures.of(finding).withUnit(Flanks.comesOff(size(), off)),
                                        flanks.step())));
    }

    private CheckOfSize size() {
        return finding.check().asSize().orElseThrow();
    }

    private void wall(StepFigures figures, List<Weighed> said) {
        finding.form()
                .shape()
                .filter(shape -> shape != WallShape.EVEN
                        && feature().flatMap(Feature::side).isPresent())
                .ifPresent(shape -> said.add(Weighed.form(words.say(
                        words.key(feature().filter(Feature::isOutside).isPresent() ? "shape.outside" : "shape", shape),
                        figures.withUnit(finding.form().taper().map(Length::abs).orElse(Length.ZERO))))));
        String uneven = feature().filter(of -> of.form().hasTwoSides()).isPresent() && ways() == 2
                ? "form.two-ways"
                : "form.going-round";
        finding.form()
                .outOfRound()
                .filter(round -> round.signum() > 0)
                .ifPresent(round -> said.add(Weighed.form(words.say(uneven, figures.withUnit(round)))));
    }

    private Optional<Feature> feature() {
        return finding.check().asSize().map(CheckOfSize::feature);
    }

    /** How many ways across a wall was measured. */
    private long ways() {
        return finding.measured().stream()
                .flatMap(measured -> measured.slot().place().angle().stream())
                .distinct()
                .count();
    }
}
