package org.tenthwise.app.ui.run;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.ui.picture.PictureView;
import org.tenthwise.app.ui.run.RunScreenState.Finished;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.Texts;

/** What the check before came to, with the shape of its verdict. Nothing of it can be pressed. */
final class FinishedBand extends HBox {

    private static final double MARK = 22;

    private final PictureView mark;
    private final Label words = Texts.label("", "body", "second");

    FinishedBand(PictureFrames pictures) {
        super(10);
        mark = pictures.empty(MARK, MARK);
        mark.lookSmall(1, Role.SHEET);
        words.setId("finished");
        HBox.setHgrow(words, Priority.ALWAYS);
        setAlignment(Pos.CENTER_LEFT);
        setMouseTransparent(true);
        setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(mark, words);
        show(Optional.empty());
    }

    void show(Optional<Finished> finished) {
        setVisible(finished.isPresent());
        setManaged(finished.isPresent());
        words.setText(finished.map(Finished::words).orElse(""));
        finished.ifPresent(shown -> mark.show(new VerdictMark(shown.standing(), "")));
    }
}
