package org.tenthwise.app.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.checklists.drafting.Drafter;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/** What stands in the cells of a workbook, and what is no workbook. Lists are invented. */
class WorkbookTest extends WorkbookWritten {

    /** A whole list as a workbook comes to the same plan as the list as text, letter for letter. */
    @ParameterizedTest
    @EnumSource
    void aWorkbookComesToThePlanOfTheSameListAsText(ExamplePart part) throws IOException {
        Path text = Files.writeString(folder.resolve("list.csv"), part.characteristics());
        List<List<String>> rows = ListFile.rows(text);
        Path book = file(to -> {
            Worksheet sheet = to.newWorksheet("A list");
            for (int row = 0; row < rows.size(); row++) {
                for (int column = 0; column < rows.get(row).size(); column++) {
                    if (!rows.get(row).get(column).isEmpty()) {
                        sheet.value(row, column, rows.get(row).get(column));
                    }
                }
            }
        });
        Drafter drafter = new Drafter(new CalloutReader(part.plan().unit(), Optional.empty()), Words.ENGLISH);
        PlanText head = PlanText.of("").orElseThrow();
        assertEquals(
                drafter.of(head, rows).plan().text(),
                drafter.of(head, ListFile.rows(book)).plan().text());
    }

    /** A cell is what is seen in it. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # held, shown as, read as
        12.5,      0.00,     12.50
        12.5,      0.000,    12.500
        12.5,      General,  12.5
        12,        0,        12
        0.1,       General,  0.1
        -0.05,     0.00,     -0.05
        0,         0.0,      0.0
        # shown otherwise than held: nothing that a requirement or a limit is read from
        12.346,    0.00,     12.346 [0.00]
        0.5,       0%,       0.5 [0%]
        1234.5,    '#,##0.0', '1234.5 [#,##0.0]'
        0.25,      # ?/?,    0.25 [# ?/?]
        # what was typed as 12-5 and became a day
        45792,     d-mmm,    2025-05-15
        """)
    void aFigureIsReadAsItIsShown(double held, String shownAs, String read) throws IOException {
        Path file = sheet(sheet -> {
            sheet.value(1, 0, "7");
            sheet.value(1, 1, held);
            if (!shownAs.equals("General")) {
                sheet.style(1, 1).format(shownAs).set();
            }
        });
        assertEquals(List.of("7", read), ListFile.rows(file).get(1));
    }

    @Test
    void whatIsLeftOfABinaryFractionIsNotRead() throws IOException {
        Path file = sheet(sheet -> sheet.value(1, 1, 0.1 + 0.2));
        assertEquals(List.of("", "0.3"), ListFile.rows(file).get(1));
    }

    @Test
    void aFormulaIsWhatItCameTo() throws IOException {
        Path file = sheet(sheet -> {
            sheet.value(1, 0, "7");
            sheet.formula(1, 1, "6*2");
        });
        assertEquals(2, ListFile.rows(file).size());
    }

    @Test
    void linesKeepTheirPlaceBelowATitleAndBlankOnes() throws IOException {
        Path file = file(book -> {
            Worksheet sheet = book.newWorksheet("S");
            sheet.value(1, 1, "Shaft end");
            sheet.value(3, 0, "No.");
            sheet.value(3, 1, "Requirement");
            sheet.value(6, 0, "1");
            sheet.value(6, 1, "Ø30 H7");
        });
        List<List<String>> rows = ListFile.rows(file);
        assertEquals(7, rows.size());
        assertEquals(List.of("1", "Ø30 H7"), rows.get(6));
        assertEquals(
                7,
                new Drafter(new CalloutReader(Unit.MILLIMETRE, Optional.empty()), Words.ENGLISH)
                        .of(PlanText.of("").orElseThrow(), rows)
                        .lines()
                        .get(0)
                        .place());
    }

    @Test
    void anErrorAndADayAreRefusedWithTheirLine() throws IOException {
        Path file = sheet(sheet -> {
            sheet.value(1, 0, "1");
            sheet.value(1, 1, "#REF!");
            sheet.value(2, 0, LocalDate.of(2026, 3, 1));
            sheet.style(2, 0).format("yyyy-mm-dd").set();
            sheet.value(2, 1, "30 ±0.1");
        });
        List<String> refused = new Drafter(new CalloutReader(Unit.MILLIMETRE, Optional.empty()), Words.ENGLISH)
                .of(PlanText.of("").orElseThrow(), ListFile.rows(file)).refused().stream()
                        .map(line -> line.refused().orElseThrow().key())
                        .toList();
        assertEquals(List.of("draft.damaged", "draft.a-day"), refused);
    }

    @Test
    void whatIsNoWorkbookIsSaidSo() throws IOException {
        Path old = folder.resolve("old.xlsx"); // an encrypted one begins so too
        Files.write(
                old, new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, 1, 0});
        assertEquals("list.no-workbook", refusal(old));
        Path csv = Files.writeString(folder.resolve("text.xlsx"), "No.,Requirement\n1,30 ±0.1\n");
        assertEquals("list.no-workbook", refusal(csv));
        Path empty = folder.resolve("empty.xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(empty))) {
            zip.putNextEntry(new ZipEntry("a.txt"));
        }
        assertEquals("list.no-workbook", refusal(empty));
    }

    /** A file of a megabyte that unpacks to a gigabyte of spaces. */
    @Test
    void aFloodIsRefusedBeforeItIsRead() throws IOException {
        Path flood = folder.resolve("flood.xlsx");
        byte[] spaces = new byte[1 << 20];
        Arrays.fill(spaces, (byte) ' ');
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(flood))) {
            zip.putNextEntry(new ZipEntry("xl/sharedStrings.xml"));
            for (int i = 0; i < 200; i++) {
                zip.write(spaces);
            }
        }
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> assertEquals("list.too-long", refusal(flood)));
    }

    /** No file of this machine may come into a plan by an entity of XML. */
    @Test
    void noEntityIsLookedUp() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "SECRET");
        Path file = sheet(sheet -> {
            sheet.value(1, 0, "1");
            sheet.value(1, 1, "PLACEHOLDER");
        });
        Path changed = folder.resolve("entity.xlsx");
        rewritten(file, changed, text -> text.replace(
                        "?>", "?><!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>")
                .replace("PLACEHOLDER", "&e;"));
        List<String> seen = new ArrayList<>();
        try {
            ListFile.rows(changed).forEach(seen::addAll);
        } catch (Refused e) {
            seen.add(e.why().key());
        }
        assertEquals(-1, String.join(" ", seen).indexOf("SECRET"), seen::toString);
    }

    private static void rewritten(Path from, Path to, UnaryOperator<String> change) throws IOException {
        try (ZipFile zip = new ZipFile(from.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(to))) {
            for (ZipEntry part : Collections.list(zip.entries())) {
                out.putNextEntry(new ZipEntry(part.getName()));
                String text = new String(zip.getInputStream(part).readAllBytes(), StandardCharsets.UTF_8);
                out.write(change.apply(text).getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    /** However a file is damaged, it is read or refused in words, and soon. */
    @Test
    void aDamagedWorkbookIsReadOrRefused() throws IOException {
        byte[] whole = Files.readAllBytes(sheet(sheet -> {
            for (int row = 1; row < 30; row++) {
                sheet.value(row, 0, row);
                sheet.value(row, 1, "30 ±0.1");
            }
        }));
        Random random = new Random(11);
        Path file = folder.resolve("damaged.xlsx");
        for (int i = 0; i < 1_000; i++) {
            byte[] damaged = i % 4 == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            for (int hit = 0; hit < i % 4 && damaged.length > 0; hit++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt();
            }
            Files.write(file, damaged);
            assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
                try {
                    ListFile.rows(file);
                } catch (Refused e) {
                    assertEquals("list.no-workbook", e.why().key());
                }
            });
        }
    }
}
