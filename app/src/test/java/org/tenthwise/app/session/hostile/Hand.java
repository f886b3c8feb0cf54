package org.tenthwise.app.session.hostile;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.tenthwise.app.session.CalibratedHere;
import org.tenthwise.app.session.Objection;
import org.tenthwise.app.session.Prompt;
import org.tenthwise.app.session.Reply;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.Runs;
import org.tenthwise.app.store.CouldNotSave;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Aim;
import org.tenthwise.model.plan.Answer;
import org.tenthwise.model.plan.MeasuredBody;
import org.tenthwise.model.plan.Question;
import org.tenthwise.model.plan.Register;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Disposition;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.SignedAs;
import org.tenthwise.model.run.StepEvent;

/**
 * Does the next thing to a run: mostly what is asked, mostly with a figure that is in, and again and again something
 * else. No two hands with the same random numbers do anything different.
 */
final class Hand {

    private static final List<String> PERSONS = List.of("Setter 1", "Setter 2", "Inspector 1");

    private final RandomPlan plan;
    private final Runs shop;
    private final Random random;
    private RunSession session;

    Hand(RandomPlan plan, Runs shop, RunSession session, Random random) {
        this.plan = plan;
        this.shop = shop;
        this.session = session;
        this.random = random;
    }

    RunSession session() {
        return session;
    }

    void deed() throws CouldNotSave {
        int dice = random.nextInt(100);
        if (session.state().mayCutOnThese() && random.nextInt(8) == 0) {
            session.cutOnThese("The rest is behind the live centre");
        } else if (dice < 72) {
            whatIsAsked();
        } else if (dice < 82) {
            session.goTo(1 + random.nextInt(plan.facts().size()));
        } else if (dice < 86) {
            session.again(StepEvent.PassBegun.Why.values()[random.nextInt(3)]);
        } else if (dice < 90) {
            strike();
        } else if (dice < 93) {
            dispose();
        } else {
            somethingElse(random.nextInt(19));
        }
    }

    private void somethingElse(int which) throws CouldNotSave {
        switch (which) {
            case 0, 1 -> session.gauge().choose("G-" + random.nextInt(3), Optional.empty());
            case 2 -> session.gauge().setAnew(random.nextBoolean());
            case 3 -> session.handOver(person());
            case 4 -> session.sign(person(), SignedAs.values()[random.nextInt(4)]);
            case 5 -> {
                if (random.nextInt(4) == 0) {
                    session.close(person(), SignedAs.values()[random.nextInt(4)]);
                }
            }
            case 6 -> session = shop.open(session.id());
            case 7 -> session.turn().sweep(random.nextBoolean());
            case 8 -> session.readingsFirst(random.nextBoolean());
            case 9, 10 -> session.cutOnThese(random.nextInt(9) == 0 ? " " : "The rest is behind the live centre");
            case 11 -> machine();
            case 13 -> {
                session.shelf().putAway(person(), "Started by mistake");
                if (random.nextInt(5) > 0) {
                    session.shelf().takeUp();
                }
            }
            case 14, 15 -> document();
            case 16, 17, 18 -> calibration();
            default ->
                session.temperatures()
                        .take(
                                random.nextBoolean() ? MeasuredBody.PART : MeasuredBody.GAUGE,
                                figures().degrees());
        }
    }

    /** Of the gauge at hand or what it is set on, now and then of one that is not; over since yesterday, or not. */
    void calibration() throws CouldNotSave {
        List<CalibratedHere> here = session.state().calibrated();
        GaugeOrMaster what = here.isEmpty() || random.nextInt(6) == 0
                ? GaugeOrMaster.master("M-" + random.nextInt(2))
                : here.get(random.nextInt(here.size())).what();
        session.gauge()
                .calibrated(
                        what,
                        new Calibration(
                                random.nextInt(4) == 0 ? "" : "K-" + random.nextInt(3),
                                Optional.of(LocalDate.parse("2026-11-23").plusDays(random.nextInt(5)))
                                        .filter(any -> random.nextInt(5) > 0)),
                        random.nextInt(3) == 0);
    }

    private void machine() throws CouldNotSave {
        session.machine(
                random.nextBoolean() ? Register.DIAMETER : Register.RADIUS,
                random.nextBoolean() ? Aim.ByLimits.MIDDLE : Aim.ByLimits.THIRD);
    }

    private String person() {
        return PERSONS.get(random.nextInt(PERSONS.size()));
    }

    private void strike() throws CouldNotSave {
        List<Entry> entries = session.state().sheet().run().entries();
        session.strikeOut(entries.get(random.nextInt(entries.size())).seq(), "Gauge slipped");
    }

    private void dispose() throws CouldNotSave {
        session.dispose(
                Disposition.values()[random.nextInt(Disposition.values().length)],
                "Agreed",
                person(),
                random.nextBoolean() ? "D-1" : "");
    }

    private Figures figures() {
        return new Figures(here().what(), session.state().setting(), random);
    }

    // what is asked

    private void liesReady() throws CouldNotSave {
        if (random.nextBoolean()) {
            session.gauge().setAsBefore();
        } else {
            session.gauge().setOtherwise(random.nextBoolean());
        }
    }

    private void whatIsAsked() throws CouldNotSave {
        Prompt asked = session.state().asked();
        if (asked instanceof Prompt.WhichGauge) {
            session.gauge().choose("G-1", Optional.empty());
        } else if (asked instanceof Prompt.WhichSense) {
            session.gauge().tellSense(random.nextBoolean());
        } else if (asked instanceof Prompt.SenseInFigures) {
            session.gauge().confirmSense(random.nextInt(5) > 0);
        } else if (asked instanceof Prompt.LiesReady) {
            liesReady();
        } else if (asked instanceof Prompt.Certified certified) {
            enter(new BigDecimal(certified.nominal().text())
                    .add(figures().thousandths(3))
                    .toPlainString());
        } else if (asked instanceof Prompt.Zero) {
            enter(figures().thousandths(5).toPlainString());
        } else if (asked instanceof Prompt.Reading reading
                && here().what() instanceof Facts.RunOut
                && random.nextInt(6) == 0) {
            turn(reading);
        } else if (asked instanceof Prompt.Reading reading) {
            enter(figures().reading(reading.slot().key()));
        } else if (asked instanceof Prompt.Temperature) {
            enter(figures().degrees());
        } else if (asked instanceof Prompt.Answering answering) {
            asked(answer(answering.question()));
        } else if (asked instanceof Prompt.ForDocument) {
            document();
        } else if (asked instanceof Prompt.WhichRegister) {
            machine();
        } else {
            session.goOn();
        }
    }

    /** At a check he sees or believes to see, and now and then taken back at once. */
    private void asked(Answer answer) throws CouldNotSave {
        int step = session.state().inHand().number();
        session.answers().give(random.nextInt(20) == 0 ? step + 1 : step, answer);
        if (random.nextInt(8) == 0) {
            List<Entry> entries = session.state().sheet().run().entries();
            long last = entries.get(entries.size() - 1).seq();
            session.answers().undo(last - random.nextInt(2), "Undone at once");
        }
    }

    /** Of any kind and date, with figures too few, too many, out, or of another kind than is asked for. */
    private void document() throws CouldNotSave {
        Document.Says says = Document.Says.values()[random.nextInt(2) * random.nextInt(4)];
        List<Written> figures = Stream.generate(this::figure)
                .limit(says == Document.Says.FIGURES || random.nextInt(4) == 0 ? random.nextInt(4) : 0)
                .toList();
        session.documents()
                .give(
                        random.nextInt(12) == 0 ? " " : "CM-" + random.nextInt(9),
                        LocalDate.parse("2026-11-25").plusDays(random.nextInt(12) - 10),
                        says,
                        random.nextInt(20) == 0 ? "" : "Measuring room",
                        figures);
    }

    private Written figure() {
        return random.nextInt(15) == 0
                ? new Written("0.004", Unit.DEGREE)
                : Written.of(BigDecimal.valueOf(random.nextInt(60), 3), Unit.MILLIMETRE);
    }

    /** By angle first, or a first reading put to another place, often one that is none. */
    private void turn(Prompt.Reading reading) throws CouldNotSave {
        if (reading.taken() == 0) {
            session.turn().sweep(random.nextInt(3) == 0);
        } else {
            String section = random.nextBoolean() ? "" : "far:";
            session.turn().stoodAt(section + (1 + random.nextInt(8)) + ".1", "Stood elsewhere");
        }
    }

    private void enter(String text) throws CouldNotSave {
        Reply reply = session.enter(text);
        if (reply.objection().filter(Objection::mayBeKept).isPresent() && random.nextInt(3) == 0) {
            session.keep(text);
        }
    }

    private Answer answer(Question question) {
        List<Answer> answers = question.answers();
        return random.nextInt(4) == 0
                ? answers.get(random.nextInt(answers.size()))
                : wanted(question).orElse(answers.get(0));
    }

    private Optional<Answer> wanted(Question question) {
        Facts.What what = here().what();
        return what instanceof Facts.Plug plug
                ? Optional.of(plug.feel())
                : what instanceof Facts.Asks asks ? Optional.of(asks.wanted().get(question)) : Optional.empty();
    }

    private Facts here() {
        return plan.facts(session.state().inHand().number());
    }
}
