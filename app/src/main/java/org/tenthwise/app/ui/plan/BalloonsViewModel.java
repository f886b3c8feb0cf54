package org.tenthwise.app.ui.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.drawing.DrawingPages;
import org.tenthwise.app.picture.BalloonsOnPage;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.checklists.catalogue.PlanDesk;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.SpotText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.checklists.editing.ValueText;
import org.tenthwise.model.plan.DrawingFile;
import org.tenthwise.model.plan.PageSpot;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/**
 * Places the balloons of a plan on the pages of its drawing. One balloon is in hand; the next tap on the page is its
 * place, and then the next one without a place is in hand.
 */
public final class BalloonsViewModel {

    /**
     * A step with a balloon.
     *
     * @param place of the step, from 0
     * @param number in the balloon
     * @param title its balloon and its name
     * @param line what the drawing asks, and the page it has its place on
     */
    public record BalloonToPlace(int place, String number, String title, String line, Optional<PageSpot> spot) {}

    private static final String STEP = "step";
    private static final String HASH = NamedKey.DRAWING_FILE_SHA256.key();

    private final PlanInHand plan;
    private final Words words;
    private final ChangesHere changes;
    private final PageInHand page;
    private final ReadOnlyObjectWrapper<List<BalloonToPlace>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyIntegerWrapper inHand = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyObjectWrapper<BalloonsState> state;
    private final ReadOnlyStringWrapper toDo = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper choosing = new ReadOnlyBooleanWrapper(false);

    /**
     * @param place of the step whose balloon is in hand, from 0
     * @param aside where the pages are drawn
     */
    public BalloonsViewModel(
            String name,
            PlanInHand plan,
            int place,
            PlanDesk desk,
            DrawingPages drawings,
            LedgerTasks aside,
            LedgerTasks tasks,
            Words words) {
        this.plan = plan;
        this.words = words;
        changes = new ChangesHere(name, plan, desk, tasks);
        Optional<DrawingFile> file = plan.text()
                .head()
                .says(NamedKey.DRAWING_FILE.key())
                .filter(DrawingFile::canBe)
                .map(DrawingFile::named);
        page = new PageInHand(file, drawings, aside, this::showNone, this::show);
        rows.set(rowsNow());
        rowOf(place).ifPresent(inHand::set);
        state = new ReadOnlyObjectWrapper<>(
                new BalloonsState.Without(words.say(file.isPresent() ? "balloons.waiting" : "balloons.no-file")));
    }

    ReadOnlyObjectProperty<BalloonsState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<List<BalloonToPlace>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    /** Which row is in hand, from 0. */
    public ReadOnlyIntegerProperty inHandProperty() {
        return inHand.getReadOnlyProperty();
    }

    /** What the next tap on the page does. */
    public ReadOnlyStringProperty toDoProperty() {
        return toDo.getReadOnlyProperty();
    }

    /** Whether the next tap on the page chooses the part to enlarge. */
    public ReadOnlyBooleanProperty choosingProperty() {
        return choosing.getReadOnlyProperty();
    }

    /** Shows the page the balloon in hand is on, or the first. */
    public void load() {
        page.turnTo(
                inHandRow().flatMap(BalloonToPlace::spot).map(PageSpot::page).orElse(1));
        show();
    }

    private Optional<BalloonToPlace> inHandRow() {
        return rows.get().stream().skip(inHand.get()).findFirst();
    }

    private OptionalInt rowOf(int place) {
        return IntStream.range(0, rows.get().size())
                .filter(row -> rows.get().get(row).place() == place)
                .findFirst();
    }

    /** Where the plan has balloons, the steps that have one; otherwise all, by their number. */
    private List<BalloonToPlace> rowsNow() {
        List<TableText> steps = plan.steps();
        boolean isBallooned = steps.stream().anyMatch(step -> balloon(step).isPresent());
        return IntStream.range(0, steps.size())
                .filter(place -> !isBallooned || balloon(steps.get(place)).isPresent())
                .mapToObj(place -> row(place, steps.get(place)))
                .toList();
    }

    private static Optional<String> balloon(TableText step) {
        return step.value(NamedKey.BALLOON.key()).map(ValueText::reads);
    }

    private BalloonToPlace row(int place, TableText step) {
        String number = balloon(step).or(() -> step.value("number")).orElseGet(() -> String.valueOf(place + 1));
        Optional<PageSpot> spot = SpotText.of(step);
        String where =
                spot.map(it -> words.say("balloons.placed", it.page())).orElseGet(() -> words.say("balloons.no-place"));
        return new BalloonToPlace(
                place,
                number,
                words.say("planning.step", number, step.says("name").orElseGet(() -> words.say("planning.unnamed"))),
                step.says("requirement")
                        .or(() -> step.says("drawing"))
                        .map(asks -> words.list(List.of(where, asks)))
                        .orElse(where),
                spot);
    }

    public void take(int row) {
        inHand.set(row);
        choosing.set(false);
        inHandRow().flatMap(BalloonToPlace::spot).ifPresent(page::see);
        show();
    }

    /**
     * Places the balloon in hand, or enlarges what lies about the spot.
     *
     * @param x share of the page's width, 0 to 1
     * @param y share of the page's height, 0 to 1
     */
    public void tap(double x, double y) {
        if (choosing.get()) {
            choosing.set(false);
            page.enlargeAbout(x, y);
        } else if (page.image().isPresent() && inHandRow().isPresent()) {
            place(new PageSpot(page.image().get().page(), thousandths(x), thousandths(y)));
        }
        show();
    }

    private static int thousandths(double share) {
        return (int) Math.round(Math.max(0, Math.min(1, share)) * PageSpot.WHOLE);
    }

    private void place(PageSpot spot) {
        boolean isRight = !isReplaced();
        int step = rows.get().get(inHand.get()).place();
        plan.change(text -> {
            PlanText placed = text.with(
                    STEP,
                    step,
                    table -> table.withAfter(NamedKey.before(SpotText.KEY), SpotText.KEY, SpotText.written(spot)));
            return isRight ? ofTheFileThatLies(placed) : placed;
        });
        lookForChange();
        int count = rows.get().size();
        IntStream.range(1, count)
                .map(next -> (inHand.get() + next) % count)
                .filter(row -> rows.get().get(row).spot().isEmpty())
                .findFirst()
                .ifPresent(inHand::set);
    }

    private PlanText ofTheFileThatLies(PlanText text) {
        return text.withHead(head -> head.withAfter(
                NamedKey.before(HASH), HASH, TomlValue.text(page.lies().orElseThrow())));
    }

    /**
     * Whether places stand that nobody has seen on the file as it lies in the folder now: at the run they are not shown
     * before somebody says that they are right.
     */
    public boolean isReplaced() {
        return page.lies().isPresent()
                && rows.get().stream().anyMatch(row -> row.spot().isPresent())
                && !plan.text().head().says(HASH).equals(page.lies());
    }

    /** Says that every place was looked at and is right on the file as it lies in the folder now. */
    public void allAreRight() {
        if (isReplaced()) {
            plan.change(this::ofTheFileThatLies);
            lookForChange();
            show();
        }
    }

    private void lookForChange() {
        if (changes.isAnother()) {
            rows.set(rowsNow());
        }
    }

    /** Whether a place was set here that can be taken back. */
    public boolean canUndo() {
        return changes.canUndo();
    }

    /** Takes the last place back; its balloon is in hand again. */
    public void undo() {
        if (canUndo()) {
            List<BalloonToPlace> before = rows.get();
            changes.undo();
            rows.set(rowsNow());
            IntStream.range(0, before.size())
                    .filter(row -> !before.get(row).equals(rows.get().get(row)))
                    .findFirst()
                    .ifPresent(inHand::set);
            show();
        }
    }

    /** The whole page again, or the part of it that is tapped next. */
    public void enlarge() {
        if (page.part().isWhole()) {
            choosing.set(!choosing.get());
        } else {
            page.seeAll();
        }
        show();
    }

    public void next() {
        page.image().ifPresent(shown -> page.turnTo(shown.page() + 1));
    }

    public void previous() {
        page.image().ifPresent(shown -> page.turnTo(shown.page() - 1));
    }

    private void showNone(Message why) {
        choosing.set(false);
        state.set(new BalloonsState.Without(words.say(why)));
    }

    private void show() {
        toDo.set(toDoNow());
        page.image()
                .ifPresent(shown -> state.set(new BalloonsState.Seen(
                        shown,
                        page.part(),
                        new BalloonsOnPage(
                                placedOn(shown.page()), words.say("balloons.page", shown.page(), shown.pages())),
                        words.say("balloons.page", shown.page(), shown.pages()),
                        shown.page() > 1,
                        shown.page() < shown.pages())));
    }

    private String toDoNow() {
        if (choosing.get()) {
            return words.say("balloons.choose");
        }
        if (isReplaced()) {
            return words.say("balloons.replaced");
        }
        return inHandRow()
                .map(row -> words.say(row.spot().isPresent() ? "balloons.move" : "balloons.place", row.number()))
                .orElseGet(() -> words.say("balloons.none"));
    }

    private List<BalloonsOnPage.Placed> placedOn(int number) {
        return rows.get().stream()
                .flatMap(
                        row -> row.spot().filter(spot -> spot.page() == number).map(spot -> placed(row, spot)).stream())
                .toList();
    }

    private BalloonsOnPage.Placed placed(BalloonToPlace row, PageSpot spot) {
        return new BalloonsOnPage.Placed(
                row.number(),
                page.part().across(PageInHand.x(spot)),
                page.part().down(PageInHand.y(spot)),
                inHandRow().filter(row::equals).isPresent());
    }

    /** Whether the key of the size leads back to the whole page. */
    public boolean isEnlarged() {
        return !page.part().isWhole();
    }
}
