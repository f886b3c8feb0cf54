package org.tenthwise.app.command;

import java.time.Clock;
import java.util.List;
import org.tenthwise.app.bundle.Making;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.export.SeriesViewFormat;
import org.tenthwise.app.firstarticle.ReportFormat;
import org.tenthwise.app.store.Stores;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.checklists.rules.PlanReader;
import org.tenthwise.model.words.Words;

/**
 * What the commands work with.
 *
 * @param clock its zone gives the offset that times are kept with
 * @param formats kinds of record that can be asked for
 * @param views kinds of file that views over parts can be asked for
 * @param making the same in the language of any place
 * @param reports kinds of file a first-article report can be asked for
 * @param version of the program, as records name it
 * @param streams for sums in batch; every other command says what it has to say in lines
 */
public record Tools(
        Client client,
        Stores stores,
        Clock clock,
        Words words,
        PlanReader plans,
        List<RecordFormat> formats,
        List<SeriesViewFormat> views,
        Making making,
        List<ReportFormat> reports,
        String version,
        Sums sums,
        Streams streams) {

    public Tools {
        formats = List.copyOf(formats);
        reports = List.copyOf(reports);
        views = List.copyOf(views);
    }
}
