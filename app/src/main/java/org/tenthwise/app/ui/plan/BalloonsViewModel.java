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
import org.tenthwise.app.drawing.PageImage;
import org.tenthwise.app.drawing.PagePart;
import org.tenthwise.app.drawing.PageReading;
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
    private static final double ENLARGED = 1.0 / 3;

    private final String name;
    private final PlanInHand plan;
    private final PlanDesk desk;
    private final DrawingPages drawings;
    private final LedgerTasks aside;
    private final LedgerTasks tasks;
    private final Words words;
    private final Optional<DrawingFile> file;
    private final ReadOnlyObjectWrapper<List<BalloonToPlace>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyIntegerWrapper inHand = new ReadOnlyIntegerWrapper(0);
    private final ReadOnlyObjectWrapper<BalloonsState> state;
    private final ReadOnlyStringWrapper toDo = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper choosing = new ReadOnlyBooleanWrapper(false);
    private Optional<PageImage> image = Optional.empty();
    private Optional<String> lies = Optional.empty();
    private PagePart part = PagePart.WHOLE;
    private int changes;
    private int asked;

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
        this.name = name;
        this.plan = plan;
        this.desk = desk;
        this.drawings = drawings;
        this.aside = aside;
        this.tasks = tasks;
        this.words = words;
        file = plan.text()
                .head()
                .says(NamedKey.DRAWING_FILE.key())
                .filter(DrawingFile::canBe)
                .map(DrawingFile::named);
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
        turnTo(inHandRow().flatMap(BalloonToPlace::spot).map(PageSpot::page).orElse(1));
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
        inHandRow().flatMap(BalloonToPlace::spot).ifPresent(this::see);
        show();
    }

    /** Turns to the page of a place, and where a part of it is enlarged that is elsewhere, to the part about it. */
    private void see(PageSpot spot) {
        turnTo(spot.page());
        double x = x(spot);
        double y = y(spot);
        if (!part.shows(x, y)) {
            part = PagePart.about(x, y, ENLARGED);
        }
    }

    private static double x(PageSpot spot) {
        return (double) spot.x() / PageSpot.WHOLE;
    }

    private static double y(PageSpot spot) {
        return (double) spot.y() / PageSpot.WHOLE;
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
            part = PagePart.about(x, y, ENLARGED);
        } else if (image.isPresent() && inHandRow().isPresent()) {
            place(new PageSpot(image.get().page(), thousandths(x), thousandths(y)));
        }
        show();
    }

    private static int thousandths(double share) {
        return (int) Math.round(Math.max(0, Math.min(1, share)) * PageSpot.WHOLE);
    }

    private void place(PageSpot spot) {
        String before = plan.text().text();
        boolean isRight = !isReplaced();
        int step = rows.get().get(inHand.get()).place();
        plan.change(text -> {
            PlanText placed = text.with(
                    STEP,
                    step,
                    table -> table.withAfter(NamedKey.before(SpotText.KEY), SpotText.KEY, SpotText.written(spot)));
            return isRight ? ofTheFileThatLies(placed) : placed;
        });
        keepIfOther(before);
        int count = rows.get().size();
        IntStream.range(1, count)
                .map(next -> (inHand.get() + next) % count)
                .filter(row -> rows.get().get(row).spot().isEmpty())
                .findFirst()
                .ifPresent(inHand::set);
    }

    private PlanText ofTheFileThatLies(PlanText text) {
        return text.withHead(head -> head.withAfter(NamedKey.before(HASH), HASH, TomlValue.text(lies.orElseThrow())));
    }

    /**
     * Whether places stand that nobody has seen on the file as it lies in the folder now: at the run they are not shown
     * before somebody says that they are right.
     */
    public boolean isReplaced() {
        return lies.isPresent()
                && rows.get().stream().anyMatch(row -> row.spot().isPresent())
                && !plan.text().head().says(HASH).equals(lies);
    }

    /** Says that every place was looked at and is right on the file as it lies in the folder now. */
    public void allAreRight() {
        if (isReplaced()) {
            String before = plan.text().text();
            plan.change(this::ofTheFileThatLies);
            keepIfOther(before);
            show();
        }
    }

    private void keepIfOther(String before) {
        if (!plan.text().text().equals(before)) {
            changes++;
            keep();
        }
    }

    private void keep() {
        rows.set(rowsNow());
        tasks.run(
                () -> {
                    desk.keep(name, plan.text());
                    return true;
                },
                done -> {});
    }

    /** Whether a place was set here that can be taken back. */
    public boolean canUndo() {
        return changes > 0;
    }

    /** Takes the last place back; its balloon is in hand again. */
    public void undo() {
        if (canUndo()) {
            List<BalloonToPlace> before = rows.get();
            plan.undo();
            changes--;
            keep();
            IntStream.range(0, before.size())
                    .filter(row -> !before.get(row).equals(rows.get().get(row)))
                    .findFirst()
                    .ifPresent(inHand::set);
            show();
        }
    }

    /** The whole page again, or the part of it that is tapped next. */
    public void enlarge() {
        if (part.isWhole()) {
            choosing.set(!choosing.get());
        } else {
            part = PagePart.WHOLE;
        }
        show();
    }

    public void next() {
        image.ifPresent(shown -> turnTo(shown.page() + 1));
    }

    public void previous() {
        image.ifPresent(shown -> turnTo(shown.page() - 1));
    }

    private void turnTo(int page) {
        if (file.isEmpty() || image.filter(shown -> shown.page() == page).isPresent()) {
            return;
        }
        image = Optional.empty();
        part = PagePart.WHOLE;
        choosing.set(false);
        state.set(new BalloonsState.Without(words.say("balloons.waiting")));
        int number = ++asked;
        aside.run(() -> drawings.page(file.get(), page), reading -> {
            if (number == asked) {
                drawn(reading);
            }
        });
    }

    private void drawn(PageReading reading) {
        if (reading instanceof PageReading.Readable readable) {
            image = Optional.of(readable.image());
            lies = Optional.of(readable.sha256());
            show();
        } else if (reading instanceof PageReading.Unreadable unreadable) {
            state.set(new BalloonsState.Without(words.say(unreadable.why())));
        }
    }

    private void show() {
        toDo.set(toDoNow());
        image.ifPresent(page -> state.set(new BalloonsState.Seen(
                page,
                part,
                new BalloonsOnPage(placedOn(page.page()), words.say("balloons.page", page.page(), page.pages())),
                words.say("balloons.page", page.page(), page.pages()),
                page.page() > 1,
                page.page() < page.pages())));
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

    private List<BalloonsOnPage.Placed> placedOn(int page) {
        return rows.get().stream()
                .flatMap(row -> row.spot().filter(spot -> spot.page() == page).map(spot -> placed(row, spot)).stream())
                .toList();
    }

    private BalloonsOnPage.Placed placed(BalloonToPlace row, PageSpot spot) {
        return new BalloonsOnPage.Placed(
                row.number(),
                part.across(x(spot)),
                part.down(y(spot)),
                inHandRow().filter(row::equals).isPresent());
    }

    /** Whether the key of the size leads back to the whole page. */
    public boolean isEnlarged() {
        return !part.isWhole();
    }
}
