package org.tenthwise.app.ui.theme;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.text.Text;

/**
 * A line of parts, of which those that matter most come first: as many of them as there is room for in one line. What
 * is asked to be whole wraps, and so does the first part where it is too long by itself.
 */
public final class FittedLine extends Label {

    private List<String> parts = List.of();
    private String between = " ";
    private boolean whole = true;

    public FittedLine(String... styles) {
        getStyleClass().addAll(styles);
        setWrapText(true);
        setMinHeight(USE_PREF_SIZE);
        setMaxWidth(Double.MAX_VALUE);
        visibleProperty().bind(textProperty().isNotEmpty());
        managedProperty().bind(visibleProperty());
        widthProperty().subscribe(width -> fit());
        fontProperty().subscribe(font -> fit());
    }

    /**
     * @param parts those that matter most first
     * @param between stands between two of them
     * @param whole whether all of them are to be seen, on several lines if need be
     */
    public void show(List<String> parts, String between, boolean whole) {
        this.parts = List.copyOf(parts);
        this.between = between;
        this.whole = whole;
        fit();
    }

    /** How much room the first {@code number} parts take in one line. */
    public double widthOf(int number) {
        Text line = new Text(first(number));
        line.setFont(getFont());
        return Math.ceil(line.getLayoutBounds().getWidth()) + 1;
    }

    private void fit() {
        int number = parts.size();
        while (!whole && number > 1 && widthOf(number) > getWidth()) {
            number--;
        }
        setText(first(number));
    }

    private String first(int number) {
        return String.join(between, parts.subList(0, Math.min(number, parts.size())));
    }
}
