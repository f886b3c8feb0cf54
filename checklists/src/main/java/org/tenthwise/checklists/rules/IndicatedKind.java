package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.IndicatedCheck;
import org.tenthwise.model.plan.IndicatedCheck.DatumBy;
import org.tenthwise.model.plan.IndicatedCheck.Of;
import org.tenthwise.model.plan.Place;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** <em>indicated</em>: the full movement of an indicator over a sweep. */
final class IndicatedKind implements StepKind {

    private static final String OF = "movement_of";
    private static final String DATUM = "datum";
    private static final String DATUM_BY = "datum_by";
    private static final String LIMIT = "limit";

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<Of> of = keys.word(OF, List.of(Of.values()), Of::key);
        boolean toADatum = of.filter(Of.FLATNESS::equals).isEmpty();
        Optional<String> datum = toADatum ? keys.text(DATUM) : Optional.empty();
        Optional<DatumBy> datumBy =
                toADatum ? keys.word(DATUM_BY, List.of(DatumBy.values()), DatumBy::key) : Optional.empty();
        if (of.filter(Of::turns).isPresent()
                && datumBy.filter(DatumBy.SURFACE_PLATE::equals).isPresent()) {
            keys.problem(DATUM_BY, "plan.indicated.no-axis");
        }
        Optional<Written> limit = keys.size(LIMIT, soFar.unit());
        List<Place> places = new PlaceRules(keys, soFar.unit()).read();
        if (places.size() == 1 && of.filter(Of.TOTAL_RUN_OUT::equals).isPresent()) {
            keys.problem(OF, "plan.indicated.one-place");
        }
        Optional<Check.Means> means = MeansRules.read(keys, soFar, List.of(IndicatedCheck.KEY));
        Optional<Limits> limits = limit.map(Limits::atMost);
        Written guardBand =
                new SizeRules(keys, soFar.unit()).guardBand(limits, means.flatMap(Check.Means::uncertainty));
        limit.map(Written::length)
                .filter(width -> guardBand.length().signum() > 0 && !isBelow(guardBand, width))
                .ifPresent(width -> keys.problem("guard_band", "plan.guard-band.too-wide", guardBand, limit.get()));
        return keys.built(() -> new IndicatedCheck(
                of.orElseThrow(), datum, datumBy, limits.orElseThrow(), places, guardBand, means.orElseThrow()));
    }

    private static boolean isBelow(Written guardBand, Length width) {
        return guardBand.length().isBelow(width);
    }
}
