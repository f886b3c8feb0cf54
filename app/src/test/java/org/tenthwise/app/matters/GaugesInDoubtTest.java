package org.tenthwise.app.matters;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.history.RunFacts;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.ui.Workshop;
import org.tenthwise.model.run.SignedAs;

/** A gauge in doubt is told with every run whose readings rest on it. */
class GaugesInDoubtTest {

    @RegisterExtension
    private final Workshop workshop = new Workshop();

    private List<String> doubted() {
        return new OpenMatters(workshop.ledger())
                .all(Optional.empty(), Optional.empty()).stream()
                        .filter(matter -> matter.matter().kind() == MatterKind.GAUGE_IN_DOUBT)
                        .map(matter -> matter.run().map(RunFacts::serial).orElse("shop") + " "
                                + matter.matter().check())
                        .toList();
    }

    private static void strikeSense(RunSession run) throws Exception {
        run.gauge().strikeOut(run.state().settingsHere().get(0), SettingFault.SENSE, "number goes the other way");
    }

    @Test
    void theRunsThatWereReadWithItAreNamedClosedOnesToo() throws Exception {
        RunSession closed = workshop.atTheBore("014", "0.012", "0.013", "0.011");
        closed.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        workshop.atTheBore("015");
        RunSession here = workshop.atTheBore("016", "0.012");
        assertEquals(List.of(), doubted());
        strikeSense(here);
        assertEquals(List.of("shop 0", "014 13", "016 13"), doubted());
    }

    @Test
    void aRunThatIsPutAwayIsNamedAgainOnceItIsTakenUp() throws Exception {
        RunSession away = workshop.atTheBore("014", "0.012");
        strikeSense(workshop.atTheBore("015", "0.012"));
        away = workshop.shop.open(away.id());
        away.shelf().putAway("Setter 1", "wrong part");
        assertEquals(List.of("shop 0", "015 13"), doubted());
        away.shelf().takeUp();
        assertEquals(List.of("shop 0", "014 13", "015 13"), doubted());
    }

    @Test
    void allAreGoneOnceTheGaugeIsToldOf() throws Exception {
        RunSession here = workshop.atTheBore("016", "0.012");
        strikeSense(here);
        here.gauge().tellSense(true);
        here.enter("30.000");
        here.enter("0");
        here.gauge().confirmSense(true);
        assertEquals(List.of(), doubted());
    }

    @Test
    void oneIsSignedForRunByRunOnceThatIsClosedAndTheOthersStay() throws Exception {
        RunSession closed = workshop.atTheBore("014", "0.012");
        closed.close("Inspector 1", SignedAs.NOT_ACCEPTED);
        strikeSense(workshop.atTheBore("015", "0.012"));
        MatterBook book = new MatterBook(workshop.ledger(), Clock.systemUTC());
        List<OpenMatter> all = matters();
        assertEquals(
                List.of(true, true, false),
                all.stream().map(OpenMatter::canBeSettled).toList());
        book.settle(all.get(1), "Inspector 1", "measured elsewhere", "M-4");
        assertEquals(
                List.of(true, false, true),
                matters().stream().map(OpenMatter::isOpen).toList());
    }

    private List<OpenMatter> matters() {
        return new OpenMatters(workshop.ledger())
                .all(Optional.empty(), Optional.empty()).stream()
                        .filter(matter -> matter.matter().kind() == MatterKind.GAUGE_IN_DOUBT)
                        .toList();
    }
}
