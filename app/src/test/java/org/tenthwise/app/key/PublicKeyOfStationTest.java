package org.tenthwise.app.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PublicKeyOfStationTest {

    /** RFC 8410, section 10.1: the example of a public key. */
    private static final String OF_THE_STANDARD = "MCowBQYDK2VwAyEAGb9ECWmEzf6FQbrBZ9w7lshQhqowtrbLDFw4rXAxZuE=";

    private static final HexFormat HEX = HexFormat.of();

    @Test
    void theExampleOfTheStandardIsReadFromItsFile() {
        PublicKeyOfStation key = PublicKeyOfStation.ofPem(
                        ("-----BEGIN PUBLIC KEY-----\n" + OF_THE_STANDARD + "\n-----END PUBLIC KEY-----\n")
                                .getBytes(StandardCharsets.US_ASCII))
                .orElseThrow();
        assertEquals(new PublicKeyOfStation(OF_THE_STANDARD), key);
    }

    /** RFC 8032, section 7.1, tests 2 and 3. */
    @Test
    void theSignaturesOfTheStandardAreGood() {
        assertTrue(key("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c")
                .signed(
                        HEX.parseHex("72"),
                        HEX.parseHex("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
                                + "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00")));
        assertTrue(key("fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025")
                .signed(
                        HEX.parseHex("af82"),
                        HEX.parseHex("6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac"
                                + "18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a")));
    }

    /** RFC 8032, section 5.1.7: S is below the order of the group, else the same thing could be signed in two ways. */
    @Test
    void aSignatureWithTheOrderAddedIsNone() throws Exception {
        StationKey key = StationKey.of(StationKey.pair());
        byte[] said = {1, 2, 3};
        byte[] good = key.sign(said);
        BigInteger order = BigInteger.TWO.pow(252).add(new BigInteger("27742317777372353535851937790883648493"));
        byte[] turned = new byte[32];
        for (int i = 0; i < 32; i++) {
            turned[i] = good[63 - i];
        }
        byte[] more = new BigInteger(1, turned).add(order).toByteArray();
        byte[] other = good.clone();
        for (int i = 0; i < 32; i++) {
            other[32 + i] = i < more.length ? more[more.length - 1 - i] : 0;
        }
        assertTrue(key.shown().signed(said, good));
        assertFalse(key.shown().signed(said, other));
    }

    @Test
    void theSameKeyWrittenInAnotherWayIsNone() {
        String loose = OF_THE_STANDARD.substring(0, OF_THE_STANDARD.length() - 2) + "F=";
        assertEquals(Optional.empty(), PublicKeyOfStation.ofText(loose));
        assertEquals(Optional.empty(), PublicKeyOfStation.ofText(OF_THE_STANDARD + "\n"));
        assertEquals(
                Optional.empty(),
                PublicKeyOfStation.ofPem(
                        ("-----BEGIN PUBLIC KEY-----\r\n" + OF_THE_STANDARD + "\r\n-----END PUBLIC KEY-----\r\n")
                                .getBytes(StandardCharsets.US_ASCII)));
        assertThrows(IllegalArgumentException.class, () -> new PublicKeyOfStation("AAAA"));
    }

    @Test
    void theShortFingerprintIsTheBeginningOfTheWholeOne() {
        PublicKeyOfStation key = new PublicKeyOfStation(OF_THE_STANDARD);
        assertEquals(64, key.fingerprint().length());
        assertEquals(key.fingerprint().substring(0, 16), key.shortFingerprint().replace(" ", ""));
        assertEquals(19, key.shortFingerprint().length());
    }

    private static PublicKeyOfStation key(String hex) {
        return new PublicKeyOfStation(
                Base64.getEncoder().encodeToString(HEX.parseHex("302a300506032b6570032100" + hex)));
    }
}
