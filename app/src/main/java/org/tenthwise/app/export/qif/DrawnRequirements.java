package org.tenthwise.app.export.qif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;

/**
 * The requirements of the drawing: what each check of them found, and those that none answers.
 *
 * @param checked lines of the account by their check, in the order of the drawing, one an instance where they are told
 *     apart
 * @param leftOut those that this kind of run does not ask
 * @param unanswered balloons that only checks on the way name
 */
record DrawnRequirements(
        List<List<AccountLine.Checked>> checked,
        List<AccountLine.NotInThisRun> leftOut,
        List<AccountLine.Unanswered> unanswered) {

    static DrawnRequirements of(Sheet sheet) {
        Map<Integer, List<AccountLine.Checked>> checked = new LinkedHashMap<>();
        List<AccountLine.NotInThisRun> leftOut = new ArrayList<>();
        List<AccountLine.Unanswered> unanswered = new ArrayList<>();
        DrawingAccount.ofEach(sheet)
                .lines()
                .forEach(line -> line.match(new AccountLine.Cases<Boolean>() {
                    @Override
                    public Boolean checked(AccountLine.Checked found) {
                        return checked.computeIfAbsent(found.line().step().number(), first -> new ArrayList<>())
                                .add(found);
                    }

                    @Override
                    public Boolean unanswered(AccountLine.Unanswered open) {
                        return unanswered.add(open);
                    }

                    @Override
                    public Boolean notInThisRun(AccountLine.NotInThisRun left) {
                        return leftOut.add(left);
                    }
                }));
        return new DrawnRequirements(List.copyOf(checked.values()), leftOut, unanswered);
    }

    /** Whether a line has its place in the account of the drawing: not what the part is made of or put through. */
    static boolean isOfDrawing(Line line) {
        return line.isOfDrawing() && !DrawingAccount.isOfProductAlone(line);
    }
}
