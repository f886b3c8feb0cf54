package org.tenthwise.app.history;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanSource;

/**
 * What can be asked of all runs of a store without reading them. An answer takes no longer for many runs than for few,
 * but where words are looked for. Used from the thread of the ledger.
 */
public interface History {

    List<RunSummary> runs(RunQuery query);

    /** The run last worked on, open or closed; none that came in from elsewhere. */
    Optional<RunFacts> last();

    /** The runs on a part and serial, closed or not, in the order they were begun. */
    List<RunFacts> runsOf(PartId part, String serial);

    /** The run on a part that was begun last, closed or not; none that was put away, none that came in. */
    Optional<RunFacts> lastOf(PartId part);

    /** The open run on a part and serial that was last worked on. */
    Optional<RunSummary> openOf(PartId part, String serial);

    /**
     * The runs on a part number, whatever the revision, that were closed and accepted, that nobody signed against and
     * that speak for the part: the one last worked on first, those that came in last.
     */
    List<RunFacts> accepted(String part, int most);

    /** The open runs on a machine, in the order they were begun. */
    List<RunFacts> openOn(String machine);

    /** The last run begun under the same part, revision and issue with another text of the plan. */
    Optional<RunFacts> withOtherText(Plan plan);

    /**
     * What the step came to on the part before: of the same revision, or where there is none, of another. Absent where
     * it was not measured to its end, and where what was then asked for under its number was something else. Never one
     * that was measured elsewhere.
     */
    Optional<LastPart> lastPart(LastPartQuery query);

    /**
     * What was written in the runs so far, that of the run last worked on first and that of runs that came in last; not
     * more than can be offered.
     *
     * @param of as in {@link NameUse}
     */
    List<String> names(NameUse.Kind kind, String of);

    /**
     * The runs of this store in which a gauge was set, in the order they were begun: a gauge elsewhere may have the
     * same mark.
     */
    List<String> runsWith(GaugeKind kind, String mark);

    /** The runs of this store in which some gauge was set on the master or the wires with a mark, in the same order. */
    List<String> runsSetOn(String reference);

    /** What is open in the runs, also in those that came in: run by run in the order they were begun. */
    List<InRun> matters();

    /** How many these are. */
    int countMatters();

    /** A matter, and the run it is open in. */
    record InRun(RunFacts run, Matter matter) {}

    /** Every reading, run by run and step by step, and every step that was only answered. */
    void readings(Sought sought, HistoryRow each);

    /**
     * The runs that are in the store and whose readings are not among these: this release cannot tell what they came
     * to.
     */
    List<String> unjudged();

    /** The runs in which a characteristic that is looked for was found, in the order they were begun. */
    List<RunFacts> runs(Sought sought);

    /** Part numbers that were worked on, the one last worked on first. */
    List<String> parts();

    /**
     * Every characteristic that is looked for and judged by a size, in every run in which something was found of it:
     * run by run in the order they were begun, in the order of the plan.
     */
    void points(Sought sought, PointRow each);

    /** What was said of tools in the runs on a part number; of all where none is named. */
    Map<Long, List<ToolChange>> toolChanges(Optional<String> part);

    /** One characteristic of one run. */
    @FunctionalInterface
    interface PointRow {

        void take(RunFacts run, StepSummary step, SizeSummary size);
    }

    /** One row of a history. */
    @FunctionalInterface
    interface HistoryRow {

        /** @param reading absent for a step that was only answered */
        void take(RunFacts run, StepSummary step, Optional<ReadingSummary> reading);
    }

    /** The plan kept with a run, read once; absent where this release cannot read it. */
    Optional<Plan> plan(PlanSource source);

    /** The plan a run was begun with, read once; absent where this release cannot read it. */
    Optional<Plan> plan(RunFacts run);
}
