package org.tenthwise.model.run;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.words.Refused;

/** What happens to a first-article report. It stands among the entries of the shop: a report joins several runs. */
public sealed interface ReportEvent extends Event permits ReportEvent.ReportDrawnUp, ReportEvent.ReportSigned {

    /**
     * A first-article report was drawn up of runs as they stood then: it belongs to the shop. One with the same
     * identifier later takes its place, and what was signed of it before holds no more.
     */
    record ReportDrawnUp(ReportAsked asked, List<JoinedRun> runs) implements ReportEvent {

        public ReportDrawnUp {
            runs = List.copyOf(runs);
            if (runs.isEmpty()) {
                throw new Refused("model.report.no-runs");
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.reportDrawnUp(this);
        }
    }

    /**
     * A first-article report was signed as it was drawn up last.
     *
     * @param report its identifier
     */
    record ReportSigned(String report, ReportRole role, String signedBy) implements ReportEvent {

        public ReportSigned {
            if (report.isBlank() || signedBy.isBlank()) {
                throw new Refused("model.report.signature");
            }
        }

        @Override
        public Optional<String> names() {
            return Optional.of(signedBy);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.reportSigned(this);
        }
    }
}
