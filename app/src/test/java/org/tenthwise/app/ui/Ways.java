package org.tenthwise.app.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.session.FiguresReport;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.app.ui.shell.Deed;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;

/** A navigator that stays where it is and keeps a list of where it was asked to go. */
public class Ways extends PlanWays {

    public final List<Notice> told = new ArrayList<>();
    /** The folder that is chosen wherever one is asked for. */
    public Optional<Path> chosenFolder = Optional.empty();
    /** Where a message is shown besides. */
    public Consumer<Notice> passedOn = message -> {};

    /** Answers the message told last. */
    public void reply(String label) {
        Notice message = told.remove(told.size() - 1);
        Optional<Notice.NoticeKey> reply =
                message.replies().stream().filter(r -> r.label().equals(label)).findFirst();
        reply.orElseThrow(() -> new AssertionError(label + " is no reply to " + message))
                .then()
                .run();
    }

    @Override
    public void home() {
        asked.add("home");
    }

    @Override
    public void pages(String run) {
        asked.add("pages " + run);
    }

    @Override
    public void documents(RunSession session) {
        asked.add("documents " + session.id());
    }

    @Override
    public void chooseFigures(RunSession session) {
        asked.add("choose figures " + session.id());
    }

    @Override
    public void takeIn() {
        // nothing comes of it here
    }

    @Override
    public void handOver() {
        // nothing comes of it here
    }

    @Override
    public void figures(RunSession session, Path file, FiguresReport report) {
        asked.add("figures " + file.getFileName() + " " + report);
    }

    @Override
    public void records() {
        asked.add("records");
    }

    @Override
    public void matters() {
        asked.add("matters");
    }

    @Override
    public void settleMatter(OpenMatter matter) {
        asked.add("settle " + matter.matter().kind());
    }

    @Override
    public void reports() {
        asked.add("reports");
    }

    @Override
    public void newReport() {
        asked.add("new report");
    }

    @Override
    public void reportRuns(String part) {
        asked.add("report runs " + part);
    }

    @Override
    public void askReport(String part, List<String> runs) {
        asked.add("ask report " + part + " " + runs);
    }

    @Override
    public void articleReport(String identifier) {
        asked.add("report " + identifier);
    }

    @Override
    public void signReport(String identifier) {
        asked.add("sign report " + identifier);
    }

    @Override
    public void find(Consumer<String> found) {
        asked.add("find");
    }

    @Override
    public void begin(Plan plan) {
        asked.add("begin " + plan.part().number());
    }

    @Override
    public void run(RunSession session) {
        asked.add("run " + session.id());
    }

    @Override
    public void more(RunSession session) {
        asked.add("more " + session.id());
    }

    @Override
    public void drawing(RunSession session) {
        asked.add("drawing " + session.id());
    }

    @Override
    public void form(Deed deed, RunSession session) {
        asked.add("form " + deed + " " + session.id());
    }

    @Override
    public void sign(RunSession session) {
        asked.add("sign " + session.id());
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
    public void guide() {
        asked.add("guide");
    }

    @Override
    public void settings() {
        asked.add("settings");
    }

    @Override
    public void name(ShopNames.Kind kind) {
        asked.add("name a " + kind);
    }

    @Override
    public void register(ShopNames.Name machine) {
        asked.add("register of " + machine.name());
    }

    @Override
    public void folder(Path start, Consumer<Path> chosen) {
        asked.add("folder from " + start);
        chosenFolder.ifPresent(chosen);
    }

    @Override
    public void speak(Locale language) {
        asked.add("speak " + language);
    }

    @Override
    public void licences() {
        asked.add("licences");
    }

    @Override
    public void reference() {
        asked.add("reference");
    }

    @Override
    public void say(Saying what, RunSession session) {
        asked.add("say " + what + " " + session.id());
    }

    @Override
    public void gauge(RunSession session) {
        asked.add("gauge " + session.id());
    }

    @Override
    public void calibration(RunSession session, GaugeOrMaster what) {
        asked.add("calibration " + what.mark() + " " + session.id());
    }

    @Override
    public void wrongSetting(RunSession session, Entry setting, SettingFault fault) {
        asked.add("wrong " + fault + " " + setting.seq() + " " + session.id());
    }

    @Override
    public void history() {
        asked.add("history");
    }

    @Override
    public void historyOf(String part) {
        asked.add("history of " + part);
    }

    @Override
    public void course(Sought sought, Characteristic characteristic) {
        asked.add("course " + characteristic.number() + " " + sought.by());
    }

    @Override
    public void deviations(Sought sought) {
        asked.add("deviations " + sought.by());
    }

    @Override
    public void findParts(Sought before, List<String> parts, List<Series> known, Consumer<Sought> found) {
        asked.add("find parts " + before.by());
    }

    @Override
    public void bench() {
        asked.add("bench");
    }

    @Override
    public void bench(RunSession session) {
        asked.add("bench " + session.id());
    }

    @Override
    public void back() {
        asked.add("back");
    }

    @Override
    public void tell(Notice message) {
        told.add(message);
        passedOn.accept(message);
    }
}
