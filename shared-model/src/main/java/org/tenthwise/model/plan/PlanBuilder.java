package org.tenthwise.model.plan;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.quantity.Unit;

/** A plan as it is put together: what is not said is as in a plan that does not say it. */
public final class PlanBuilder {

    private final PartId part;
    private final Unit unit;
    private final List<Operation> operations;
    private final List<Step> steps;
    private String issue = "1";
    private String name = "";
    private String material = "";
    private DrawingInForce drawing = DrawingInForce.titled("");
    private Optional<String> route = Optional.empty();
    private String remark = "";
    private Optional<Outline> outline = Optional.empty();
    private PlanSource source = new PlanSource("", "");
    private Optional<ThermalData> climate = Optional.empty();
    private boolean lotAsked;
    private List<IssueOfPlan> issues = List.of();

    /** With no text behind it. */
    public PlanBuilder(PartId part, Unit unit, List<Operation> operations, List<Step> steps) {
        this.part = part;
        this.unit = unit;
        this.operations = operations;
        this.steps = steps;
    }

    /** As {@code plan} is. */
    public PlanBuilder(Plan plan) {
        this(plan.part(), plan.unit(), plan.operations(), plan.steps());
        this.issue = plan.issue();
        this.name = plan.name();
        this.material = plan.material();
        this.drawing = plan.drawing();
        this.route = plan.route();
        this.remark = plan.remark();
        this.outline = plan.outline();
        this.source = plan.source();
        this.climate = plan.climate();
        this.lotAsked = plan.lotAsked();
        this.issues = plan.issues();
    }

    public PlanBuilder issue(String ofThePlan) {
        this.issue = ofThePlan;
        return this;
    }

    public PlanBuilder name(String words) {
        this.name = words;
        return this;
    }

    public PlanBuilder material(String words) {
        this.material = words;
        return this;
    }

    public PlanBuilder drawing(DrawingInForce madeFrom) {
        this.drawing = madeFrom;
        return this;
    }

    public PlanBuilder route(Optional<String> number) {
        this.route = number;
        return this;
    }

    public PlanBuilder remark(String words) {
        this.remark = words;
        return this;
    }

    public PlanBuilder outline(Optional<Outline> drawn) {
        this.outline = drawn;
        return this;
    }

    public PlanBuilder source(PlanSource text) {
        this.source = text;
        return this;
    }

    public PlanBuilder climate(Optional<ThermalData> said) {
        this.climate = said;
        return this;
    }

    public PlanBuilder lotAsked(boolean asked) {
        this.lotAsked = asked;
        return this;
    }

    public PlanBuilder issues(List<IssueOfPlan> untilNow) {
        this.issues = untilNow;
        return this;
    }

    public Plan build() {
        return new Plan(
                part,
                issue,
                name,
                material,
                drawing,
                route,
                unit,
                remark,
                operations,
                steps,
                outline,
                source,
                climate,
                lotAsked,
                issues);
    }
}
