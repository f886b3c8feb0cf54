package org.tenthwise.checklists.rules;

import java.util.List;
import java.util.Optional;
import org.tenthwise.checklists.format.RawList;
import org.tenthwise.checklists.format.RawValue;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Check;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.PageSpot;

/** What a step says of the drawing: its balloon, where it stands there, its words, and how often it is there. */
final class OnDrawingRules {

    static final String BALLOON = "balloon";
    private static final String REQUIREMENT = "requirement";
    /** As older plans have it. */
    private static final String DRAWING = "drawing";

    private static final String ON_PAGE = "on_page";
    private static final String COUNT = "count";
    private static final String INSTANCE = "instance";
    private static final String REPORT = "report";
    private static final int MOST = 200;

    private OnDrawingRules() {}

    static OnDrawing read(TableKeys keys) {
        Optional<BalloonNumber> balloon = keys.ifAny(BALLOON, keys::mark).flatMap(text -> {
            if (!BalloonNumber.canBe(text)) {
                keys.problem(BALLOON, "plan.balloon", text, BalloonNumber.LONGEST);
                return Optional.empty();
            }
            return Optional.of(new BalloonNumber(text));
        });
        Optional<String> words = keys.ifAny(REQUIREMENT, keys::prose);
        Optional<String> older = keys.ifAny(DRAWING, keys::prose);
        if (keys.has(REQUIREMENT) && keys.has(DRAWING)) {
            keys.problem(DRAWING, "plan.requirement.twice");
        }
        return new OnDrawing(
                balloon,
                keys.ifAny("sheet", keys::mark),
                keys.ifAny("drawing_zone", keys::text),
                words.or(() -> older).orElse(""),
                keys.ifAny("designator", keys::text),
                instances(keys),
                keys.ifAny(ON_PAGE, keys::any).flatMap(value -> spot(keys, value)));
    }

    private static Optional<PageSpot> spot(TableKeys keys, RawValue value) {
        List<Integer> figures = value instanceof RawList list
                ? list.items().stream()
                        .flatMap(item -> TableKeys.whole(item).stream())
                        .toList()
                : List.of();
        if (figures.size() != 3 || ((RawList) value).items().size() != 3) {
            keys.problem(ON_PAGE, "plan.on-page.written", PageSpot.WHOLE);
            return Optional.empty();
        }
        int page = figures.get(0);
        int x = figures.get(1);
        int y = figures.get(2);
        if (!PageSpot.isPage(page)) {
            keys.problem(ON_PAGE, "plan.on-page.page", page, PageSpot.MOST_PAGES);
            return Optional.empty();
        }
        if (!PageSpot.isOnPage(x) || !PageSpot.isOnPage(y)) {
            keys.problem(ON_PAGE, "plan.on-page.outside", x, y, PageSpot.WHOLE);
            return Optional.empty();
        }
        return Optional.of(new PageSpot(page, x, y));
    }

    /** How many alike a step looks after, if it says so soundly and none of them is looked after alone. */
    static Optional<Integer> several(TableKeys keys) {
        return keys.has(INSTANCE) ? Optional.empty() : keys.wholeIfSound(COUNT).filter(OnDrawingRules::isCount);
    }

    /** What of several alike cannot be said of such a check. */
    static void judge(TableKeys keys, Instances instances, Check check) {
        if (!instances.areSeveral() || keys.has(INSTANCE)) {
            return;
        }
        Optional<CheckOfDimension> dimension = check.asDimension();
        if (check.isMeasured() && dimension.isEmpty() && check.readsAlike() != instances.count()) {
            keys.problem(COUNT, "plan.count.one-each", instances.count());
        }
        if (keys.has(REPORT) && !check.isMeasured()) {
            keys.problem(REPORT, "plan.report.asked");
        }
        dimension.ifPresent(read -> judge(keys, instances.count(), read));
    }

    private static void judge(TableKeys keys, int count, CheckOfDimension check) {
        if (check.places().size() % count != 0) {
            keys.problem(COUNT, "plan.count.places", count, check.places().size());
        }
        if (check.combine() != Combine.EACH) {
            keys.problem(COUNT, "plan.count.combine", count, check.combine().key());
        }
        if (check.asSize().filter(CheckOfSize::cutAgain).isPresent()) {
            keys.problem(COUNT, "plan.count.cut-again", count);
        }
    }

    private static Instances instances(TableKeys keys) {
        Optional<Integer> count = keys.ifAny(COUNT, keys::whole);
        Optional<Integer> one = keys.ifAny(INSTANCE, keys::whole);
        Optional<Instances.Report> report =
                keys.ifAny(REPORT, key -> keys.word(key, List.of(Instances.Report.values()), Instances.Report::key));
        count.filter(many -> !isCount(many)).ifPresent(many -> keys.problem(COUNT, "plan.count", many, MOST));
        if (keys.has(INSTANCE) && !keys.has(COUNT)) {
            keys.problem(INSTANCE, "plan.instance.no-count");
        }
        if (keys.has(REPORT) && (keys.has(INSTANCE) || !keys.has(COUNT))) {
            keys.problem(REPORT, "plan.report.one");
        }
        Optional<Integer> sound = count.filter(OnDrawingRules::isCount);
        Optional<Integer> inRange = one.filter(number -> {
            boolean is = number >= 1 && number <= sound.orElse(MOST);
            if (!is) {
                keys.problem(INSTANCE, "plan.instance", number, sound.orElse(MOST));
            }
            return is && sound.isPresent();
        });
        return new Instances(sound.orElse(1), inRange, report.orElse(Instances.Report.EACH));
    }

    private static boolean isCount(int many) {
        return many >= 1 && many <= MOST;
    }
}
