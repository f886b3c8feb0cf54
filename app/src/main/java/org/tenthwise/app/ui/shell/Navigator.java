package org.tenthwise.app.ui.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.tenthwise.app.history.Sought;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.series.Characteristic;
import org.tenthwise.app.series.Series;
import org.tenthwise.app.session.FiguresReport;
import org.tenthwise.app.session.RunSession;
import org.tenthwise.app.session.SettingFault;
import org.tenthwise.app.session.ShopNames;
import org.tenthwise.checklists.drafting.Drafted;
import org.tenthwise.checklists.editing.OutlineText;
import org.tenthwise.checklists.editing.PartialCheck;
import org.tenthwise.checklists.editing.PlanInHand;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.Template;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;

/**
 * The ways through the client. A screen asks to go somewhere; what is built for it and what lies under it is not its
 * business.
 */
public interface Navigator {

    /** What a person can say about the run in hand in words of their own. */
    enum Saying {
        NOTE,
        DOUBT,
        HAND_OVER
    }

    /** Parts and runs begun; everything above it goes. */
    void home();

    /** What is asked before a run of {@code plan} begins. */
    void begin(Plan plan);

    /** The run in hand; back from it leads home. */
    void run(RunSession session);

    /** What else there is to say of the step in hand. */
    void more(RunSession session);

    /** The piece of the drawing the step in hand is about, which the plan has a place for. */
    void drawing(RunSession session);

    /** The form by which that is done. */
    void form(Deed deed, RunSession session);

    /** What documents prove of the run. */
    void documents(RunSession session);

    /** Which table of figures is taken, and of which document it is. */
    void chooseFigures(RunSession session);

    /** What a table of figures comes to, before any of it counts. */
    void figures(RunSession session, Path file, FiguresReport report);

    /** Close and sign the run. */
    void sign(RunSession session);

    /** The record of a run, finished or not; back from it leads home. */
    void record(String run);

    /** The pages of the record of a run, as they are printed. */
    void pages(String run);

    /** The closed runs; back from a record that was looked at there leads there. */
    void records();

    /** Every characteristic of the part last worked on, over all runs. */
    void history();

    /** The same of one part number. */
    void historyOf(String part);

    /** One characteristic over the parts that are looked for. */
    void course(Sought sought, Characteristic characteristic);

    /** All characteristics that are looked for, by how far each part lies from its target. */
    void deviations(Sought sought);

    /**
     * Asks which parts to look for.
     *
     * @param before what was looked for
     * @param parts part numbers there are
     * @param known what was found
     * @param found is handed what to look for, and the screen in hand is shown again
     */
    void findParts(Sought before, List<String> parts, List<Series> known, Consumer<Sought> found);

    /** What is open over all runs. */
    void matters();

    /** Who signs for what becomes of an open matter. */
    void settleMatter(OpenMatter matter);

    /** The first-article reports there are. */
    void reports();

    /** Which part another report is on. */
    void newReport();

    /** Which closed runs of a part a report joins. */
    void reportRuns(String part);

    /** What is asked for a report on runs. */
    void askReport(String part, List<String> runs);

    /** What a report comes to; back from it leads to the reports. */
    void articleReport(String identifier);

    /** Who signs a report, and as what. */
    void signReport(String identifier);

    /** Which bundle of another station is taken in. */
    void takeIn();

    /** Of which runs a bundle is made. */
    void handOver();

    /** The plans there are, to be made and changed. */
    void plans();

    /** What a plan cannot be begun without. */
    void newPlan();

    /** Which list a plan is drafted from. */
    void chooseList();

    /** The same for a plan that is drafted from a list. */
    void newPlanOf(String list);

    /** What came of a list that a plan was drafted from. */
    void drafted(String name, Drafted drafted);

    /** The steps of the plan of that name, or of its draft. */
    void plan(String name);

    /** What is said of the whole of a plan. */
    void planHead(String name, PlanInHand plan);

    /** What is open about a table outside the order of work. */
    void planBeside(PlanInHand plan, PlanInHand.Beside open);

    /** The profiles of the part, to be typed. */
    void outline(String name, PlanInHand plan);

    /**
     * The figures of an element of the outline.
     *
     * @param isNew whether it comes in at the place; otherwise it is the one there
     */
    void outlineElement(PlanInHand plan, OutlineText.Side side, int place, boolean isNew);

    /** The outline, on which the checks are put by touching it. */
    void marks(String name, PlanInHand plan, int place);

    /** The figures of where a check stands on the outline. */
    void markByFigures(PlanInHand plan, int place);

    /** @param place of the step, from 0 */
    void planStep(String name, PlanInHand plan, int place);

    /** @param chosen is handed the template that was chosen, and the plan is shown again */
    void templates(Consumer<Template> chosen);

    /** Which checks of a template are taken; the rest of what is said of a template goes for them. */
    void templateSteps(Template template, Consumer<Template> chosen);

    /**
     * Keeps checks for other plans: which of them, and under which name.
     *
     * @param place of the one that is ticked at first, from 0
     */
    void keepTemplate(List<TableText> steps, int place);

    /**
     * What a plan with nothing open changes of the one in force, and which characteristics a partial check takes in.
     */
    void changes(String name, PlanInHand plan, PartialCheck partial);

    /**
     * @param chosen is handed the name of a plan to compare with and that of the one compared, absent for the one in
     *     hand; the screen in hand is shown again
     */
    void otherPlan(BiConsumer<String, Optional<String>> chosen);

    /**
     * The page of the drawing, on which the balloons of the steps are placed.
     *
     * @param place of the step in hand, from 0
     */
    void balloons(String name, PlanInHand plan, int place);

    /** Puts a plan in force in which nothing is open. */
    void issue(String name, PlanInHand plan, PartialCheck partial);

    /** @param found is handed words to find runs by, and the screen in hand is shown again */
    void find(Consumer<String> found);

    void about();

    /** How one begins: plans, a part to try, the keys, the names. */
    void guide();

    /** What a person can set. */
    void settings();

    /** A machine or a person of the shop is named, and the screen in hand is shown again. */
    void name(ShopNames.Kind kind);

    /** How the register of a machine counts, for the shop. */
    void register(ShopNames.Name machine);

    /** @param chosen is handed a folder, and the screen in hand is shown again */
    void folder(Path start, Consumer<Path> chosen);

    /** Builds all screens anew in another language, with the settings in hand; nothing that is kept changes. */
    void speak(Locale language);

    /** The licences of the program and of what it is made with. */
    void licences();

    /** Published cases and what the sums make of them. */
    void reference();

    void say(Saying what, RunSession session);

    /** The card of the gauge of the step in hand; where nobody knows which, the form to take one. */
    void gauge(RunSession session);

    /** By what certificate the gauge of the step in hand, or what it is set on, was calibrated. */
    void calibration(RunSession session, GaugeOrMaster what);

    /** Strike out a setting that was wrong. */
    void wrongSetting(RunSession session, Entry setting, SettingFault fault);

    /** The sums of the bench, without a run. */
    void bench();

    /** The sums of the bench with the figures of the step in hand; what comes of them can be noted in the run. */
    void bench(RunSession session);

    /** The screen under the one in hand. */
    void back();

    /** Lays a message over the screen in hand until it is answered. */
    void tell(Notice message);
}
