package org.tenthwise.app.session;

import java.time.LocalDate;
import java.util.List;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;

/**
 * A document with a table of figures, which proves several checks.
 *
 * @param number not blank
 * @param dated the day that stands on it
 * @param by who says so
 */
public record FiguresReport(String number, LocalDate dated, String by) {

    /** What it is of one of them. */
    Document giving(List<Written> figures) {
        return new Document(number.strip(), dated, Document.Says.FIGURES, by.strip(), figures);
    }
}
