package org.tenthwise.model.callout;

import java.util.Optional;
import org.tenthwise.model.quantity.Unit;

/**
 * Reads a requirement of hardness, its scale before the figures or behind them: {@code HRC 32-36}, {@code 58 HRC MIN}.
 */
final class HardnessReader {

    static final String[] SCALES = {"HRC", "HRB", "HRA", "HB", "HBW", "HBS", "HV", "HRN", "HK"};

    private final Tokens row;

    HardnessReader(Tokens row) {
        this.row = row;
    }

    static boolean isNext(Tokens row) {
        return row.peek().isWord(SCALES)
                || row.peek().isFigure() && row.rest().stream().anyMatch(token -> token.isWord(SCALES));
    }

    CalloutPart read() {
        boolean before = row.accept(SCALES).isPresent();
        SizeReader sizes = new SizeReader(row, Unit.MILLIMETRE);
        Optional<SizeReader.Bound> bound = sizes.boundBefore();
        CalloutSize size = before ? sizes.read(bound) : scaleBehind(sizes, bound);
        return CalloutPart.of(CalloutKind.HARDNESS, size);
    }

    /** {@code 58 HRC MIN}: the bound may stand behind the scale. */
    private CalloutSize scaleBehind(SizeReader sizes, Optional<SizeReader.Bound> before) {
        CalloutSize size = sizes.read(before);
        row.accept(SCALES);
        Optional<SizeReader.Bound> behind = size.hasLimits() ? Optional.empty() : sizes.boundBefore();
        return behind.map(bound -> bound == SizeReader.Bound.MOST
                        ? CalloutSize.atMost(size.nominal().orElseThrow(), Unit.MILLIMETRE)
                        : CalloutSize.atLeast(size.nominal().orElseThrow(), Unit.MILLIMETRE))
                .orElse(size);
    }
}
