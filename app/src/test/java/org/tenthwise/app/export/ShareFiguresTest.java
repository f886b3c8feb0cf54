package org.tenthwise.app.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareFiguresTest {

    @ParameterizedTest
    @CsvSource({
        "3.3333333333333333333, 3.33",
        "-66.666666666666666667, -66.67",
        "100, 100",
        "-100.00, -100",
        "0.0000, 0",
        "99.9999, 99.99",
        "-99.9951, -99.99",
        "100.0001, 100.01",
        "-100.0001, -100.01",
        "14185.714285714285714, 14185.71"
    })
    void aShareIsRoundedButNeverOntoALimitItDoesNotLieOn(String share, String said) {
        assertEquals(said, ShareFigures.percent(new BigDecimal(share)));
    }
}
