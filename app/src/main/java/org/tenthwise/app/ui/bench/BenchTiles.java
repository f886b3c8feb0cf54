package org.tenthwise.app.ui.bench;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import org.tenthwise.app.bench.BenchSign;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.ui.bench.BenchViewModel.Tile;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.words.Words;

/** The sums of the bench, a large key each with its sign, its name and what it is for. */
final class BenchTiles extends GridPane {

    private final BenchViewModel model;
    private final PictureFrames pictures;
    private final Words words;

    BenchTiles(BenchViewModel model, PictureFrames pictures, Words words) {
        this.model = model;
        this.pictures = pictures;
        this.words = words;
        getStyleClass().addAll("on-sheet", "bench-tiles");
        setHgap(12);
        setVgap(12);
    }

    void arrange(Arrangement arrangement) {
        int across = arrangement == Arrangement.LANDSCAPE ? 4 : 2;
        List<Tile> tiles = model.tiles();
        getChildren().clear();
        getColumnConstraints().clear();
        getRowConstraints().clear();
        for (int i = 0; i < across; i++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setPercentWidth(100.0 / across);
            getColumnConstraints().add(width);
        }
        for (int i = 0; i < tiles.size() / across; i++) {
            RowConstraints height = new RowConstraints();
            height.setPercentHeight(100.0 * across / tiles.size());
            height.setVgrow(Priority.ALWAYS);
            getRowConstraints().add(height);
        }
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
