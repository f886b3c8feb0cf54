package org.tenthwise.app.ui.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.ui.shell.Journey;
import org.tenthwise.app.ui.shell.Message;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;

/** A journey that stays where it is and keeps a list of where it was asked to go. */
final class Ways implements Journey {

    final List<String> asked = new ArrayList<>();
    final List<Message> told = new ArrayList<>();
    /** Where a message is shown besides. */
    Consumer<Message> passedOn = message -> { };

    @Override
    public void home() {
        asked.add("home");
    }

    @Override
    public void begin(Plan plan) {
        asked.add("begin");
    }

    @Override
    public void run(RunSession session) {
        asked.add("run");
    }

    @Override
    public void strike(RunSession session) {
        asked.add("strike");
    }

    @Override
    public void stoodElsewhere(RunSession session) {
        asked.add("stood elsewhere");
    }

    @Override
    public void dispose(RunSession session) {
        asked.add("dispose");
    }

    @Override
    public void sign(RunSession session) {
        asked.add("sign");
    }

    @Override
    public void record(String run) {
        asked.add("record " + run);
    }

    @Override
    public void about() {
        asked.add("about");
    }

    @Override
    public void reference() {
        asked.add("reference");
    }

    @Override
    public void say(Saying what, RunSession session) {
        asked.add("say " + what);
    }

    @Override
    public void gauge(RunSession session) {
        asked.add("gauge");
    }

    @Override
    public void otherGauge(RunSession session) {
        asked.add("other gauge");
    }

    @Override
    public void wrongSetting(RunSession session, Entry setting, SettingFault fault) {
        asked.add("wrong " + fault);
    }

    @Override
    public void cutOnThese(RunSession session) {
        asked.add("cut on these");
    }

    @Override
    public void machine(RunSession session) {
        asked.add("machine");
    }

    @Override
    public void bench() {
        asked.add("bench");
    }

    @Override
    public void bench(RunSession session) {
        asked.add("bench beside the run");
    }

    @Override
    public void back() {
        asked.add("back");
    }

    @Override
    public void tell(Message message) {
        told.add(message);
        passedOn.accept(message);
    }
}
