package org.tenthwise.app.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.app.store.KeptEntries;
import org.tenthwise.model.gauge.GaugeKind;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.plan.PlanSource;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Event;
import org.tenthwise.model.run.Purpose;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.verdict.VerdictKind;

/** The plainest history there can be: every question reads every entry. What is kept in tables must answer alike. */
public final class ReadFromEntries implements History {

    private final KeptEntries kept;
    private final Plans plans = new Plans();
    private final RunDigests digests = new RunDigests(plans);

    public ReadFromEntries(KeptEntries kept) {
        this.kept = kept;
    }

    private Stream<RunDigest> all() {
        return kept.runs().stream().flatMap(run -> digests.of(kept.entries(run)).stream());
    }

    private Stream<RunDigest> latestFirst() {
        return all().sorted(
                        Comparator.comparing((RunDigest digest) -> digest.run().last())
                                .reversed());
    }

    @Override
    public List<RunSummary> runs(RunQuery query) {
        List<RunDigest> listed = latestFirst()
                .filter(digest -> digest.run().shelf() == query.shelf())
                .filter(digest ->
                        Stream.of(query.words().strip().split("\\s+")).allMatch(word -> isIn(digest.run(), word)))
                .toList();
        List<RunDigest> ordered = Stream.concat(
                        listed.stream().filter(digest -> isFirst(digest.run(), query)),
                        listed.stream().filter(digest -> !isFirst(digest.run(), query)))
                .toList();
        int behind = query.after()
                .map(last -> 1
                        + ordered.stream()
                                .map(digest -> digest.run().begun())
                                .toList()
                                .indexOf(last.begun()))
                .orElse(0);
        return ordered.stream()
                .skip(behind)
                .limit(query.most())
                .map(this::summary)
                .toList();
    }

    private RunSummary summary(RunDigest digest) {
        return new RunSummary(
                digest.run(),
                digest.run()
                        .stand()
                        .flatMap(stand -> plans.of(digest.of().begun().plan())),
                digest.steps().stream().map(RunDigest.OfStep::step).toList());
    }

    private static boolean isFirst(RunFacts run, RunQuery query) {
        return query.machine().filter(run.machine()::equals).isPresent();
    }

    private static boolean isIn(RunFacts run, String word) {
        return Stream.concat(Stream.of(run.part(), run.serial(), run.lot()), run.people().stream())
                .anyMatch(text -> text.toLowerCase().contains(word.toLowerCase()));
    }

    @Override
    public Optional<Plan> plan(RunFacts run) {
        return all().filter(digest -> digest.run().equals(run))
                .findFirst()
                .flatMap(digest -> plans.of(digest.of().begun().plan()));
    }

    @Override
    public Optional<RunFacts> last() {
        return latestFirst().map(RunDigest::run).findFirst();
    }

    @Override
    public List<InRun> matters() {
        return all().flatMap(digest -> digest.matters().stream().map(matter -> new InRun(digest.run(), matter)))
                .toList();
    }

    @Override
    public int countMatters() {
        return matters().size();
    }

    @Override
    public List<RunFacts> runsOf(PartId part, String serial) {
        return all().map(RunDigest::run)
                .filter(run -> run.part().equals(part.number())
                        && run.revision().equals(part.revision())
                        && run.serial().equals(serial.strip()))
                .toList();
    }

    @Override
    public Optional<RunFacts> lastOf(PartId part) {
        return all().map(RunDigest::run)
                .filter(run ->
                        run.part().equals(part.number()) && run.revision().equals(part.revision()) && !run.putAway())
                .max(Comparator.comparingLong(RunFacts::begun));
    }

    @Override
    public Optional<RunSummary> openOf(PartId part, String serial) {
        return latestFirst()
                .filter(digest -> digest.run().open() && runsOf(part, serial).contains(digest.run()))
                .map(this::summary)
                .findFirst();
    }

    @Override
    public List<RunFacts> accepted(String part, int most) {
        return latestFirst()
                .filter(digest -> digest.run().part().equals(part)
                        && digest.run().closed()
                        && !digest.run().putAway())
                .filter(digest ->
                        digest.sheet().filter(ReadFromEntries::isAccepted).isPresent())
                .map(RunDigest::run)
                .limit(most)
                .toList();
    }

    private static boolean isAccepted(Sheet sheet) {
        Purpose purpose = sheet.run().begun().occasion().purpose();
        return sheet.against().isEmpty()
                && sheet.run().signatures().stream()
                        .anyMatch(signature -> signature.meaning() == SignedAs.ACCEPTED && !signature.lapsed())
                && purpose.canBeLookedBackTo()
                && (sheet.leftOut().isEmpty() || purpose.speaksForThePart());
    }

    @Override
    public List<RunFacts> openOn(String machine) {
        return all().map(RunDigest::run)
                .filter(run -> run.open() && run.machine().equals(machine))
                .toList();
    }

    @Override
    public Optional<RunFacts> withOtherText(Plan plan) {
        return all().map(RunDigest::run)
                .filter(run -> run.part().equals(plan.part().number())
                        && run.revision().equals(plan.part().revision())
                        && run.stand()
                                .filter(stand -> stand.issue().equals(plan.issue()))
                                .isPresent()
                        && !run.planHash().equals(plan.source().sha256()))
                .reduce((earlier, later) -> later);
    }

    @Override
    public Optional<LastPart> lastPart(LastPartQuery query) {
        return kept.runs().stream()
                .map(kept::entries)
                .filter(entries -> entries.get(0)
                        .event()
                        .as(Event.Begun.class)
                        .filter(begun ->
                                begun.part().number().equals(query.part().number())
                                        && !begun.serial()
                                                .equalsIgnoreCase(query.serial().strip()))
                        .isPresent())
                .flatMap(entries -> digests.of(entries).stream())
                .flatMap(digest -> lastPart(digest, query).stream())
                .filter(part -> !part.run().putAway())
                .filter(part -> taken(part) < query.before())
                .max(Comparator.comparing((LastPart part) ->
                                part.run().revision().equals(query.part().revision()))
                        .thenComparing(ReadFromEntries::taken));
    }

    private static Optional<LastPart> lastPart(RunDigest digest, LastPartQuery query) {
        return digest.steps().stream()
                .filter(step -> query.isOf(step.line().step())
                        && step.step().found().isPresent()
                        && step.step().verdict().standing() != VerdictKind.OPEN)
                .map(step -> new LastPart(digest.run(), step.line().step(), step.step(), step.readings()))
                .findFirst();
    }

    /** When the last reading was taken, or the run was begun where there is none. */
    private static long taken(LastPart part) {
        return part.readings().stream()
                .map(ReadingSummary::seq)
                .reduce(part.run().begun(), Math::max);
    }

    @Override
    public List<String> names(NameUse.Kind kind, String of) {
        return latestFirst()
                .flatMap(digest -> digest.names().stream())
                .filter(name -> name.kind() == kind && name.of().equals(of))
                .map(NameUse::name)
                .distinct()
                .toList();
    }

    @Override
    public List<String> runsWith(GaugeKind kind, String mark) {
        return all().filter(digest -> digest.gauges().stream()
                        .anyMatch(gauge -> gauge.kind() == kind && gauge.mark().equals(mark)))
                .map(digest -> digest.run().id())
                .toList();
    }

    @Override
    public List<String> runsSetOn(String reference) {
        return all().filter(digest -> digest.gauges().stream()
                        .anyMatch(gauge -> gauge.reference().equals(Optional.of(reference))))
                .map(digest -> digest.run().id())
                .toList();
    }

    @Override
    public void readings(Sought sought, HistoryRow each) {
        all().forEach(digest -> digest.steps().stream()
                .filter(step -> SoughtInEntries.isOfRunAndCheck(sought, digest.run(), step.step()))
                .forEach(step -> {
                    Optional<StepSummary.Found> found = step.step().found();
                    if (step.readings().isEmpty()) {
                        found.filter(of -> SoughtInEntries.isBy(sought, of.by(), of.at(), of.gauge().stream()))
                                .ifPresent(of -> each.take(digest.run(), step.step(), Optional.empty()));
                    }
                    step.readings().stream()
                            .filter(reading ->
                                    SoughtInEntries.isBy(sought, reading.by(), reading.at(), reading.gauge().stream()))
                            .forEach(reading -> each.take(digest.run(), step.step(), Optional.of(reading)));
                }));
    }

    @Override
    public List<RunFacts> runs(Sought sought) {
        return all().filter(digest -> digest.steps().stream()
                        .anyMatch(step -> step.step().found().isPresent()
                                && SoughtInEntries.isLookedFor(sought, digest.run(), step)))
                .map(RunDigest::run)
                .toList();
    }

    @Override
    public List<String> parts() {
        return latestFirst().map(digest -> digest.run().part()).distinct().toList();
    }

    @Override
    public void points(Sought sought, PointRow each) {
        all().forEach(digest -> digest.steps().stream()
                .filter(step -> SoughtInEntries.isLookedFor(sought, digest.run(), step))
                .forEach(step -> step.size().ifPresent(size -> each.take(digest.run(), step.step(), size))));
    }

    @Override
    public Map<Long, List<ToolChange>> toolChanges(Optional<String> part) {
        return all().filter(digest ->
                        part.map(digest.run().part()::equalsIgnoreCase).orElse(true)
                                && !digest.tools().isEmpty())
                .collect(Collectors.toMap(digest -> digest.run().begun(), RunDigest::tools));
    }

    @Override
    public List<String> unjudged() {
        List<String> unjudged = new ArrayList<>(kept.runs());
        unjudged.removeAll(all().filter(digest -> digest.sheet().isPresent())
                .map(digest -> digest.run().id())
                .toList());
        return unjudged;
    }

    @Override
    public Optional<Plan> plan(PlanSource source) {
        return plans.of(source);
    }
}
