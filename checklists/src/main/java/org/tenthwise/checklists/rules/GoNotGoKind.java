package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.gauge.CertifiedEnds;
import org.tenthwise.model.gauge.LimitGaugeForm;
import org.tenthwise.model.plan.AskedCheck;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.tolerance.Limits;

/** <em>go-not-go</em>: a limit gauge with two ends, and what its certificate says of them. */
final class GoNotGoKind implements StepKind {

    private static final String FORM = "gauge_form";
    private static final String GO_SIZE = "go_size";
    private static final String NOT_GO_SIZE = "not_go_size";
    private static final List<String> OF_THE_CERTIFICATE = List.of(GO_SIZE, NOT_GO_SIZE, "lower", "upper");

    @Override
    public Optional<Check> read(TableKeys keys, PlanSoFar soFar) {
        Optional<String> go = keys.prose("go");
        Optional<String> notGo = keys.prose("not_go");
        Optional<String> gauge = keys.ifAny("gauge", keys::text);
        Optional<LimitGaugeForm> form =
                keys.ifAny(FORM, key -> keys.word(key, List.of(LimitGaugeForm.values()), LimitGaugeForm::key));
        Optional<CertifiedEnds> certified = OF_THE_CERTIFICATE.stream().anyMatch(keys::has)
                ? certified(keys, form, soFar.unit())
                : Optional.empty();
        return keys.built(() -> new AskedCheck.GoNotGo(go.orElseThrow(), notGo.orElseThrow(), gauge, form, certified));
    }

    private static Optional<CertifiedEnds> certified(TableKeys keys, Optional<LimitGaugeForm> form, Unit unit) {
        if (form.filter(LimitGaugeForm::hasSizes).isEmpty()) {
            keys.problem(keys.has(FORM) ? FORM : keys.has(GO_SIZE) ? GO_SIZE : NOT_GO_SIZE, "plan.limit-gauge.form");
        }
        List<Optional<Written>> sizes =
                OF_THE_CERTIFICATE.stream().map(key -> keys.size(key, unit)).toList();
        if (form.isEmpty() || sizes.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        List<Written> all = sizes.stream().flatMap(Optional::stream).toList();
        return keys.sensible(
                GO_SIZE,
                () -> new CertifiedEnds(form.get(), Limits.between(all.get(2), all.get(3)), all.get(0), all.get(1)));
    }
}
