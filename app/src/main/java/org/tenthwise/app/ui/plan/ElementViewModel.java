package org.tenthwise.app.ui.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.picture.OutlinePicture;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.checklists.editing.OutlineText;
import org.tenthwise.checklists.editing.OutlineText.Side;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.ProfileElement;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** An element of the outline: its diameter and its length, for a taper the other diameter too; drawn while typed. */
public final class ElementViewModel {

    private final PlanInHand plan;
    private final Side side;
    private final int place;
    private final boolean isNew;
    private final Words words;
    private final Navigator navigator;
    private final Unit unit;
    private final FigureField diameter;
    private final FigureField length;
    private final FigureField end;
    private final FormViewModel form;
    private final ReadOnlyObjectWrapper<Optional<Picture>> drawn = new ReadOnlyObjectWrapper<>(Optional.empty());

    /** @param isNew whether it comes in at the place; otherwise it is the one there */
    public ElementViewModel(PlanInHand plan, Side side, int place, boolean isNew, Words words, Navigator navigator) {
        this.plan = plan;
        this.side = side;
        this.place = place;
        this.isNew = isNew;
        this.words = words;
        this.navigator = navigator;
        unit = plan.text().unit();
        diameter = field("diameter", true, figure -> Optional.empty());
        length = field(
                "length",
                true,
                figure ->
                        figure.signum() > 0 ? Optional.empty() : Optional.of(words.say("planning.element.no-length")));
        end = field("end", false, figure -> Optional.empty());
        if (!isNew) {
            startWith(OutlineText.of(plan.text()).of(side).get(place));
        }
        form = new FormViewModel(
                List.of(diameter.field(), length.field(), end.field()), words, words.say("planning.keep"), this::keep);
        form.fields().forEach(field -> field.valueProperty().subscribe(this::draw));
    }

    private FigureField field(String key, boolean required, Function<BigDecimal, Optional<String>> refusal) {
        return new FigureField(
                "element-" + key,
                words.say("planning.element." + key),
                words.say("planning.element." + key + ".question", side),
                required,
                words,
                refusal);
    }

    private void startWith(ProfileElement element) {
        diameter.startWith(element.diameter());
        length.startWith(element.length());
        if (element.isTaper()) {
            end.startWith(element.end());
        }
    }

    public FormViewModel form() {
        return form;
    }

    /** The part with the element as it is typed; without it while that is none. */
    public ReadOnlyObjectProperty<Optional<Picture>> drawnProperty() {
        return drawn.getReadOnlyProperty();
    }

    private void draw() {
        OutlineText text = typed().map(this::withTyped).orElseGet(() -> OutlineText.of(plan.text()));
        boolean isThere = typed().isPresent() || !isNew;
        drawn.set(text.outline(unit, plan.plan().flatMap(Plan::outline))
                .filter(outline -> outline.greatestDiameter().signum() > 0)
                .map(outline -> OutlinePicture.small(
                        outline,
                        isThere ? Optional.of(text.middle(side, place, unit)) : Optional.empty(),
                        words.say("planning.outline.drawn"))));
    }

    /** Absent while a figure is missing or wrong, or the outside comes to nothing. */
    private Optional<ProfileElement> typed() {
        if (end.wrong().isPresent()) {
            return Optional.empty();
        }
        return diameter.figure()
                .flatMap(from -> length.figure()
                        .map(along ->
                                new ProfileElement(from, along, end.figure().orElse(from))))
                .filter(element -> side == Side.INSIDE || !element.isSolid());
    }

    private OutlineText withTyped(ProfileElement element) {
        OutlineText text = OutlineText.of(plan.text());
        List<ProfileElement> elements = new ArrayList<>(text.of(side));
        if (isNew) {
            elements.add(place, element);
        } else {
            elements.set(place, element);
        }
        return text.with(side, elements);
    }

    private void keep() {
        Optional<ProfileElement> element = typed();
        if (element.isPresent()) {
            plan.change(text -> withTyped(element.get()).into(text));
            navigator.back();
            return;
        }
        List.of(diameter, length, end).stream()
                .filter(figure -> figure.wrong().isPresent())
                .findFirst()
                .ifPresentOrElse(figure -> form.goTo(figure.field()), this::refuseNothing);
    }

    private void refuseNothing() {
        diameter.field().aboutProperty().set(words.say("planning.element.no-diameter"));
        form.goTo(diameter.field());
    }
}
