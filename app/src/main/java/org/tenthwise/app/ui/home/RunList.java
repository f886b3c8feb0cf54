package org.tenthwise.app.ui.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.tenthwise.app.ui.keys.Deaf;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.words.Words;

/**
 * Runs under a title, with the keys to turn their pages. What they are found by stands above them. A finger on its way
 * to a row must not go on with another that came to stand there meanwhile.
 */
final class RunList extends VBox {

    private final RunListViewModel model;
    private final Words words;
    private final HomeRows rows;
    private final PagedRows pages;
    private final Optional<Key> begin;
    private final HBox found = new HBox(16);
    private final List<Subscription> following = new ArrayList<>();

    /** @param begin where nothing was begun yet: leads to how one begins */
    RunList(String title, RunListViewModel model, HomeRows rows, Words words, Optional<Key> begin) {
        this.model = model;
        this.words = words;
        this.rows = rows;
        pages = new PagedRows(words, 0);
        pages.setMinHeight(0);
        pages.onLastSeen(model::more);
        VBox.setVgrow(pages, Priority.ALWAYS);
        this.begin = begin;
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox line = new HBox(8, Texts.label(title, "heading"), space);
        pages.turnAt(line);
        line.setAlignment(Pos.CENTER_LEFT);
        line.setMinHeight(USE_PREF_SIZE);
        line.getStyleClass().addAll("lined-below", "home-title");
        getStyleClass().addAll("on-sheet", "home-side");
        getChildren().addAll(line, found(), pages);
        Deaf deaf = new Deaf(pages);
        following.add(model.lookedProperty().subscribe((before, now) -> deaf.forAMoment()));
        following.add(model.rowsProperty().subscribe((before, now) -> {
            if (!RunListViewModel.isMoreOf(before, now)) {
                deaf.forAMoment();
            }
        }));
        following.add(model.rowsProperty().subscribe(this::fill));
        following.add(model.lookedProperty().subscribe(this::fill));
        following.add(model.lastProperty().subscribe(this::fill));
        following.add(model.foundByProperty().subscribe(this::fill));
    }

    void letGo() {
        following.forEach(Subscription::unsubscribe);
    }

    private HBox found() {
        Label by = Texts.label("", "middling");
        by.setId("found-by");
        by.textProperty().bind(model.foundByProperty().map(text -> words.say("home.found", text.strip())));
        HBox.setHgrow(by, Priority.ALWAYS);
        by.setMaxWidth(Double.MAX_VALUE);
        Key all = Key.onward("all-runs", words.say("home.all-runs"), () -> model.find(""));
        found.getChildren().addAll(by, all);
        found.setAlignment(Pos.CENTER_LEFT);
        found.setMinHeight(USE_PREF_SIZE);
        found.getStyleClass().addAll("ruled-below", "home-row");
        found.visibleProperty().bind(model.foundByProperty().isEmpty().not());
        found.managedProperty().bind(found.visibleProperty());
        return found;
    }

    private void fill() {
        List<Region> shown = new ArrayList<>();
        boolean first = true;
        for (RunRow run : model.rowsProperty().get()) {
            String above = model.above(run);
            Region row = model.isAlone(run) && above.isEmpty()
                    ? rows.alone(run, () -> model.goOn(run))
                    : rows.run(run, first && run.open(), () -> model.goOn(run));
            shown.add(above.isEmpty() ? row : under(above, row));
            first = false;
        }
        if (shown.isEmpty()) {
            shown.add(Texts.label(model.none(), "middling", "home-row"));
            if (model.isNew()) {
                begin.ifPresent(shown::add);
            }
        }
        pages.show(shown);
    }

    private static VBox under(String above, Region row) {
        Label name = Texts.label(above, "body", "bold");
        name.setPadding(new Insets(8, 0, 0, 0));
        return new VBox(name, row);
    }
}
