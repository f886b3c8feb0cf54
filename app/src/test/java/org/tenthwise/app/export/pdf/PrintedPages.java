package org.tenthwise.app.export.pdf;

import java.util.List;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.Records;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Picture;
import org.tenthwise.app.picture.RecordingPen;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.model.words.Words;

/** The pages of a record, drawn by a pen that keeps what it draws. */
final class PrintedPages {

    private record Printed(Page page) implements Picture {

        @Override
        public void draw(Drawing drawing) {
            page.draw(drawing);
        }

        @Override
        public String spoken() {
            return "";
        }
    }

    private PrintedPages() {}

    static List<RecordingPen> of(Words words, Evidence evidence) {
        return of(words, Paper.A4, evidence);
    }

    static List<RecordingPen> of(Words words, Paper paper, Evidence evidence) {
        return new RecordPages(
                        words,
                        paper,
                        new TextMetrics(Words.ENGLISH),
                        Records.DATA.stream().filter(RecordFormat::isWhole).toList())
                .of(evidence).stream()
                        .map(page -> RecordingPen.of(new Printed(page), paper.frame()))
                        .toList();
    }

    /** All that stands on a page, with a space between. */
    static String text(RecordingPen pen) {
        return String.join(" ", pen.texts());
    }
}
