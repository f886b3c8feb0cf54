package org.tenthwise.app.sums.gauge;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tenthwise.app.sums.Input;
import org.tenthwise.app.sums.Output;
import org.tenthwise.app.sums.Sum;
import org.tenthwise.app.sums.SumDescription;
import org.tenthwise.app.sums.SumInput;
import org.tenthwise.app.sums.SumResult;
import org.tenthwise.model.compute.comparison.FromMaster;
import org.tenthwise.model.gauge.ReadingDirection;
import org.tenthwise.model.quantity.Length;

/** A size by comparison with a master. */
public final class FromMasterSum implements Sum {

    private static final Map<String, ReadingDirection> SENSES = new LinkedHashMap<>();

    static {
        SENSES.put("1", ReadingDirection.RISES_WITH_SIZE);
        SENSES.put("+1", ReadingDirection.RISES_WITH_SIZE);
        SENSES.put("-1", ReadingDirection.FALLS_WITH_SIZE);
    }

    public static final Input<Length> MASTER = Input.positiveLength("master");
    public static final Input<Length> READING = Input.length("reading");
    public static final Input<Length> ZERO = Input.length("zero").usually("0");
    public static final Input<ReadingDirection> SENSE = Input.choice("sense", SENSES);
    public static final Output<Length> SIZE = Output.length("size");
    private static final SumDescription DESCRIPTION = SumDescription.named("from-master")
            .takes(MASTER, READING, ZERO, SENSE)
            .gives(SIZE);

    @Override
    public SumDescription description() {
        return DESCRIPTION;
    }

    @Override
    public SumResult of(SumInput given) {
        Length size = FromMaster.size(
                given.get(MASTER),
                given.get(SENSE),
                given.get(READING),
                given.find(ZERO).orElse(Length.ZERO));
        SumResult.Writing answer = DESCRIPTION.in(given.inUnit()).put(SIZE, size);
        if (!given.has(ZERO)) {
            answer.note("no-zero");
        }
        return answer.note("certificate").done();
    }
}
