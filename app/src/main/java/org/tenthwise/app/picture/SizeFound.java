package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.app.text.Words;
import org.tenthwise.model.compute.cutting.EvenCut;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.Proposal;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.tolerance.Limit;

/** Turns what was found about a size, and the cuts before it, into its picture. */
final class SizeFound {

    private final Words words;

    SizeFound(Words words) {
        this.words = words;
    }

    SizePicture picture(Line line, SizeFinding finding, String spoken) {
        StepFigures figures = StepFigures.of(finding);
        Check.Size check = finding.check();
        return new SizePicture(check.feature(), figures.unit(),
                check.limits().lower().map(SizeFound::written), check.limits().upper().map(SizeFound::written),
                check.guardBand().length(), columns(line, finding, figures),
                finding.value().map(size -> sized(size, figures)),
                finding.verdict().margin()
                        .map(margin -> new SizePicture.Distance(margin.distance(), margin.limit(), figures.plain(margin.distance()))),
                stock(finding, check.feature(), figures), Optional.empty(), said(check), spoken);
    }

    static SizePicture.Sized written(Written limit) {
        return new SizePicture.Sized(limit.length(), Figures.written(limit));
    }

    private static SizePicture.Sized sized(Length size, StepFigures figures) {
        return new SizePicture.Sized(size, figures.size(size));
    }

    private Optional<SizePicture.Stock> stock(SizeFinding finding, Feature feature, StepFigures figures) {
        boolean round = feature == Feature.BORE || feature == Feature.DIAMETER;
        return stock(finding, figures, change -> round ? words.say("picture.offset", figures.change(change)) : "");
    }

    /** @param offset from the change of the size to what is typed for it */
    static Optional<SizePicture.Stock> stock(Finding finding, StepFigures figures, Function<Length, String> offset) {
        return finding.proposal().map(Proposal::cut).flatMap(cut -> cut instanceof EvenCut.Offered offered
                ? Optional.of(new SizePicture.Stock(new SizePicture.Sized(offered.aim(), figures.amount(offered.aim())),
                        offered.change().abs(), figures.amount(offered.change().abs()), offset.apply(offered.change()))) : Optional.empty());
    }

    private SizePicture.Said said(Check.Size check) {
        Limit beyond = check.feature().stillCutBeyond();
        return new SizePicture.Said(beyond(check, beyond == Limit.UPPER), beyond(check, beyond == Limit.LOWER),
                words.say("picture.stock-left"), step -> words.say("picture.scale", step));
    }

    private String beyond(Check.Size check, boolean metalIsLeft) {
        return !check.cutAgain() ? "" : words.say(metalIsLeft ? "picture.still-to-cut" : "picture.past-size");
    }

    private List<SizePicture.Column> columns(Line line, SizeFinding finding, StepFigures figures) {
        ColumnsFound found = new ColumnsFound(words, figures);
        List<SizePicture.Column> columns = new ArrayList<>(found.earlier(line));
        if (finding.check().combine() == Combine.RANGE) {
            columns.add(new SizePicture.Column(finding.value().isPresent() ? SizePicture.Kind.TAKEN : SizePicture.Kind.MISSING, "", "",
                    finding.value().map(size -> sized(size, figures)), finding.value().isPresent(), Optional.empty(), Optional.empty()));
        } else {
            columns.addAll(found.slots(line, finding.deciding(), (reading, slot) -> Measured.of(reading, slot).value()));
        }
        return columns;
    }
}
