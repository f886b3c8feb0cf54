package org.tenthwise.app.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.tenthwise.app.text.Figures;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.words.Words;

/** Turns the readings of a characteristic, and the cuts before them, into columns of a strip. */
final class ColumnsPictureFactory {

    private static final int MOST_EARLIER = 3;

    private final Words words;
    private final StepFigures figures;

    ColumnsPictureFactory(Words words, StepFigures figures) {
        this.words = words;
        this.figures = figures;
    }

    /** What the latest of the earlier passes came to, one column each, called by the cut they were read after. */
    List<SizePicture.ReadingColumn> earlier(Line line) {
        List<SizePicture.ReadingColumn> columns = new ArrayList<>();
        for (Pass pass : line.passes()) {
            if (pass.ended().isPresent()) {
                int cuts = line.cutsBefore(pass);
                String after = cuts == 0 ? words.say("picture.before") : words.say("picture.cut", cuts);
                line.found(pass)
                        .flatMap(ColumnsPictureFactory::judged)
                        .ifPresent(size -> columns.add(SizePicture.ReadingColumn.of(
                                SizePicture.Kind.EARLIER, after, "", Optional.of(size), false)));
            }
        }
        return columns.subList(Math.max(0, columns.size() - MOST_EARLIER), columns.size());
    }

    private static Optional<SizePicture.Sized> judged(Finding finding) {
        return finding.value()
                .map(size -> new SizePicture.Sized(size, StepFigures.of(finding).judged(size)));
    }

    /**
     * The slots of the pass in hand, each after the readings that no longer count there.
     *
     * @param sizeOf what a reading stands for that no longer counts
     */
    List<SizePicture.ReadingColumn> slots(
            Line line, Optional<Measured> deciding, BiFunction<Pass.Reading, Slot, Measured> sizeOf) {
        Map<String, Measured> measured = new HashMap<>();
        line.finding().measured().forEach(reading -> measured.put(reading.slot().key(), reading));
        List<SizePicture.ReadingColumn> columns = new ArrayList<>();
        List<Slot> slots = shown(
                line.step().check().slots(), measured.keySet(), line.finding().readingsInAll());
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            columns.addAll(struckOut(line, slot, sizeOf));
            columns.add(column(slot, Optional.ofNullable(measured.get(slot.key())), called(line, slots, i), deciding));
        }
        return columns;
    }

    /** Those that are taken, and as many free ones as will be, in order. */
    private static List<Slot> shown(List<Slot> slots, Set<String> taken, int inAll) {
        Set<String> free = slots.stream()
                .map(Slot::key)
                .filter(key -> !taken.contains(key))
                .limit(Math.max(0, inAll - taken.size()))
                .collect(Collectors.toSet());
        return slots.stream()
                .filter(slot -> taken.contains(slot.key()) || free.contains(slot.key()))
                .toList();
    }

    /** By its angle, by its number, or the only one by the cut it is read after. */
    private String called(Line line, List<Slot> slots, int which) {
        int cuts = line.cutsBefore(line.passes().get(line.passes().size() - 1));
        String number = slots.size() == 1 && cuts > 0 ? words.say("picture.cut", cuts) : String.valueOf(which + 1);
        return slots.get(which)
                .place()
                .angle()
                .map(angle -> Figures.number(angle) + "°")
                .orElse(number);
    }

    private SizePicture.ReadingColumn column(
            Slot slot, Optional<Measured> reading, String label, Optional<Measured> deciding) {
        Place place = slot.place();
        return new SizePicture.ReadingColumn(
                reading.isPresent() ? SizePicture.Kind.TAKEN : SizePicture.Kind.MISSING,
                label,
                group(place),
                reading.map(this::sized),
                reading.isPresent() && reading.equals(deciding),
                place.depth().map(SizePictureFactory::written),
                place.angle());
    }

    private List<SizePicture.ReadingColumn> struckOut(
            Line line, Slot slot, BiFunction<Pass.Reading, Slot, Measured> sizeOf) {
        Pass pass = line.passes().get(line.passes().size() - 1);
        return pass.readings().stream()
                .filter(reading ->
                        reading.slot().equals(slot.key()) && reading.struck().isPresent())
                .map(reading -> SizePicture.ReadingColumn.of(
                        SizePicture.Kind.STRUCK_OUT,
                        "",
                        group(slot.place()),
                        Optional.of(sized(sizeOf.apply(reading, slot))),
                        false))
                .toList();
    }

    private String group(Place place) {
        return place.depth()
                .map(depth -> words.say("picture.at", Figures.written(depth)))
                .orElse("");
    }

    private SizePicture.Sized sized(Measured measured) {
        return new SizePicture.Sized(measured.value(), figures.size(measured));
    }
}
