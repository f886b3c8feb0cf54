package org.tenthwise.app.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.checklists.drafting.Drafted;
import org.tenthwise.checklists.drafting.Drafter;
import org.tenthwise.checklists.drafting.ListedRows;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/** What a QIF document becomes as a list, and what is not taken of it. */
class QifListTest {

    @TempDir
    private Path folder;

    private ListedRows read(String document) throws IOException {
        Path file = folder.resolve("plan.qif");
        Files.writeString(file, document);
        return ListFile.read(file);
    }

    private String refused(String document) throws IOException {
        Path file = folder.resolve("plan.qif");
        Files.writeString(file, document);
        return assertThrows(Refused.class, () -> ListFile.read(file)).why().key();
    }

    /** Of the only row. */
    private String refusedRow(String document) throws IOException {
        ListedRows listed = read(document);
        assertEquals(2, listed.rows().size());
        return Optional.ofNullable(listed.refused().get(1))
                .orElseThrow(() -> new AssertionError(listed.rows()))
                .key();
    }

    private static Drafted drafted(ListedRows listed, Unit unit) {
        return new Drafter(new CalloutReader(unit, Optional.empty()), Words.ENGLISH)
                .of(PlanText.of("format = 1\n").orElseThrow(), listed);
    }

    @Test
    void anItemIsALineWithItsNumberLimitsPlaceAndMark() throws IOException {
        ListedRows listed = read(QifPlans.DIAMETER);
        assertEquals(
                List.of("7", "Ø35.018/35.002", "2", "C4", "key", "mm", "", "", "", "Bearing seat"),
                listed.rows().get(1));
        assertTrue(listed.refused().isEmpty());
        String plan = drafted(listed, Unit.MILLIMETRE).plan().text();
        assertTrue(plan.contains("requirement = \"Ø35.018/35.002\""), plan);
        assertTrue(plan.contains("balloon = \"7\""), plan);
        assertTrue(plan.contains("designator = \"key\""), plan);
    }

    @Test
    void deviationsAreAddedToTheirTarget() throws IOException {
        ListedRows listed = read(QifPlans.DIAMETER
                .replace("<MaxValue decimalPlaces=\"3\">35.018", "<MaxValue>0.018")
                .replace("<MinValue decimalPlaces=\"3\">35.002", "<MinValue>-.002")
                .replace("<DefinedAsLimit>true", "<DefinedAsLimit>false"));
        assertEquals("Ø35.028/35.008", listed.rows().get(1).get(1));
    }

    @Test
    void noughtsThatAWriterDroppedAreWrittenAgain() throws IOException {
        ListedRows listed = read(QifPlans.DIAMETER.replace("35.002<", "35.01<").replace("35.018<", "35.02<"));
        assertEquals("Ø35.020/35.010", listed.rows().get(1).get(1));
    }

    @Test
    void theWordsOfTheDocumentStandWhereTheySayTheSameLimitsAndNowhereElse() throws IOException {
        String named = QifPlans.DIAMETER.replace(
                "<Name>Bearing seat</Name>", "<Description>Ø35.01 ±.008</Description><Name>Bearing seat</Name>");
        assertEquals("Ø35.01 ±.008", read(named).rows().get(1).get(1));
        ListedRows other = read(named.replace("±.008", "±.08"));
        assertEquals("Ø35.018/35.002", other.rows().get(1).get(1));
        assertTrue(other.rows().get(1).get(9).contains("Ø35.01 ±.08"));
    }

    @Test
    void wordsThatHaveASizeAloneStandWithTheLimitsBesideThem() throws IOException {
        ListedRows listed =
                read(QifPlans.DIAMETER.replace("<Name>Bearing seat</Name>", "<Description>Ø35.01</Description>"));
        assertEquals(
                List.of("7", "Ø35.01", "2", "C4", "key", "mm", "35.002", "35.018", "", ""),
                listed.rows().get(1));
        String plan = drafted(listed, Unit.MILLIMETRE).plan().text();
        assertTrue(plan.contains("lower = 35.002"), plan);
        assertTrue(plan.contains("upper = 35.018"), plan);
    }

    @ParameterizedTest
    @CsvSource({
        "0.001, mm, mm",
        "0.0254, inch, in",
        "0.02540, anything, in",
        "0.0010, in, mm",
    })
    void theUnitIsWhatTheFactorSaysAndNotTheName(String factor, String name, String unit) throws IOException {
        ListedRows listed = read(QifPlans.DIAMETER
                .replace("<UnitName>mm", "<UnitName>" + name)
                .replace("<Factor>0.001<", "<Factor>" + factor + "<"));
        assertEquals(unit, listed.rows().get(1).get(5));
    }

    @Test
    void aDocumentInInchesIsRefusedLineByLineOnADrawingInMillimetres() throws IOException {
        ListedRows listed = read(QifPlans.DIAMETER.replace("<Factor>0.001<", "<Factor>0.0254<"));
        assertEquals(
                "draft.unit",
                drafted(listed, Unit.MILLIMETRE)
                        .refused()
                        .get(0)
                        .refused()
                        .orElseThrow()
                        .key());
        assertTrue(drafted(listed, Unit.INCH).refused().isEmpty());
    }

    @Test
    void whatDoesNotSayItsUnitIsNotTaken() throws IOException {
        assertEquals("list.qif.no-units", refused(QifPlans.DIAMETER.replaceAll("(?s)<FileUnits>.*</FileUnits>", "")));
        assertEquals("list.qif.no-units", refused(QifPlans.DIAMETER.replaceAll("(?s)<LinearUnit>.*</LinearUnit>", "")));
        assertEquals("list.qif.units", refused(QifPlans.DIAMETER.replace("<Factor>0.001<", "<Factor>1<")));
        assertEquals(
                "list.qif.units",
                refused(QifPlans.DIAMETER.replaceAll("(?s)<UnitConversion><Factor>0.001.*?</UnitConversion>", "")));
        assertEquals(
                "list.qif.units",
                refusedRow(QifPlans.DIAMETER.replace("<MaxValue ", "<MaxValue linearUnit=\"furlong\" ")));
    }

    @Test
    void anAngleInRadiansIsRefused() throws IOException {
        String angle = QifPlans.DIAMETER.replace("Diameter", "Angle").replace("35.0", "45.0");
        assertEquals("45.018°/45.002°", read(angle).rows().get(1).get(1));
        assertEquals("list.qif.angles", refusedRow(angle.replace("0.0174532925199433", "1")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"SurfaceProfile", "WeldFillet", "Chord", "OfNoStandard"})
    void aKindThatNoCheckIsKnownForIsARefusedLine(String kind) throws IOException {
        ListedRows listed = read(QifPlans.DIAMETER.replace("Diameter", kind));
        assertEquals("list.qif.kind", listed.refused().get(1).key());
        Drafted drafted = drafted(listed, Unit.MILLIMETRE);
        assertEquals("7", drafted.refused().get(0).number());
        assertTrue(drafted.plan().text().contains("refused = "));
        assertTrue(drafted.plan().text().contains(kind), drafted.plan().text());
    }

    @Test
    void severalAlikeWithOneNumberAreOneLineWithTheirCount() throws IOException {
        ListedRows listed = read(QifPlans.TWO_ALIKE);
        assertEquals(2, listed.rows().size());
        assertEquals("7", listed.rows().get(1).get(0));
        assertEquals("2", listed.rows().get(1).get(8));
    }

    @Test
    void severalAlikeWithNumbersOfTheirOwnAreALineEach() throws IOException {
        ListedRows listed = read(QifPlans.TWO_ALIKE.replace(
                "<CharacteristicDesignator><Designator>7</Designator>" + "</CharacteristicDesignator><Tolerance>",
                "<Tolerance>"));
        assertEquals(
                List.of("7-1", "7-2"),
                listed.rows().stream().skip(1).map(row -> row.get(0)).toList());
    }

    @Test
    void whatRefersToNothingOrHasNoLimitsIsARefusedLine() throws IOException {
        assertEquals(
                "list.qif.refers-to-nothing",
                refusedRow(QifPlans.DIAMETER.replace("<CharacteristicNominalId>3", "<CharacteristicNominalId>33")));
        assertEquals(
                "list.qif.no-limits", refusedRow(QifPlans.DIAMETER.replaceAll("(?s)<Tolerance>.*</Tolerance>", "")));
        assertEquals(
                "list.qif.not-toleranced",
                refusedRow(QifPlans.DIAMETER.replaceAll(
                        "(?s)<Tolerance>.*</Tolerance>", "<NonTolerance>BASIC</NonTolerance>")));
        assertEquals("list.qif.no-figure", refusedRow(QifPlans.DIAMETER.replace("35.018<", "3.5018E1<")));
        assertEquals(
                "list.qif.no-target",
                refusedRow(QifPlans.DIAMETER
                        .replace("<DefinedAsLimit>true", "<DefinedAsLimit>false")
                        .replaceAll("<TargetValue.*</TargetValue>", "")));
    }

    @Test
    void whatIsNoSoundDocumentIsNotTaken() throws IOException {
        assertEquals("list.qif.no-qif", refused("<QIFDocument versionQIF='3.0.0'/>"));
        assertEquals(
                "list.qif.no-qif", refused(QifPlans.DIAMETER.replace("versionQIF=\"3.0.0\"", "versionQIF=\"2.1\"")));
        assertEquals("list.qif.id-twice", refused(QifPlans.DIAMETER.replace("id=\"3\"", "id=\"2\"")));
        assertEquals(
                "list.qif.count",
                refused(QifPlans.DIAMETER.replace("<CharacteristicItems n=\"1\"", "<CharacteristicItems n=\"2\"")));
        assertEquals(
                "list.qif.no-items",
                refused(QifPlans.DIAMETER.replaceAll("(?s)<CharacteristicItems.*</CharacteristicItems>", "")));
        assertEquals("list.xml.malformed", refused(QifPlans.DIAMETER.substring(0, 900)));
        assertEquals("list.xml.malformed", refused(QifPlans.DIAMETER + "<more/>"));
        assertEquals("list.xml.malformed", refused(""));
        assertEquals("list.xml.malformed", refused("No., Requirement\n1, Ø20 H7\n"));
    }

    /** CWE-611, CWE-776: nothing is read but the file itself, and nothing in it grows. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE QIFDocument>",
                "<!DOCTYPE QIFDocument SYSTEM \"http://127.0.0.1:9/x.dtd\">",
                "<!DOCTYPE QIFDocument [<!ENTITY a \"35\"><!ENTITY b \"&a;&a;&a;&a;\">]>",
                "<!DOCTYPE QIFDocument [<!ENTITY a SYSTEM \"SECRET\">]>"
            })
    void aDocumentTypeOrAnEntityIsNotTaken(String type) throws IOException {
        Path secret = folder.resolve("secret.txt");
        Files.writeString(secret, "35.018");
        String document = QifPlans.DIAMETER
                .replace("<QIFDocument", type.replace("SECRET", secret.toUri().toString()) + "<QIFDocument")
                .replace("35.018", type.contains("ENTITY") ? "&a;" : "35.018");
        assertEquals("list.xml.document-type", refused(document));
    }

    @Test
    void whatIsNestedWithoutEndIsNotTaken() throws IOException {
        String deep = "<a>".repeat(100_000) + "</a>".repeat(100_000);
        assertEquals("list.xml.too-deep", refused(QifPlans.DIAMETER.replace("<FileUnits>", deep + "<FileUnits>")));
    }

    @Test
    void resultsTellNothingOfLimitsAndAreNotLookedAt() throws IOException {
        String deep = "<Results>" + "<a>".repeat(1_000) + "</a>".repeat(1_000) + "</Results></QIFDocument>";
        assertEquals(
                read(QifPlans.DIAMETER).rows(),
                read(QifPlans.DIAMETER.replace("</QIFDocument>", deep)).rows());
    }

    /** The seed is fixed: what went wrong once goes wrong again. */
    @Test
    void whateverIsDamagedIsReadOrRefusedWithASentence() throws IOException {
        Random random = new Random(39952);
        int refused = 0;
        for (int i = 0; i < 1_500; i++) {
            StringBuilder text = new StringBuilder(QifPlans.TWO_ALIKE);
            for (int slips = random.nextInt(4); slips >= 0; slips--) {
                int at = random.nextInt(text.length() - 12);
                int length = random.nextInt(12);
                switch (random.nextInt(3)) {
                    case 0 -> text.delete(at, at + length);
                    case 1 -> text.insert(at, text.substring(at, at + length));
                    default -> text.setCharAt(at, (char) (' ' + random.nextInt(95)));
                }
            }
            try {
                Drafted drafted = drafted(read(text.toString()), Unit.MILLIMETRE);
                refused += drafted.refused().size();
                assertFalse(drafted.lines().isEmpty());
            } catch (Refused e) {
                assertFalse(Words.ENGLISH.say(e.why()).isBlank());
                refused++;
            }
        }
        assertTrue(refused > 500, "hardly anything was damaged");
    }

    @Test
    void aDocumentIsOfferedAmongTheLists() throws IOException {
        Files.writeString(folder.resolve("a.QIF"), QifPlans.DIAMETER);
        Files.writeString(folder.resolve("b.xml"), QifPlans.DIAMETER);
        assertEquals(List.of("a.QIF"), ListFile.in(folder));
        assertFalse(read(QifPlans.DIAMETER).rows().isEmpty());
    }
}
