package org.tenthwise.app.export.qif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.text.StepFigures;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.TruePlace;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.AskedFinding;
import org.tenthwise.model.record.AtPoint;
import org.tenthwise.model.record.CalculatedFinding;
import org.tenthwise.model.record.Decimals;
import org.tenthwise.model.record.DocumentFinding;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.OverWiresFinding;
import org.tenthwise.model.record.PlugFitFinding;
import org.tenthwise.model.record.PositionFinding;
import org.tenthwise.model.record.RunOutFinding;
import org.tenthwise.model.record.SizeFinding;
import org.tenthwise.model.record.WorkedFinding;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.tolerance.Limits;
import org.tenthwise.model.verdict.Judge;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/** What was found of a characteristic, of each of several alike by itself where that can be told. */
final class FoundOfEach implements Finding.Cases<List<ItemFound>> {

    private final List<AccountLine.Checked> lines;
    private final Optional<PlainFigures> figures;

    /**
     * @param lines of one check in the account of the drawing, one or one an instance
     * @param figures absent for a check without limits
     */
    private FoundOfEach(List<AccountLine.Checked> lines, Optional<PlainFigures> figures) {
        this.lines = lines;
        this.figures = figures;
    }

    static List<ItemFound> of(List<AccountLine.Checked> lines, Optional<PlainFigures> figures) {
        return lines.get(0).line().finding().match(new FoundOfEach(lines, figures));
    }

    @Override
    public List<ItemFound> asked(AskedFinding finding) {
        return List.of(ItemFound.standing(finding.verdict().standing()));
    }

    @Override
    public List<ItemFound> runOut(RunOutFinding finding) {
        return List.of(whole(finding, List.of()));
    }

    @Override
    public List<ItemFound> size(SizeFinding finding) {
        return read(finding, finding.check());
    }

    @Override
    public List<ItemFound> overWires(OverWiresFinding finding) {
        return read(finding, finding.check());
    }

    @Override
    public List<ItemFound> worked(WorkedFinding finding) {
        if (lines.size() > 1 || finding.check().combine().isRange()) {
            return read(finding, finding.check());
        }
        return List.of(whole(
                finding,
                ends(finding.at().stream().flatMap(at -> at.worked().stream()).toList())));
    }

    @Override
    public List<ItemFound> calculated(CalculatedFinding finding) {
        return List.of(whole(finding, finding.bothEnds()));
    }

    @Override
    public List<ItemFound> plugFit(PlugFitFinding finding) {
        return List.of(whole(
                finding,
                finding.clearance()
                        .map(clearance -> List.of(clearance.least(), clearance.greatest()))
                        .orElse(List.of())));
    }

    /** Hole by hole; what is against the check and none of them is against all. */
    @Override
    public List<ItemFound> position(PositionFinding finding) {
        if (finding.check().holes().size() == 1) {
            return List.of(whole(
                    finding,
                    List.of(),
                    finding.decidingPoint().map(AtPoint::bonus).filter(any -> finding.check()
                            .hasBonus())));
        }
        Map<Integer, List<AtPoint>> holes = new LinkedHashMap<>();
        for (int i = 0; i < finding.check().holes().size(); i++) {
            TruePlace hole = finding.check().holes().get(i);
            holes.put(
                    i + 1,
                    finding.points().stream()
                            .filter(at -> at.point().hole().equals(hole))
                            .toList());
        }
        int ends = Math.max(1, finding.check().ends().size());
        List<ItemFound> found = new ArrayList<>();
        holes.forEach((number, points) -> {
            Optional<AtPoint> worst = points.stream().min(Comparator.comparing(AtPoint::room));
            found.add(new ItemFound(
                    Optional.of(number),
                    standing(finding, points, ends),
                    worst.map(at -> at.deviation().diameter()),
                    placesJudged(finding),
                    List.of(),
                    Optional.empty(),
                    worst.map(AtPoint::bonus).filter(any -> finding.check().hasBonus()),
                    finding.measured().stream()
                            .filter(one -> points.stream()
                                    .anyMatch(at -> at.first().equals(one)
                                            || at.second().equals(one)))
                            .toList()));
        });
        return against(found, finding);
    }

    private static VerdictKind standing(PositionFinding finding, List<AtPoint> points, int ends) {
        VerdictKind whole = finding.verdict().standing();
        boolean out = points.stream().anyMatch(at -> !at.isInside());
        if (whole == VerdictKind.FAIL && out) {
            return VerdictKind.FAIL;
        }
        boolean complete = points.size() == ends && !finding.awaitsAnother();
        if (!complete) {
            return VerdictKind.OPEN;
        }
        return out ? whole : VerdictKind.PASS;
    }

    /** A paper has a figure an instance. */
    @Override
    public List<ItemFound> document(DocumentFinding finding) {
        List<Written> given = finding.document().map(Document::figures).orElse(List.of());
        Optional<Limits> limits = finding.check().limits();
        boolean judged = limits.isPresent()
                && !given.isEmpty()
                && given.stream()
                        .allMatch(figure ->
                                figure.unit().kind().equals(limits.get().unit().kind()));
        if (!judged || finding.verdict().standing() == VerdictKind.OPEN) {
            return List.of(ItemFound.standing(finding.verdict().standing()));
        }
        Judge judge = new Judge(limits.get(), Length.of("0", limits.get().unit()), Optional.empty());
        List<ItemFound> found = new ArrayList<>();
        for (Written figure : given) {
            found.add(new ItemFound(
                    given.size() == 1 ? Optional.empty() : Optional.of(found.size() + 1),
                    judge.of(figure.length()).standing(),
                    Optional.of(figure.length()),
                    Decimals.among(figure, figures.orElseThrow().unit()),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of()));
        }
        return against(found, finding);
    }

    private List<ItemFound> read(Finding finding, CheckOfDimension check) {
        boolean sizes = !check.combine().isRange();
        if (lines.size() == 1) {
            return List.of(whole(finding, sizes ? ends(finding.measured()) : List.of()));
        }
        return lines.stream().map(line -> ofOne(finding, check, line, sizes)).toList();
    }

    private ItemFound ofOne(Finding finding, CheckOfDimension check, AccountLine.Checked line, boolean sizes) {
        List<Measured> read = line.measured();
        Optional<Measured> judged = read.size() == 1
                ? Optional.of(read.get(0))
                : Optional.of(read)
                        .filter(any -> check.combine() == Combine.EACH)
                        .flatMap(any -> any.stream().min(Comparator.comparing(one -> room(finding, one))));
        return new ItemFound(
                Optional.of(line.instances().get(0)),
                line.standing(),
                judged.filter(any -> sizes).map(Measured::value),
                judged.map(figures.orElseThrow()::known).orElse(0),
                sizes ? ends(read) : List.of(),
                check.asWorked().isPresent() ? Optional.empty() : finding.match(new StandardUncertainty()),
                Optional.empty(),
                read);
    }

    /** What is left to the nearer limit; less than nothing outside. */
    private static Length room(Finding finding, Measured measured) {
        return finding.alone(measured)
                .flatMap(Verdict::margin)
                .map(margin ->
                        margin.inside() ? margin.distance() : margin.distance().negated())
                .orElse(measured.value().zero());
    }

    private ItemFound whole(Finding finding, List<Length> ends) {
        return whole(finding, ends, Optional.empty());
    }

    private ItemFound whole(Finding finding, List<Length> ends, Optional<Length> bonus) {
        return new ItemFound(
                Optional.empty(),
                finding.verdict().standing(),
                finding.value(),
                finding.deciding().map(figures.orElseThrow()::known).orElseGet(() -> placesJudged(finding)),
                ends,
                finding.match(new StandardUncertainty()),
                bonus,
                finding.measured());
    }

    /** As many as any of its figures is written with. */
    private static int placesJudged(Finding finding) {
        return StepFigures.of(finding).places();
    }

    private static List<Length> ends(List<Measured> read) {
        List<Length> sizes = read.stream().map(Measured::value).toList();
        return sizes.size() < 2 ? List.of() : List.of(Length.least(sizes), Length.greatest(sizes));
    }

    /** Where each would pass and the check does not, what is against the check is against all of them. */
    private static List<ItemFound> against(List<ItemFound> each, Finding finding) {
        VerdictKind whole = finding.verdict().standing();
        boolean hidden = whole != VerdictKind.PASS && each.stream().allMatch(one -> one.standing() == VerdictKind.PASS);
        return hidden
                ? each.stream()
                        .map(one -> new ItemFound(
                                one.which(),
                                whole,
                                one.value(),
                                one.places(),
                                one.ends(),
                                one.sure(),
                                one.bonus(),
                                one.readings()))
                        .toList()
                : List.copyOf(each);
    }
}
