package org.tenthwise.app.ui.plan;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.picture.OutlinePicture;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.ProfileText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Words;

/** The outline of the part by typing positions and diameters, outside and inside, drawn as it grows. */
public final class OutlineViewModel {

    private static final int MOST = 600;
    private static final String TABLE = "outline";
    private static final String OUTSIDE = "outside";
    private static final String INSIDE = "inside";

    private final PlanInHand plan;
    private final Words words;
    private final Navigator navigator;
    private final Field<String> outside;
    private final Field<String> inside;
    private final FormViewModel form;
    private final ReadOnlyObjectWrapper<Optional<Picture>> drawn = new ReadOnlyObjectWrapper<>(Optional.empty());

    public OutlineViewModel(PlanInHand plan, Words words, Navigator navigator) {
        this.plan = plan;
        this.words = words;
        this.navigator = navigator;
        outside = field(OUTSIDE, words.say("planning.outline.outside"), true);
        inside = field(INSIDE, words.say("planning.outline.inside"), false);
        form = new FormViewModel(List.of(outside, inside), words, words.say("planning.keep"), this::keep);
        outside.valueProperty().subscribe(typed -> draw());
        inside.valueProperty().subscribe(typed -> draw());
    }

    private Field<String> field(String key, String name, boolean required) {
        Field<String> field =
                Field.words("outline-" + key, name, words.say("planning.outline.question"), required, MOST);
        plan.text()
                .table(TABLE)
                .flatMap(table -> table.value(key))
                .map(ProfileText::reads)
                .ifPresent(reads -> field.typing().ifPresent(line -> line.startAnew(reads)));
        field.type();
        return field;
    }

    public FormViewModel form() {
        return form;
    }

    /** The part as far as it is typed; absent while that is no profile. */
    public ReadOnlyObjectProperty<Optional<Picture>> drawnProperty() {
        return drawn.getReadOnlyProperty();
    }

    private void draw() {
        Unit unit = plan.text().head().says("unit").flatMap(Unit::ofSymbol).orElse(Unit.MILLIMETRE);
        Optional<List<Mark>> inner = ProfileText.profile(inside.reads(), unit);
        drawn.set(ProfileText.profile(outside.reads(), unit)
                .filter(outer -> outer.stream().anyMatch(mark -> mark.diameter().signum() > 0))
                .map(outer -> outline(outer, inner.orElse(List.of())))
                .map(outline -> OutlinePicture.small(outline, Optional.empty(), words.say("planning.outline.drawn"))));
    }

    /** Threads, pockets and cross holes as the plan has them; nothing that lies beyond the part as it is typed. */
    private Outline outline(List<Mark> outer, List<Mark> inner) {
        Length end = outer.get(outer.size() - 1).at();
        Optional<Outline> before = plan.plan().flatMap(Plan::outline);
        return new Outline(
                outer,
                inner.stream().anyMatch(mark -> mark.at().isAbove(end)) ? List.of() : inner,
                before.map(Outline::threads).orElse(List.of()).stream()
                        .filter(thread -> !thread.to().isAbove(end))
                        .toList(),
                before.map(Outline::pockets).orElse(List.of()).stream()
                        .filter(pocket -> !pocket.to().isAbove(end))
                        .toList(),
                before.map(Outline::crossHoles).orElse(List.of()).stream()
                        .filter(hole -> !hole.at().isAbove(end))
                        .toList());
    }

    private void keep() {
        Optional<String> outer = ProfileText.written(outside.reads());
        Optional<String> inner = ProfileText.written(inside.reads());
        if (outer.isEmpty() || inner.isEmpty() && !inside.reads().isBlank()) {
            navigator.tell(Notice.plain(
                    words.say("planning.outline.not-kept"),
                    words.say("planning.outline.not-kept.next"),
                    words.say("shell.understood")));
            return;
        }
        plan.change(text -> text.withTable(TABLE, table -> changed(table, outer.get(), inner)));
        navigator.back();
    }

    /** What is typed as it stands there already leaves the text as it is. */
    private TableText changed(TableText table, String outer, Optional<String> inner) {
        TableText kept = withProfile(table, OUTSIDE, outer);
        return inner.map(written -> withProfile(kept, INSIDE, written)).orElseGet(() -> kept.without(INSIDE));
    }

    private static TableText withProfile(TableText table, String key, String written) {
        boolean isThere = table.value(key)
                .map(ProfileText::reads)
                .filter(ProfileText.reads(written)::equals)
                .isPresent();
        return isThere ? table : table.with(key, written);
    }
}
