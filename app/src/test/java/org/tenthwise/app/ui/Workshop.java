package org.tenthwise.app.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tenthwise.app.session.Asked;
import org.tenthwise.app.session.Background;
import org.tenthwise.app.session.Beginning;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.session.Shop;
import org.tenthwise.app.store.CouldNotOpen;
import org.tenthwise.app.store.sqlite.SqliteLedger;
import org.tenthwise.app.text.Words;
import org.tenthwise.app.ui.form.InHand;
import org.tenthwise.app.ui.shell.Errands;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.app.ui.shell.Message;
import org.tenthwise.checklists.catalogue.DemoPart;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;

/**
 * A shop with a ledger in a temporary file, runs of the demo parts, and a journey that notes where it was asked to go. Work
 * is done at once on the thread that asks.
 */
public final class Workshop implements Journey, AutoCloseable {

    /** 25 November 2026, 09:31 at the machine. */
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:31:00Z"), ZoneOffset.ofHours(1));

    private final SqliteLedger ledger;
    private final List<String> went = new ArrayList<>();
    private final List<Message> told = new ArrayList<>();

    public final Words words = Words.of(Locale.ENGLISH);
    public final Shop shop;
    public final Errands errands;

    public Workshop(Path folder) {
        try {
            ledger = SqliteLedger.open(folder.resolve("shop.db"));
        } catch (CouldNotOpen e) {
            throw new AssertionError(e);
        }
        shop = new Shop(ledger, CLOCK);
        errands = new Errands(new Background(Runnable::run, Runnable::run), words, this);
    }

    /** Does what may not fail here. */
    public static <T> T must(Callable<T> work) {
        try {
            return work.call();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    public RunSession begin(DemoPart part, String serial) {
        return begin(part.plan(), serial);
    }

    private RunSession begin(Plan plan, String serial) {
        return must(() -> shop.begin(new Beginning(plan, serial, "AB-7731", "Lathe 4", "Setter 2")));
    }

    /** The screen carrier, set up and trued. */
    public RunSession setUp(String serial) {
        return setUp(DemoPart.SCREW_CARRIER.plan(), serial);
    }

    /** The same by a plan of a few words more. */
    public RunSession setUp(Plan plan, String serial) {
        RunSession session = begin(plan, serial);
        return must(() -> {
            for (int step : new int[] {1, 2, 3, 5}) {
                session.goTo(step);
                session.answer(Answer.YES);
            }
            session.goTo(4);
            session.turn().sweep(false);
            for (int section = 0; section < 2; section++) {
                for (String read : "0.004 0.001 0.000 0.002 0.006 0.009 0.011 0.008".split(" ")) {
                    session.enter(read);
                }
            }
            return session;
        });
    }

    /** The screen carrier at its bore, part and gauge at 20 °C; {@code readings} from a gauge set on a 30.000 master. */
    public RunSession atTheBore(String serial, String... readings) {
        RunSession session = setUp(serial);
        return must(() -> {
            session.goTo(13);
            if (session.state().asked() instanceof Asked.WhichSense) {
                session.gauge().tellSense(false);
            }
            session.enter("");
            session.enter("");
            session.gauge().confirmSense(true);
            session.enter("20");
            session.enter("20");
            for (String reading : readings) {
                session.keep(reading);
            }
            return session;
        });
    }

    /** From a bore that passed to the thread: plug in, turned round and true, drills ready. */
    public static RunSession toTheThread(RunSession session) {
        return must(() -> {
            session.goTo(14);
            session.enter("29.990");
            session.enter("29.990");
            session.answer(Answer.FREELY);
            session.goTo(15);
            for (String swept : "0.002 0.000 0.003 0.000".split(" ")) {
                session.enter(swept);
            }
            for (int drills : new int[] {16, 17}) {
                session.goTo(drills);
                session.answer(Answer.YES);
            }
            session.goTo(21);
            return session;
        });
    }

    public InHand inHand(RunSession session) {
        return new InHand(session, shop, errands);
    }

    /** How many entries the ledger holds. */
    public long kept() {
        return ledger.head().seq();
    }

    /** Where the journey was asked to go, in order. */
    public List<String> went() {
        return went;
    }

    public List<Message> told() {
        return told;
    }

    /** Answers the message told last. */
    public void reply(String label) {
        Message message = told.remove(told.size() - 1);
        Optional<Message.Reply> reply = message.replies().stream().filter(r -> r.label().equals(label)).findFirst();
        reply.orElseThrow(() -> new AssertionError(label + " is no reply to " + message)).then().run();
    }

    @Override
    public void home() {
        went.add("home");
    }

    @Override
    public void begin(Plan plan) {
        went.add("begin " + plan.part().number());
    }

    @Override
    public void run(RunSession session) {
        went.add("run " + session.id());
    }

    @Override
    public void strike(RunSession session) {
        went.add("strike " + session.id());
    }

    @Override
    public void stoodElsewhere(RunSession session) {
        went.add("stood elsewhere " + session.id());
    }

    @Override
    public void dispose(RunSession session) {
        went.add("dispose " + session.id());
    }

    @Override
    public void sign(RunSession session) {
        went.add("sign " + session.id());
    }

    @Override
    public void record(String run) {
        went.add("record " + run);
    }

    @Override
    public void about() {
        went.add("about");
    }

    @Override
    public void reference() {
        went.add("reference");
    }

    @Override
    public void say(Saying what, RunSession session) {
        went.add("say " + what + " " + session.id());
    }

    @Override
    public void gauge(RunSession session) {
        went.add("gauge " + session.id());
    }

    @Override
    public void otherGauge(RunSession session) {
        went.add("other gauge " + session.id());
    }

    @Override
    public void wrongSetting(RunSession session, Entry setting, SettingFault fault) {
        went.add("wrong " + fault + " " + setting.seq() + " " + session.id());
    }

    @Override
    public void cutOnThese(RunSession session) {
        went.add("cut on these " + session.id());
    }

    @Override
    public void machine(RunSession session) {
        went.add("machine " + session.id());
    }

    @Override
    public void bench() {
        went.add("bench");
    }

    @Override
    public void bench(RunSession session) {
        went.add("bench " + session.id());
    }

    @Override
    public void back() {
        went.add("back");
    }

    @Override
    public void tell(Message message) {
        told.add(message);
    }

    @Override
    public void close() {
        ledger.close();
    }
}
