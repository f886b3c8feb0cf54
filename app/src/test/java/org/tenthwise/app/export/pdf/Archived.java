package org.tenthwise.app.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Judges archival files by veraPDF, which knows every rule of ISO 19005-3 that a program can judge. */
public final class Archived {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Archived() {}

    public static void check(byte[] pdf) throws Exception {
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFA_3_B);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_3_B, false)) {
            ValidationResult result = validator.validate(parser);
            assertEquals(
                    List.of(),
                    result.getTestAssertions().stream()
                            .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                            .map(assertion -> assertion.getRuleId().getClause() + " " + assertion.getMessage())
                            .toList());
            assertTrue(result.isCompliant());
            assertTrue(result.getTotalAssertions() > 500, "hardly anything was judged");
        }
    }
}
