package org.tenthwise.model.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.CheckOfDimension;
import org.tenthwise.model.plan.Instances;
import org.tenthwise.model.plan.Slot;
import org.tenthwise.model.verdict.Verdict;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * What a check found about each of several alike. Its places belong to them in order, as many to each.
 *
 * <p>One passes only where every reading of it is there and inside by itself. Where each of them would and the check
 * does not, what is against the check is against all of them.
 */
final class InstancesFound {

    private final Optional<BalloonNumber> balloon;
    private final Line line;
    private final CheckOfDimension check;
    private final int count;

    private InstancesFound(Optional<BalloonNumber> balloon, Line line, CheckOfDimension check) {
        this.balloon = balloon;
        this.line = line;
        this.check = check;
        this.count = line.step().drawing().instances().count();
    }

    /**
     * The lines a check has in the account: one, or as the plan asks for several alike.
     *
     * @param apart whether each of several alike has one of its own whatever the plan asks
     */
    static List<AccountLine> of(Optional<BalloonNumber> balloon, Line line, boolean apart) {
        Instances instances = line.step().drawing().instances();
        if (instances.areSeveral()) {
            Optional<CheckOfDimension> each = line.step()
                    .check()
                    .asDimension()
                    .filter(read -> read.places().size() % instances.count() == 0);
            if (each.isPresent()) {
                return new InstancesFound(balloon, line, each.get())
                        .lines(apart ? Instances.Report.EACH : instances.report());
            }
        }
        return List.of(new AccountLine.Checked(
                balloon,
                line,
                instances.areSeveral()
                        ? all(instances.count())
                        : instances.one().map(List::of).orElse(List.of()),
                line.finding().measured(),
                line.finding().verdict().standing()));
    }

    private static List<Integer> all(int count) {
        return IntStream.rangeClosed(1, count).boxed().toList();
    }

    /** What does not conform has a line of its own whatever is asked. */
    private List<AccountLine> lines(Instances.Report report) {
        List<AccountLine.Checked> each = each();
        if (report == Instances.Report.EACH) {
            return List.copyOf(each);
        }
        List<AccountLine.Checked> out = each.stream()
                .filter(one -> one.standing() != VerdictKind.PASS && one.standing() != VerdictKind.OPEN)
                .toList();
        List<AccountLine.Checked> others =
                each.stream().filter(one -> !out.contains(one)).toList();
        Stream<AccountLine.Checked> together = others.isEmpty() ? Stream.empty() : Stream.of(together(others));
        return Stream.concat(together, out.stream())
                .map(AccountLine.class::cast)
                .toList();
    }

    private AccountLine.Checked together(List<AccountLine.Checked> some) {
        return new AccountLine.Checked(
                balloon,
                line,
                some.stream().flatMap(one -> one.instances().stream()).toList(),
                some.stream().flatMap(one -> one.measured().stream()).toList(),
                some.stream().allMatch(one -> one.standing() == VerdictKind.PASS)
                        ? VerdictKind.PASS
                        : VerdictKind.OPEN);
    }

    private List<AccountLine.Checked> each() {
        List<AccountLine.Checked> each = new ArrayList<>();
        for (int number : all(count)) {
            List<Measured> read = line.finding().measured().stream()
                    .filter(measured -> isOf(number, measured.slot()))
                    .toList();
            each.add(new AccountLine.Checked(balloon, line, List.of(number), read, standing(number, read)));
        }
        VerdictKind whole = line.finding().verdict().standing();
        return each.stream().allMatch(one -> one.standing() == VerdictKind.PASS) && whole != VerdictKind.PASS
                ? each.stream()
                        .map(one -> new AccountLine.Checked(balloon, line, one.instances(), one.measured(), whole))
                        .toList()
                : each;
    }

    private boolean isOf(int number, Slot slot) {
        int placesEach = check.places().size() / count;
        return check.places().indexOf(slot.place()) / placesEach == number - 1;
    }

    /** The worst of its readings; what is out is out, whatever is still to be read. */
    private VerdictKind standing(int number, List<Measured> read) {
        List<VerdictKind> found = read.stream()
                .map(measured ->
                        line.finding().alone(measured).orElse(line.finding().verdict()))
                .map(Verdict::standing)
                .toList();
        long asked = check.slots().stream().filter(slot -> isOf(number, slot)).count();
        if (found.contains(VerdictKind.FAIL)) {
            return VerdictKind.FAIL;
        }
        if (read.size() < asked) {
            return VerdictKind.OPEN;
        }
        return Stream.of(VerdictKind.CUT_AGAIN, VerdictKind.UNPROVEN, VerdictKind.OPEN)
                .filter(found::contains)
                .findFirst()
                .orElse(VerdictKind.PASS);
    }
}
