package org.tenthwise.app.export.qif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tenthwise.app.export.Records;
import org.tenthwise.checklists.catalogue.ExamplePart;

/** A check that finds nothing proves nothing: whatever is spoilt in a sound document has to be found. */
class QifMutantsTest {

    private static final String SOUND = QifFile.of(
                    Records.whole(ExamplePart.WINCH_SHAFT.plan(), ExamplePart.WINCH_SHAFT.failingReadings()))
            .text();

    @Test
    void whatTheyAreMadeOfIsSound() {
        assertEquals(List.of(), new QifFile(SOUND).faults());
    }

    /** By the schemas, and where these let it through, by what is asked besides. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
            <QPId>                                   | <QPId>urn:uuid:
            >232.08</Value>                          | >2.3208E2</Value>
            >232.08</Value>                          | >232,08</Value>
            versionQIF="3.0.0"                       | versionQIF="3.0"
            <CharacteristicStatusEnum>PASS           | <CharacteristicStatusEnum>GOOD
            <CharacteristicStatusEnum>NOT_ANALYZED   | <CharacteristicStatusEnum>NOT_MEASURED
            <InspectionStatusEnum>FAIL               | <InspectionStatusEnum>NOT_ANALYZED
            <DefinedAsLimit>true</DefinedAsLimit>    |
            <MaxValue decimalPlaces="1">232.3        | <MinValue>1</MinValue><MaxValue decimalPlaces="1">232.3
            <FormalStandardId>1</FormalStandardId>   |
            <CharacteristicItemId>                   | <CharacteristicItemId>9
            <ActualComponentId>                      | <ActualComponentId>9
            <NotedEventIds n="1">                    | <NotedEventIds n="2">
            <CharacteristicItems n="                 | <CharacteristicItems n="1
            <MeasurementDevices n="                  | <MeasurementDevices n="1
            idMax="                                  | idMax="1
            meanError="0"                            |
            <LinearUnit>                             | <LinearUnit><Nothing/>
            unitName="HRC"                           | unitName="HRX"
            """)
    void aSpoiltDocumentIsFound(String was, String made) {
        String spoilt = SOUND.replaceFirst(Pattern.quote(was), made == null ? "" : made);
        assertNotEquals(SOUND, spoilt, "nothing was spoilt");
        assertFalse(new QifFile(spoilt).faults().isEmpty());
    }

    @Test
    void twoElementsWithOneIdAreFound() {
        String spoilt = SOUND.replaceFirst("<Part id=\"\\d+", "<Part id=\"1");
        assertNotEquals(SOUND, spoilt);
        assertFalse(new QifFile(spoilt).faults().isEmpty());
    }

    /** The schemas take such a document, and every length in it would be in metres. */
    @Test
    void aDocumentWithoutUnitsIsFound() {
        String spoilt = SOUND.replaceFirst("(?s)<PrimaryUnits>.*</PrimaryUnits>", "<PrimaryUnits/>");
        assertNotEquals(SOUND, spoilt);
        assertEquals(List.of("no units"), new QifFile(spoilt).faults());
    }
}
