package org.tenthwise.app.ui.workplace;

import java.util.List;
import java.util.Optional;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.theme.Look;
import org.tenthwise.app.ui.theme.ScreenSizes;

/**
 * Where something is measured or worked out, in three columns: the list of what there is to do, the sheet of what is in
 * hand, and what lies under the hand. Upright the sheet lies over the list and the hand. Where there is no room for a
 * list, it is a strip over the sheet.
 */
public final class Workplace extends BorderPane {

    private final Region list;
    private final Region sheet;
    private final Region hand;
    private final List<Region> keys;
    private Runnable widen = () -> {};

    /** @param keys one or two groups of lesser keys, each in a row */
    public Workplace(Region list, Region sheet, Region hand, List<Region> keys) {
        this.list = list;
        this.sheet = sheet;
        this.hand = hand;
        this.keys = List.copyOf(keys);
        for (Region column : List.of(list, sheet, hand)) {
            VBox.setVgrow(column, Priority.ALWAYS);
        }
        keys.forEach(group -> HBox.setHgrow(group, Priority.ALWAYS));
        widthProperty().subscribe(width -> widen.run());
    }

    public void arrange(Arrangement arrangement, Look look) {
        getChildren().clear();
        widen = () -> {};
        VBox left = new VBox(list);
        left.getStyleClass().add("list-column");
        wide(hand, ScreenSizes.hand(look));
        if (arrangement == Arrangement.PORTRAIT) {
            upright(left, sheet);
        } else {
            wide(left, ScreenSizes.list(look, getWidth()));
            widen = () -> wide(left, ScreenSizes.list(look, getWidth()));
            left.getStyleClass().add("lined-right");
            setLeft(left);
            across(look.largeTextProperty().get() || look.glovesProperty().get(), sheet);
        }
    }

    /**
     * A strip over the sheet instead of the list.
     *
     * @param beside what stands beside the hand where the sheet lies over it
     */
    public void arrangeStrip(Region strip, Arrangement arrangement, Look look, Optional<Region> beside) {
        getChildren().clear();
        widen = () -> {};
        strip.setMinHeight(USE_PREF_SIZE);
        VBox over = new VBox(strip, sheet);
        VBox.setVgrow(over, Priority.ALWAYS);
        wide(hand, ScreenSizes.hand(look));
        if (arrangement == Arrangement.PORTRAIT) {
            VBox left = new VBox();
            left.getStyleClass().add("list-column");
            beside.ifPresent(words -> {
                VBox.setVgrow(words, Priority.ALWAYS);
                left.getChildren().add(words);
            });
            upright(left, over);
        } else {
            across(true, over);
        }
    }

    /** @param roomy whether keys need more room than there is under the hand, so that all stand under the sheet */
    private void across(boolean roomy, Region middle) {
        VBox right = new VBox(hand);
        right.getStyleClass().add("lined-left");
        HBox under = row(keys.subList(0, roomy ? keys.size() : 1));
        if (under.getChildren().size() < keys.size()) {
            HBox below = row(keys.subList(1, keys.size()));
            below.getStyleClass().add("keys-under-hand");
            right.getChildren().add(below);
        }
        setCenter(new VBox(middle, under));
        setRight(right);
    }

    private void upright(VBox left, Region over) {
        VBox below = new VBox(ScreenSizes.GAP);
        below.getChildren().addAll(keys);
        below.getStyleClass().add("keys-row");
        left.getChildren().add(below);
        HBox.setHgrow(left, Priority.ALWAYS);
        left.setMinWidth(0);
        HBox lower = new HBox(left, hand);
        lower.getStyleClass().add("lined-above");
        setCenter(over);
        setBottom(lower);
    }

    private static HBox row(List<Region> keys) {
        HBox row = new HBox(ScreenSizes.GAP);
        row.getChildren().addAll(keys);
        row.getStyleClass().add("keys-row");
        return row;
    }

    private static void wide(Region region, double width) {
        region.setMinWidth(width);
        region.setPrefWidth(width);
        region.setMaxWidth(width);
    }
}
