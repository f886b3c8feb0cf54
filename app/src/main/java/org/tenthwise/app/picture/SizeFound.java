package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.app.text.Words;
import org.tenthwise.model.compute.cutting.NextCut;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.run.Run;
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
                finding.next().map(next -> stock(next, check.feature(), figures)), Optional.empty(), said(check), spoken);
    }

    static SizePicture.Sized written(Written limit) {
        return new SizePicture.Sized(limit.length(), Figures.written(limit));
    }

    private static SizePicture.Sized sized(Length size, StepFigures figures) {
        return new SizePicture.Sized(size, figures.size(size));
    }

    private SizePicture.Stock stock(NextCut next, Feature feature, StepFigures figures) {
        boolean round = feature == Feature.BORE || feature == Feature.DIAMETER;
        return new SizePicture.Stock(sized(next.aim(), figures), next.stockLeft(), figures.amount(next.stockLeft()),
                round ? words.say("picture.offset", figures.change(next.changeOnDiameter())) : "");
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
        List<SizePicture.Column> columns = new ArrayList<>();
        for (Finding earlier : line.earlier()) {
            if (earlier instanceof SizeFinding cut) {
                cut.value().ifPresent(size -> columns.add(new SizePicture.Column(SizePicture.Kind.EARLIER,
                        String.valueOf(columns.size() + 1), words.say("picture.before"), Optional.of(sized(size, figures)), false,
                        Optional.empty(), Optional.empty())));
            }
        }
        if (finding.check().combine() == Combine.RANGE) {
            columns.add(new SizePicture.Column(finding.value().isPresent() ? SizePicture.Kind.TAKEN : SizePicture.Kind.MISSING, "", "",
                    finding.value().map(size -> sized(size, figures)), finding.value().isPresent(), Optional.empty(), Optional.empty()));
            return columns;
        }
        int number = 1;
        Map<String, Measured> measured = new HashMap<>();
        finding.measured().forEach(reading -> measured.put(reading.slot().key(), reading));
        for (Slot slot : finding.check().slots()) {
            struckOut(line, slot, figures).forEach(columns::add);
            columns.add(column(slot, Optional.ofNullable(measured.get(slot.key())), number++, finding, figures));
        }
        return columns;
    }

    private SizePicture.Column column(Slot slot, Optional<Measured> reading, int number, SizeFinding finding, StepFigures figures) {
        Place place = slot.place();
        return new SizePicture.Column(reading.isPresent() ? SizePicture.Kind.TAKEN : SizePicture.Kind.MISSING,
                place.angle().map(angle -> Figures.number(angle) + "°").orElse(String.valueOf(number)),
                place.depth().map(depth -> words.say("picture.at", Figures.written(depth))).orElse(""), reading.map(read -> sized(read.value(), figures)),
                reading.isPresent() && reading.equals(finding.deciding()),
                place.depth().map(SizeFound::written), place.angle());
    }

    /** Readings of the slot in the pass in hand that no longer count, each before the one that took its place. */
    private List<SizePicture.Column> struckOut(Line line, Slot slot, StepFigures figures) {
        Run.Pass pass = line.passes().get(line.passes().size() - 1);
        return pass.readings().stream().filter(reading -> reading.slot().equals(slot.key()) && reading.struck().isPresent())
                .map(reading -> new SizePicture.Column(SizePicture.Kind.STRUCK_OUT, "",
                        slot.place().depth().map(depth -> words.say("picture.at", Figures.written(depth))).orElse(""),
                        Optional.of(sized(Measured.of(reading, slot).value(), figures)), false, Optional.empty(), Optional.empty()))
                .toList();
    }
}
