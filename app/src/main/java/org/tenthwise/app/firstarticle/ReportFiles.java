package org.tenthwise.app.firstarticle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tenthwise.app.export.Exporter;
import org.tenthwise.app.export.RecordName;

/** The files of a report: their name, and their content in each of the formats there are. */
public final class ReportFiles {

    private final List<ReportFormat> formats;

    public ReportFiles(List<ReportFormat> formats) {
        this.formats = List.copyOf(formats);
    }

    /** What the formats are asked for by. */
    public List<String> names() {
        return formats.stream().map(ReportFormat::extension).toList();
    }

    /** The first of the names no format has. */
    public Optional<String> unknown(List<String> names) {
        return names.stream().filter(name -> !names().contains(name)).findFirst();
    }

    /** The identifier to be read, and the place in the ledger it stands at. */
    public String name(ArticleReport report) {
        return RecordName.plain(report.article().asked().identifier()) + "-" + report.stands();
    }

    /** @param named formats; all of them where none is named */
    public Map<String, Exporter.Content> of(ArticleReport report, List<String> named) {
        Map<String, Exporter.Content> files = new LinkedHashMap<>();
        formats.stream()
                .filter(format -> named.isEmpty() || named.contains(format.extension()))
                .forEach(format -> files.put(format.extension(), out -> format.write(report, out)));
        return files;
    }
}
