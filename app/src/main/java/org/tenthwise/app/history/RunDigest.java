package org.tenthwise.app.history;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Run;

/**
 * What is drawn of one run. With every entry of the run rows are added or change; none ever goes, unless the run can be
 * judged no more.
 *
 * @param of the run it is drawn from
 * @param sheet of that run; absent where it cannot be judged
 */
public record RunDigest(
        Run of,
        Optional<Sheet> sheet,
        RunFacts run,
        List<OfStep> steps,
        List<GaugeUse> gauges,
        List<ToolChange> tools,
        List<Matter> matters,
        List<NameUse> names) {

    /**
     * What is drawn of a step, with the line of the sheet it is drawn from.
     *
     * @param size absent for what is judged by no size, and while nothing is found
     */
    public record OfStep(Line line, StepSummary step, Optional<SizeSummary> size, List<ReadingSummary> readings) {

        public OfStep {
            readings = List.copyOf(readings);
        }
    }

    /**
     * The same of a run that came in, under its name in this store.
     *
     * @param behind what its places are counted from here
     */
    public RunDigest imported(String name, long behind) {
        return new RunDigest(
                of,
                sheet,
                run.imported(name, behind),
                steps,
                gauges.stream()
                        .map(gauge -> new GaugeUse(
                                behind + gauge.seq(), gauge.step(), gauge.kind(), gauge.mark(), gauge.reference()))
                        .toList(),
                tools.stream()
                        .map(tool -> new ToolChange(behind + tool.seq(), tool.operation(), tool.words()))
                        .toList(),
                matters,
                names);
    }

    public RunDigest {
        steps = List.copyOf(steps);
        gauges = List.copyOf(gauges);
        tools = List.copyOf(tools);
        matters = List.copyOf(matters);
        names = List.copyOf(names);
    }
}
