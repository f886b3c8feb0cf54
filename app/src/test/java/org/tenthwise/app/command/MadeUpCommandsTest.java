package org.tenthwise.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tenthwise.app.key.KeyFile;
import org.tenthwise.app.key.PublicKeyOfStation;
import org.tenthwise.app.text.MadeUpLanguage;
import org.tenthwise.checklists.catalogue.DemoPart;

/** What commands print in a language that is not English: nothing of it is left in English. */
class MadeUpCommandsTest extends Walking {

    /** What is typed, and what stands for a value in the guide of the commands: so in every language. */
    private static final String AS_TYPED = "tenthwise demo check walk export history verify backup restore salvage "
            + "compute callout compare draft unit general reference help version store plans backup-to backups out "
            + "readings matters view VIEW KIND kind verdict "
            + "run as drawing size WHICH across REASONS required INDEX "
            + "part serial gauge "
            + "language LANGUAGE en de person from to characteristic balloon designator head sums topic totals COMMAND "
            + "PLAN FILE LIST TEXT ISO XXX ANGLES DIR FORMAT DAY HASH KEY PATH NAME trust bundle import "
            + "P12 PDF PKCS PAdES B-B passphrase "
            + "QUESTIONS ANSWERS pdf csv json qif threads wires profiles teeth cutting limits chain gauging runout "
            + "position taper roughness decision temperature statistics "
            + "first-article first article identifier by sign verified approved asked TOML affected BALLOON CODE order "
            + "organization supplier code supplier_code route change changes assembly comments edition extent reason "
            + "baseline partial full form csv xlsx ROLE "
            + "id calc from-master unit master reading sense";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "demo",
                "check",
                "compare",
                "draft",
                "walk",
                "export",
                "first-article",
                "history",
                "matters",
                "verify",
                "backup",
                "restore",
                "salvage",
                "compute",
                "callout",
                "reference"
            })
    void helpIsOfTheLanguage(String command) {
        Typed typed = said(
                Stream.of(command, "--help").filter(word -> !word.isEmpty()).toArray());
        assertEquals(0, typed.exit());
        assertTrue(typed.out().size() > 4, typed.out()::toString);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "chekc",
                "--sotre=x",
                "check",
                "restore",
                "walk LG-2207",
                "verify a b",
                "verify a --head",
                "export --as --out",
                "export --store s --store t",
                "history --store s --from 2.3.2026",
                "--backups ten",
                "compute --sums=x",
                "verify none",
                "check none",
                "walk LG-2207 --readings none"
            })
    void whatWasTypedWrongIsToldInTheLanguage(String line) {
        assertEquals(2, said((Object[]) line.split(" ")).exit());
    }

    @Test
    void everyOptionAndEveryCommandIsExplained() {
        String help = String.join("\n", Typed.line("--help").out());
        for (String command : help.substring(help.indexOf("Commands:"))
                .lines()
                .skip(1)
                .takeWhile(line -> !line.isEmpty())
                .filter(line -> line.matches(" {2}\\w.*"))
                .toList()) {
            List<String> bare = Typed.line(command.strip().split(" ")[0], "--help").out().stream()
                    .filter(line -> line.matches(" {2,}(-\\w, )?--[^\\s\\[]+$"))
                    .toList();
            assertEquals(List.of(), bare, command);
        }
    }

    /** Its failing readings have every kind of remark, disposition and signature. */
    @Test
    void whatAWalkPrintsIsOfTheLanguage() throws Exception {
        for (String run : List.of("LG-2207-fail", "WB-118-pass", "WB-118-fail")) {
            String plan = run.replaceFirst("-\\w+$", "");
            DemoPart part = plan.equals("LG-2207") ? DemoPart.SCREW_CARRIER : DemoPart.WINCH_BARREL_END;
            Typed walked =
                    Typed.in(MadeUpLanguage.words(), "walk", plan, "--readings", run, "--store", store, "--out", out);
            assertTrue(walked.out().size() > 20, walked::toString);
            assertEquals(
                    List.of(),
                    english(walked, AS_TYPED + folder + run + part.passingReadings() + part.failingReadings()));
        }
        KeyFile key = KeyFile.beside(store);
        Typed verified = Typed.in(MadeUpLanguage.words(), "verify", store);
        assertEquals(0, verified.exit());
        assertEquals(List.of(), english(verified, AS_TYPED + store + hex(key)));
        assertEquals(
                0,
                said("backup", "--store", store, "--to", folder.resolve("copy.db"))
                        .exit());
        Typed cut = Typed.in(MadeUpLanguage.words(), "verify", store, "--head", "0".repeat(64));
        assertEquals(1, cut.exit());
        assertEquals(List.of(), english(cut, AS_TYPED + store + hex(key)));
        Typed shown = Typed.in(MadeUpLanguage.words(), "key", "--store", store);
        assertEquals(0, shown.exit());
        assertEquals(
                List.of(),
                english(
                        shown,
                        AS_TYPED
                                + key.path()
                                + hex(key)
                                + String.join(" ", shown.out().subList(3, 6))));
        assertEquals(0, said("check", "LG-2207").exit());
        assertEquals(
                2,
                said("export", "--store", store, "--run", "none", "--as", "csv", "--out", out)
                        .exit());
    }

    /** A fingerprint can look like words. */
    private static String hex(KeyFile key) throws Exception {
        PublicKeyOfStation shown = key.open().shown();
        return " " + shown.shortFingerprint() + " " + shown.fingerprint();
    }

    private static Typed said(Object... line) {
        Typed typed = Typed.in(MadeUpLanguage.words(), line);
        assertEquals(List.of(), english(typed, AS_TYPED + " " + List.of(line)));
        return typed;
    }

    private static List<String> english(Typed typed, String data) {
        return Stream.concat(typed.out().stream(), typed.err().stream())
                .flatMap(
                        line -> MadeUpLanguage.plainEnglish(line, data).stream().map(word -> word + " in: " + line))
                .toList();
    }
}
