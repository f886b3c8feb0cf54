package org.tenthwise.app.ui.plan;

import java.util.Optional;
import java.util.function.Consumer;
import org.tenthwise.app.drawing.DrawingPages;
import org.tenthwise.app.drawing.PageImage;
import org.tenthwise.app.drawing.PagePart;
import org.tenthwise.app.drawing.PageReading;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.model.plan.DrawingFile;
import org.tenthwise.model.plan.PageSpot;
import org.tenthwise.model.words.Message;

/** The page of a drawing that is looked at, and which part of it. Pages are drawn aside. */
final class PageInHand {

    private static final double ENLARGED = 1.0 / 3;

    private final Optional<DrawingFile> file;
    private final DrawingPages drawings;
    private final LedgerTasks aside;
    private final Consumer<Message> without;
    private final Runnable drawn;
    private Optional<PageImage> image = Optional.empty();
    private Optional<String> lies = Optional.empty();
    private PagePart part = PagePart.WHOLE;
    private int asked;

    /**
     * @param aside where the pages are drawn
     * @param without is told why there is no page to be seen: it is still being drawn, or cannot be
     * @param drawn is called when a page is there
     */
    PageInHand(
            Optional<DrawingFile> file,
            DrawingPages drawings,
            LedgerTasks aside,
            Consumer<Message> without,
            Runnable drawn) {
        this.file = file;
        this.drawings = drawings;
        this.aside = aside;
        this.without = without;
        this.drawn = drawn;
    }

    /** Absent while it is being drawn, and where it cannot be. */
    Optional<PageImage> image() {
        return image;
    }

    /** Hash of the file as it lies in the folder now; absent until a page of it was drawn. */
    Optional<String> lies() {
        return lies;
    }

    PagePart part() {
        return part;
    }

    /** @param page from 1; the page looked at, or a file that is not there, changes nothing */
    void turnTo(int page) {
        if (file.isEmpty() || image.filter(shown -> shown.page() == page).isPresent()) {
            return;
        }
        image = Optional.empty();
        part = PagePart.WHOLE;
        without.accept(Message.of("balloons.waiting"));
        int number = ++asked;
        aside.run(() -> drawings.page(file.get(), page), reading -> {
            if (number == asked) {
                take(reading);
            }
        });
    }

    private void take(PageReading reading) {
        if (reading instanceof PageReading.Readable readable) {
            image = Optional.of(readable.image());
            lies = Optional.of(readable.sha256());
            drawn.run();
        } else if (reading instanceof PageReading.Unreadable unreadable) {
            without.accept(unreadable.why());
        }
    }

    /** Turns to the page of a place, and where a part of it is enlarged that is elsewhere, to the part about it. */
    void see(PageSpot spot) {
        turnTo(spot.page());
        if (!part.shows(x(spot), y(spot))) {
            enlargeAbout(x(spot), y(spot));
        }
    }

    /** Share of the page's width a place is at, 0 to 1. */
    static double x(PageSpot spot) {
        return (double) spot.x() / PageSpot.WHOLE;
    }

    /** Share of the page's height a place is at, 0 to 1. */
    static double y(PageSpot spot) {
        return (double) spot.y() / PageSpot.WHOLE;
    }

    /**
     * @param x share of the page's width, 0 to 1
     * @param y share of the page's height, 0 to 1
     */
    void enlargeAbout(double x, double y) {
        part = PagePart.about(x, y, ENLARGED);
    }

    void seeAll() {
        part = PagePart.WHOLE;
    }
}
