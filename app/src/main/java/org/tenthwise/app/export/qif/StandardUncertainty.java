package org.tenthwise.app.export.qif;

import java.util.Optional;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.record.DocumentFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.record.WorkedFinding;

/**
 * The combined standard uncertainty of what was found: the expanded one over its coverage factor, u = U / k.
 *
 * <p>Absent where the plan names none, where nobody asked for a figure, and where what it names is of something else
 * than the figure: of a coordinate and not of the deviation, of a plug and not of the clearance.
 *
 * <p>Source: JCGM 100:2008, 6.2.1 (U = k u) and 2.3.4 (combined standard uncertainty).
 */
final class StandardUncertainty implements Finding.Cases<Optional<Length>> {

    @Override
    public Optional<Length> asked(AskedFinding finding) {
        return Optional.empty();
    }

    @Override
    public Optional<Length> runOut(RunOutFinding finding) {
        return ofTwo(finding);
    }

    @Override
    public Optional<Length> size(SizeFinding finding) {
        return ofTwo(finding);
    }

    @Override
    public Optional<Length> position(PositionFinding finding) {
        return Optional.empty();
    }

    @Override
    public Optional<Length> plugFit(PlugFitFinding finding) {
        return Optional.empty();
    }

    @Override
    public Optional<Length> calculated(CalculatedFinding finding) {
        return ofTwo(finding);
    }

    @Override
    public Optional<Length> overWires(OverWiresFinding finding) {
        return ofTwo(finding);
    }

    @Override
    public Optional<Length> document(DocumentFinding finding) {
        return Optional.empty();
    }

    /** It is expanded by the factor of its readings. */
    @Override
    public Optional<Length> worked(WorkedFinding finding) {
        return finding.check().ofAReading().flatMap(sure -> finding.expanded()
                .map(expanded -> expanded.dividedBy(sure.coverageFactor())));
    }

    /** Expanded at k = 2. */
    private static Optional<Length> ofTwo(Finding finding) {
        return finding.expanded().map(Length::half);
    }
}
