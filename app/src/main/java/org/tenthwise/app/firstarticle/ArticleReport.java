package org.tenthwise.app.firstarticle;

import java.util.List;
import java.util.Optional;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.model.firstarticle.FirstArticle;

/**
 * All that the files of a report are written from. The same report of the same entries gives the same files.
 *
 * @param kept where it stands in the ledger, with its signatures; absent for one that is looked at before it is drawn
 *     up
 * @param movedOn runs in which something was entered since it was drawn up, which it does not show
 * @param version of the tool that writes the files
 */
public record ArticleReport(FirstArticle article, Optional<KeptReport> kept, List<String> movedOn, String version) {

    public ArticleReport {
        movedOn = List.copyOf(movedOn);
    }

    /** The tool with its version. */
    public String tool() {
        return Evidence.tool(version);
    }

    /** The place in the ledger of the last entry that made it what it is; zero before it is drawn up. */
    public long stands() {
        return kept.map(report -> report.signed().stream()
                        .reduce((earlier, later) -> later)
                        .orElse(report.drawnUp())
                        .seq())
                .orElse(0L);
    }
}
