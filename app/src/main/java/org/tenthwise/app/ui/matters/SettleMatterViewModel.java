package org.tenthwise.app.ui.matters;

import java.util.Arrays;
import java.util.List;
import org.tenthwise.app.history.MatterKind;
import org.tenthwise.app.matters.MatterBook;
import org.tenthwise.app.matters.OpenMatter;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.model.words.Words;

/** What becomes of an open matter, by which document, and who signs for it. */
public final class SettleMatterViewModel {

    private static final int MOST = 120;

    private final OpenMatter matter;
    private final MatterRow row;
    private final Navigator navigator;
    private final FormViewModel form;
    private final Field<String> becomes;
    private final Field<String> who;
    private final List<String> people;
    private final List<String> ready;

    /** @param people names to be offered */
    public SettleMatterViewModel(
            OpenMatter matter,
            List<String> people,
            MatterBook book,
            LedgerTasks tasks,
            Words words,
            Navigator navigator) {
        this.matter = matter;
        this.row = new MatterRow(words);
        this.navigator = navigator;
        this.people = List.copyOf(people);
        ready = Arrays.stream(words.say("matters.becomes.ready", matter.matter().kind())
                        .split("\\|"))
                .map(String::strip)
                .toList();
        becomes =
                Field.words("becomes", words.say("matters.becomes"), words.say("matters.becomes.question"), true, MOST);
        Field<String> number = Field.words(
                "number",
                words.say("matters.number"),
                words.say("matters.number.question"),
                matter.matter().kind() == MatterKind.NONCONFORMANCE,
                MOST);
        who = Field.words("who", words.say("sign.who"), words.say("sign.who.question"), true, MOST);
        form = new FormViewModel(List.of(becomes, number, who), words, words.say("sign.act"), () -> {
            String name = who.reads();
            String said = becomes.reads();
            String document = number.reads();
            form().busy(true);
            tasks.run(
                    () -> {
                        book.settle(matter, name, said, document);
                        return true;
                    },
                    done -> navigator.back(),
                    () -> form().busy(false));
        });
        form.about(who);
    }

    /** What it is, and of which part or gauge. */
    public String title() {
        return row.title(matter);
    }

    /** At which check, and since when. */
    public String line() {
        return row.where(matter);
    }

    /** Whether there is a run to look at; a gauge has none. */
    public boolean isOfARun() {
        return matter.run().isPresent();
    }

    /** Shows the record of the run; what is filled in here stays. */
    public void look() {
        matter.run().ifPresent(run -> navigator.record(run.id()));
    }

    public FormViewModel form() {
        return form;
    }

    public void load() {
        becomes.offer(ready);
        who.offer(people);
    }
}
