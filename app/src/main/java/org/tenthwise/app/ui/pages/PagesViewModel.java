package org.tenthwise.app.ui.pages;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.tenthwise.app.export.pdf.PagePicture;
import org.tenthwise.app.handout.Handout;
import org.tenthwise.app.ui.pages.PagesState.Shown;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.model.words.Words;

/** Which page of a record is in hand, whole or a part of it as wide as the screen. */
public final class PagesViewModel {

    private final String run;
    private final Handout handout;
    private final LedgerTasks tasks;
    private final Words words;
    private final ReadOnlyObjectWrapper<PagesState> state;
    private List<PagePicture> pages = List.of();
    private int page;
    private int part;
    private boolean large;
    private double width = 1;
    private double height = 1;

    public PagesViewModel(String run, Handout handout, LedgerTasks tasks, Words words) {
        this.run = run;
        this.handout = handout;
        this.tasks = tasks;
        this.words = words;
        this.state = new ReadOnlyObjectWrapper<>(new PagesState.Waiting(words.say("pages.laying-out")));
    }

    public ReadOnlyObjectProperty<PagesState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** Lays the record out as it stands now. */
    public void load() {
        tasks.run(() -> handout.pages().of(run), laid -> {
            pages = laid;
            page = Math.min(page, pages.size() - 1);
            show();
        });
    }

    /** The room there is for a page. */
    public void room(double across, double down) {
        width = Math.max(1, across);
        height = Math.max(1, down);
        part = Math.min(part, parts(page) - 1);
        show();
    }

    /** On to the next part of the page, or to the next page. */
    public void next() {
        if (part + 1 < parts(page)) {
            part++;
        } else if (page + 1 < pages.size()) {
            page++;
            part = 0;
        }
        show();
    }

    public void previous() {
        if (part > 0) {
            part--;
        } else if (page > 0) {
            page--;
            part = parts(page) - 1;
        }
        show();
    }

    /** The whole page, or as wide as the screen, from its head. */
    public void changeSize() {
        large = !large;
        part = 0;
        show();
    }

    private int parts(int of) {
        return large && of < pages.size() ? pages.get(of).parts(width, height) : 1;
    }

    private void show() {
        if (!pages.isEmpty()) {
            PagePicture inHand = pages.get(page);
            state.set(new Shown(
                    large ? inHand.part(part) : inHand,
                    inHand.spoken(),
                    page > 0 || part > 0,
                    page + 1 < pages.size() || part + 1 < parts(page),
                    words.say(large ? "pages.whole" : "pages.larger"),
                    inHand.parts(width, height) > 1));
        }
    }
}
