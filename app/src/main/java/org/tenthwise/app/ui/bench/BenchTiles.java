package org.tenthwise.app.ui.bench;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.tenthwise.app.bench.BenchSign;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.ui.bench.BenchViewModel.Tile;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.words.Words;

/** The sums of one group, a large key each with its sign, its name and what it is for. */
final class BenchTiles extends GridPane {

    /** Fewer leave room, so that a key is as large in every group. */
    private static final int USUAL_TILES = 6;

    private final BenchViewModel model;
    private final PictureFrames pictures;
    private final Words words;

    BenchTiles(BenchViewModel model, PictureFrames pictures, Words words) {
        this.model = model;
        this.pictures = pictures;
        this.words = words;
        setHgap(12);
        setVgap(12);
    }

    void arrange(Arrangement arrangement) {
        int across = arrangement == Arrangement.LANDSCAPE ? 3 : 2;
        List<Tile> tiles = model.tiles();
        int rows = (Math.max(USUAL_TILES, tiles.size()) + across - 1) / across;
        getChildren().clear();
        getColumnConstraints().setAll(Shares.columns(across));
        getRowConstraints().setAll(Shares.rows(rows));
        for (int i = 0; i < tiles.size(); i++) {
            add(key(tiles.get(i)), i % across, i / across);
        }
    }

    private Key key(Tile tile) {
        PictureView sign = pictures.framed(new BenchSign(tile.kind(), tile.name()), 150, 92, Role.SHEET);
        VBox.setVgrow(sign, Priority.ALWAYS);
        sign.setMaxHeight(130);
        Label name = new Label(tile.name());
        name.getStyleClass().addAll("key-word", "bench-name");
        Label line = new Label(tile.line());
        line.getStyleClass().add("key-line");
        line.setWrapText(true);
        name.setWrapText(true);
        name.setMinHeight(USE_PREF_SIZE);
        line.setMinHeight(USE_PREF_SIZE);
        VBox content = new VBox(8, sign, name, line);
        content.setAlignment(Pos.CENTER);
        Key key = new Key(Key.Kind.PLAIN, content, () -> model.choose(tile.kind()));
        key.setId(words.key("bench", tile.kind()).replace('.', '-'));
        key.accessibleTextProperty().bind(Bindings.createStringBinding(() -> words.spoken(tile.name(), tile.line())));
        key.showChosen(tile.fitting());
        return key;
    }
}
