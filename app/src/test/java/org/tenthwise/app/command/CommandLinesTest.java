package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.checklists.catalogue.ExamplePart;
import org.tenthwise.model.words.Message;

class CommandLinesTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            chekc                              | There is no command "chekc". Usage: tenthwise [--store DB] [--plans DIR], or tenthwise with one of: demo, check, compare, draft, walk, export, first-article, history, matters, verify, key, sign, import, backup, restore, salvage, compute, callout, reference.
            --sotre=x.db                       | Unknown option: '--sotre=x.db'. Usage: tenthwise [--store DB] [--plans DIR], or tenthwise with one of: demo, check, compare, draft, walk, export, first-article, history, matters, verify, key, sign, import, backup, restore, salvage, compute, callout, reference.
            check                              | Missing required parameter: 'PLAN'. Usage: tenthwise check PLAN...
            demo here                          | Unmatched argument at index 1: 'here'. Usage: tenthwise demo [--out DIR]
            verify                             | Missing required parameter: 'PATH'. Usage: tenthwise verify PATH [--head HASH] [--trust KEY]
            walk LG-2207 --store s --out o     | Missing required option: '--readings=FILE'. Usage: tenthwise walk PLAN --readings FILE --store DB --out DIR
            export --store s --run r --as csv  | Missing required option: '--out=DIR'. Usage: tenthwise export --store DB --run ID --as pdf,csv,json,qif,bundle --out DIR tenthwise export --store DB [--part P] [--from DAY] [--to DAY] --as bundle --out DIR
            export --store s                   | Missing required options: '--as=FORMAT', '--out=DIR'. Usage: tenthwise export --store DB --run ID --as pdf,csv,json,qif,bundle --out DIR tenthwise export --store DB [--part P] [--from DAY] [--to DAY] --as bundle --out DIR
            export --store s --run r --as --out o | Expected parameter for option '--as' but found '--out'. Usage: tenthwise export --store DB --run ID --as pdf,csv,json,qif,bundle --out DIR tenthwise export --store DB [--part P] [--from DAY] [--to DAY] --as bundle --out DIR
            restore                            | Missing required options and parameters: '--store=DB', 'FILE'. Usage: tenthwise restore FILE --store DB
            verify a b --head b                | Unmatched argument at index 2: 'b'. Usage: tenthwise verify PATH [--head HASH] [--trust KEY]
            verify a a c                       | Unmatched arguments from index 2: 'a', 'c'. Usage: tenthwise verify PATH [--head HASH] [--trust KEY]
            verify a --head                    | Missing required parameter for option '--head' (HASH). Usage: tenthwise verify PATH [--head HASH] [--trust KEY]
            compute --sums=x                   | Invalid value for option '--sums': it takes none, and 'x' was given. Usage: tenthwise compute < QUESTIONS > ANSWERS
            export --store s --store t         | option '--store' (DB) should be specified only once. Usage: tenthwise export --store DB --run ID --as pdf,csv,json,qif,bundle --out DIR tenthwise export --store DB [--part P] [--from DAY] [--to DAY] --as bundle --out DIR
            """)
    void wrongUsageSaysWhatWouldBeRight(String typed, String said) {
        assertEquals(said, Typed.line((Object[]) typed.split(" +")).trouble());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            history --store s --from 2.3.2026 | Invalid value for option '--from': '2.3.2026' is not a day. Write year, month and day, as 2026-03-02.
            --backups ten                     | Invalid value for option '--backups': 'ten' is not a whole number.
            """)
    void aValueThatIsNoneIsNamed(String typed, String said) {
        String trouble = Typed.line((Object[]) typed.split(" +")).trouble();
        assertTrue(trouble.startsWith(said + " Usage:"), trouble);
    }

    @Test
    void withoutADisplayTheClientSaysSoAndNamesTheDemo() {
        Typed typed = Typed.line();
        assertEquals(
                "There is no display to open the client on. \"tenthwise demo\" works without one: it walks a demo "
                        + "part through the "
                        + "screens by itself.",
                typed.trouble());
        assertEquals(List.of(), typed.opened());
    }

    @Test
    void withADisplayTheClientOpensOnItsOwnStore() {
        assertEquals(List.of("open own own"), Typed.withDisplay().opened());
    }

    @Test
    void theClientOpensOnAStoreAndPlansThatAreNamed() {
        Path store = folder.resolve("s.db");
        assertEquals(
                List.of("open " + store + " " + folder),
                Typed.withDisplay("--store", store, "--plans", folder).opened());
    }

    @Test
    void plansThatAreNoFolderAreRefused() {
        assertEquals(
                "nowhere is not a folder. Give a folder with plan files in it.",
                Typed.withDisplay("--plans", "nowhere").trouble());
    }

    @Test
    void theDemoIsShownOnARunBegunWhereThereIsADisplay() {
        assertEquals(
                List.of("demo with [LG-2207-C-014] true"),
                Typed.withDisplay("demo").opened());
    }

    @Test
    void theDemoIsWalkedWhereThereIsNone() throws Exception {
        Path out = folder.resolve("left");
        Typed typed = Typed.line("demo", "--out", out);
        assertEquals(List.of("walk " + out), typed.opened());
        assertEquals(
                List.of(
                        "No display here: walking a demo part through the screens, which takes about a minute.",
                        "Step 1 of 1",
                        "a picture"),
                typed.out());
        Map<String, String> files = ExamplePart.WINCH_SHAFT.files();
        for (Map.Entry<String, String> file : files.entrySet()) {
            assertEquals(
                    file.getValue(), Files.readString(out.resolve("examples").resolve(file.getKey())));
        }
    }

    @Test
    void aFileInTheWayOfTheDemoIsNamed() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "mine");
        assertEquals(
                file + " is a file. Give a folder to write into; it is made where there is none.",
                Typed.line("demo", "--out", file).trouble());
        assertEquals("mine", Files.readString(file));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "demo",
                "check",
                "compare",
                "walk",
                "export",
                "first-article",
                "verify",
                "backup",
                "restore",
                "salvage",
                "compute",
                "reference"
            })
    void everyCommandExplainsItself(String command) {
        Typed typed = command.isEmpty() ? Typed.line("--help") : Typed.line(command, "--help");
        assertEquals(0, typed.exit());
        assertTrue(typed.out().get(0).startsWith(("Usage: tenthwise " + command).strip()), typed.out()::toString);
        assertTrue(typed.out().stream().allMatch(line -> line.length() <= 100));
    }

    @Test
    void aFullDiskIsOneLine() {
        String said =
                "The entry was not saved: the disk is full. Everything saved before is safe. Free some space, then "
                        + "save again.";
        assertEquals(
                said,
                Typed.whatGoesWrong(new CouldNotSave(
                                CouldNotSave.Reason.DISK_FULL,
                                Message.of("store.not-saved.disk-full"),
                                new IOException()))
                        .trouble());
    }

    @Test
    void evenWhatNobodyThoughtOfIsOneLine() {
        assertEquals(
                "Something went wrong that should not have. What was saved is safe. Tell the makers: "
                        + "java.lang.IllegalStateException: one two",
                Typed.whatGoesWrong(new IllegalStateException("one\ntwo")).trouble());
    }

    @Test
    void theVersionIsOneLine() {
        assertEquals(List.of("Tenthwise 0.1.0-test"), Typed.line("--version").out());
    }
}
