package org.tenthwise.model.worked;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.radius.ArcByChord;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;

/**
 * A radius by the height of its arc over a chord of known length.
 *
 * @param chord from contact to contact
 */
public record ChordAndHeight(Written chord) implements WorkedBy {

    @Override
    public WorkedWay way() {
        return WorkedWay.CHORD;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(WorkedReading.ARC_HEIGHT);
    }

    @Override
    public List<Given> given() {
        return List.of(Given.of(KnownSize.CHORD, chord));
    }

    @Override
    public Length of(List<Length> readings) {
        return ArcByChord.ofHeight(chord.length(), readings.get(0)).radius();
    }

    @Override
    public Optional<Length> reading(Length size) {
        return size.isBelow(chord.length().half())
                ? Optional.empty()
                : Optional.of(ArcByChord.ofRadius(chord.length(), size).height());
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.chord(this);
    }
}
