package org.tenthwise.app.ui.bench;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import org.tenthwise.app.ui.bench.BenchViewModel.Group;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.model.words.Words;

/** What the bench offers: a key for each group, beside it the sums of the one chosen; upright the groups on top. */
final class BenchList extends BorderPane {

    private static final int ACROSS_UPRIGHT = 3;
    private static final double GROUPS = 224;
    private static final double GROUPS_LARGE = 288;
    private static final double BETWEEN = 16;

    private final BenchViewModel model;
    private final PictureFrames pictures;
    private final Words words;
    private final BenchTiles tiles;
    private Arrangement arrangement = Arrangement.LANDSCAPE;

    BenchList(BenchViewModel model, PictureFrames pictures, Words words) {
        this.model = model;
        this.pictures = pictures;
        this.words = words;
        tiles = new BenchTiles(model, pictures, words);
        getStyleClass().addAll("on-sheet", "bench-tiles");
        setCenter(tiles);
    }

    void arrange(Arrangement now) {
        arrangement = now;
        show();
    }

    /** The groups, and the sums of the one in hand. */
    void show() {
        boolean beside = arrangement == Arrangement.LANDSCAPE;
        GridPane groups = groups(beside ? 1 : ACROSS_UPRIGHT);
        groups.setPrefWidth(pictures.look().largeTextProperty().get() ? GROUPS_LARGE : GROUPS);
        setLeft(beside ? groups : null);
        setTop(beside ? null : groups);
        BorderPane.setMargin(tiles, beside ? new Insets(0, 0, 0, BETWEEN) : new Insets(BETWEEN, 0, 0, 0));
        tiles.arrange(arrangement);
    }

    private GridPane groups(int across) {
        List<Key> keys = new ArrayList<>();
        model.groups().forEach(group -> keys.add(key(group)));
        int rows = (keys.size() + across - 1) / across;
        GridPane grid = new GridPane();
        grid.setHgap(ScreenSizes.GAP);
        grid.setVgap(ScreenSizes.GAP);
        grid.getColumnConstraints().setAll(Shares.columns(across));
        grid.getRowConstraints().setAll(Shares.rows(rows));
        for (int i = 0; i < keys.size(); i++) {
            grid.add(keys.get(i), i % across, i / across);
        }
        return grid;
    }

    private Key key(Group group) {
        Key key = new Key(Key.Kind.PLAIN, group.name(), () -> model.open(group.group()));
        key.setId(words.key("bench.group", group.group()).replace('.', '-'));
        key.getStyleClass().add("bench-group");
        key.setMinHeight(ScreenSizes.KEY);
        key.showChosen(group.chosen());
        return key;
    }
}
