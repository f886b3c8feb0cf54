package org.tenthwise.app.ui.drawing;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.drawing.DrawingPages;
import org.tenthwise.app.drawing.PageImage;
import org.tenthwise.app.drawing.PagePart;
import org.tenthwise.app.drawing.PageReading;
import org.tenthwise.app.picture.BalloonsOnPage;
import org.tenthwise.app.session.State;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.DrawingFile;
import org.tenthwise.model.plan.PageSpot;
import org.tenthwise.model.words.Words;

/**
 * The drawing about the balloon of the step in hand, or the whole page with it. The file is read as it lies in the
 * folder now, and nothing of it counts: the limits are those of the plan.
 */
public final class OnDrawingViewModel {

    private static final double ABOUT = 1.0 / 3;

    private final State run;
    private final DrawingPages drawings;
    private final LedgerTasks aside;
    private final Words words;
    private final DrawingFile file;
    private final PageSpot spot;
    private final ReadOnlyObjectWrapper<OnDrawingState> state;
    private Optional<PageImage> image = Optional.empty();
    private boolean whole;

    /**
     * @param run its step in hand {@linkplain State#isOnDrawing has a place} on the drawing
     * @param aside where the page is drawn
     */
    public OnDrawingViewModel(State run, DrawingPages drawings, LedgerTasks aside, Words words) {
        this.run = run;
        this.drawings = drawings;
        this.aside = aside;
        this.words = words;
        file = run.sheet().plan().drawing().file().orElseThrow();
        spot = run.inHand().drawing().onPage().orElseThrow();
        state = new ReadOnlyObjectWrapper<>(new OnDrawingState.Without(words.say("balloons.waiting")));
    }

    /** The run as it stood when the drawing was asked for. */
    public State run() {
        return run;
    }

    ReadOnlyObjectProperty<OnDrawingState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** What the page is good for. */
    public String note() {
        return words.say("on-drawing.note", file.name(), spot.page());
    }

    /** What the key of the size reads. */
    public String size() {
        return words.say(whole ? "balloons.enlarge" : "pages.whole");
    }

    public void load() {
        if (image.isEmpty()) {
            aside.run(() -> drawings.page(file, spot.page()), this::drawn);
        }
    }

    private void drawn(PageReading reading) {
        if (reading instanceof PageReading.Readable readable) {
            image = Optional.of(readable.image());
            show();
        } else if (reading instanceof PageReading.Unreadable unreadable) {
            state.set(new OnDrawingState.Without(words.say(unreadable.why())));
        }
    }

    /** The whole page, or what lies about the balloon. */
    public void changeSize() {
        whole = !whole;
        show();
    }

    private void show() {
        double x = (double) spot.x() / PageSpot.WHOLE;
        double y = (double) spot.y() / PageSpot.WHOLE;
        PagePart part = whole ? PagePart.WHOLE : PagePart.about(x, y, ABOUT);
        String number = run.sheet()
                .plan()
                .balloon(run.inHand())
                .map(BalloonNumber::text)
                .orElse("");
        image.ifPresent(page -> state.set(new OnDrawingState.Seen(
                page,
                part,
                new BalloonsOnPage(
                        List.of(new BalloonsOnPage.Placed(number, part.across(x), part.down(y), true)), note()))));
    }
}
