package org.tenthwise.app.store;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChainTest {

    /** SHA-256 of "abc" is the one-block worked example of FIPS 180-2, B.1; the empty one is in NIST's test vectors. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # previous, body, hash
        '',  abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad
        a,   bc,  ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad
        ab,  c,   ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad
        '',  '',  e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855
        """)
    void aHashIsSha256OverThePreviousOneAndTheBody(String previous, String body, String hash) {
        assertEquals(hash, Chain.hash(previous, body.getBytes(US_ASCII)));
    }

    @ParameterizedTest
    @CsvSource("'Tenthwise ledger, first page'")
    void anEmptyLedgerStartsFromTheHashOfItsOwnName(String name) {
        assertEquals(new Head(0, Chain.hash("", name.getBytes(US_ASCII))), Head.OF_NOTHING);
    }
}
