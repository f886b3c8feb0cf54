package org.tenthwise.app.export.qif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tenthwise.app.export.CalibrationRecordTest;

/** Devices under their certificates: QIF 3.0, QIFMeasurementResources.xsd, CalibrationType. */
class CalibrationQifTest {

    private static final String DEVICE = "//ManualMeasurementDevice";

    private final QifFile file = QifFile.of(CalibrationRecordTest.evidence());

    @Test
    void theDocumentIsValid() {
        assertEquals(List.of(), QifSchema.faults(file.text()));
    }

    @Test
    void aDeviceIsOverWithItsDueDay() {
        assertEquals(List.of("BG-1", "R-20", "MC-1"), file.all(DEVICE + "/Name"));
        assertEquals(
                List.of("2026-11-25T23:59:59", "2026-11-24T23:59:59"),
                file.all(DEVICE + "/Calibrations/Calibration/ExpirationDate"));
        assertEquals("1", file.at(DEVICE + "[Name='R-20']/Calibrations/@n"));
        assertEquals("0", file.at("count(" + DEVICE + "[Name='MC-1']/Calibrations)"));
    }

    @Test
    void theNumberOfItsCertificateStandsWithIt() {
        assertEquals("K-2", file.at(DEVICE + "[Name='R-20']/Attributes/AttributeStr[@name='certificate']/@value"));
    }
}
