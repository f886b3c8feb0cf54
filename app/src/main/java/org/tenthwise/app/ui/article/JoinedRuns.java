package org.tenthwise.app.ui.article;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.tenthwise.app.ui.theme.Texts;

/** The part and the runs a report is of, over what is asked for it. */
public final class JoinedRuns extends VBox {

    public JoinedRuns(AskReportViewModel model) {
        Label joined = Texts.label("", "body", "bold");
        joined.setWrapText(true);
        joined.textProperty().bind(model.joinedProperty());
        getChildren().add(joined);
    }
}
