package org.tenthwise.app.ui.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.editing.MarkText;
import org.tenthwise.checklists.editing.OutlineText;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** Where a check stands on the outline, by the figures of the drawing. */
public final class MarkFiguresViewModel {

    private final PlanInHand plan;
    private final int place;
    private final Words words;
    private final Navigator navigator;
    private final Unit unit;
    private final FigureField at;
    private final FigureField diameter;
    private final FormViewModel form;

    public MarkFiguresViewModel(PlanInHand plan, int place, Words words, Navigator navigator) {
        this.plan = plan;
        this.place = place;
        this.words = words;
        this.navigator = navigator;
        unit = plan.text().unit();
        Outline part =
                OutlineText.of(plan.text()).outline(unit, Optional.empty()).orElseThrow();
        at = field("at", part.length());
        diameter = field("diameter", part.greatestDiameter());
        MarkText.of(plan.steps().get(place), unit).ifPresent(this::startWith);
        form = new FormViewModel(List.of(at.field(), diameter.field()), words, words.say("planning.keep"), this::keep);
    }

    private FigureField field(String key, Length most) {
        return new FigureField(
                "mark-" + key,
                words.say("planning.mark." + key),
                words.say("planning.mark." + key + ".question"),
                true,
                words,
                figure -> Length.of(figure, unit).isAbove(most)
                        ? Optional.of(words.say(
                                "planning.mark." + key + ".beyond",
                                most.in(unit).toPlainString(),
                                unit.symbol()))
                        : Optional.empty());
    }

    private void startWith(Mark mark) {
        at.startWith(mark.at().in(unit));
        diameter.startWith(mark.diameter().in(unit));
    }

    public FormViewModel form() {
        return form;
    }

    private void keep() {
        Optional<BigDecimal> along = at.figure();
        Optional<BigDecimal> across = diameter.figure();
        if (along.isPresent() && across.isPresent()) {
            plan.changeStep(
                    place, step -> MarkText.put(step, NamedKey.before(MarkText.KEY), along.get(), across.get()));
            navigator.back();
        } else {
            form.goTo((along.isEmpty() ? at : diameter).field());
        }
    }
}
