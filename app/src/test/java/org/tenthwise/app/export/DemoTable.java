package org.tenthwise.app.export;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.checklists.rules.ReadingsFile;

/** The table of a run of the invented demo part, read back. */
final class DemoTable {

    static final DemoPart PART = DemoPart.SCREW_CARRIER;

    static final ReadingsFile SAMPLE = Records.passing(PART);

    static BigDecimal decimal(CSVRecord row, String column) {
        return new BigDecimal(row.get(column));
    }

    static List<CSVRecord> rows(Evidence evidence) {
        return ReadBack.rows(evidence);
    }

    static String text(Evidence evidence) {
        return ReadBack.text(new CsvRecord(), evidence);
    }

    private DemoTable() {}
}
