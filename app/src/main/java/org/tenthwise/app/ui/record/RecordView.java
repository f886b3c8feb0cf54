package org.tenthwise.app.ui.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.VerdictMark;
import org.tenthwise.app.text.OutcomeWords;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.PagedRows;
import org.tenthwise.app.ui.record.RecordViewModel.RecordWays;
import org.tenthwise.app.ui.shell.Heading;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.SidedScreen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.app.ui.theme.ScreenSizes;
import org.tenthwise.app.ui.theme.Texts;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.words.Words;

/** What the record says and the part on the one side, every characteristic on the other, the ways out at the foot. */
public final class RecordView extends SidedScreen {

    private static final double OUTLINE_HEIGHT = 280;
    private static final double OUTLINE_BESIDE = 480;
    private static final double MARK = 18;
    /** From the top of a line of words to the mark beside it. */
    private static final double BESIDE_USUAL = 6;

    private static final double BESIDE_LARGE = 13;

    private final RecordViewModel model;
    private final Words words;
    private final PictureFrames pictures;
    private final RecordRows rows;
    private final PagedRows side;
    private final PagedRows table;
    private final HBox left;
    private final boolean large;

    public RecordView(RecordViewModel model, Words words, PictureFrames pictures, Navigator navigator) {
        super(words.say("sheet.title"));
        this.model = model;
        this.words = words;
        this.pictures = pictures;
        this.large = pictures.look().largeTextProperty().get();
        this.rows = new RecordRows(pictures, words);
        side = new PagedRows(words, 10);
        table = new PagedRows(words);
        HBox.setHgrow(side, Priority.ALWAYS);
        side.setPrefWidth(ScreenSizes.RECORD_SIDE - OUTLINE_BESIDE / 2);
        left = new HBox(16, side);
        left.getStyleClass().addAll("on-paper", "form-side");
        VBox right = new VBox(table, foot());
        VBox.setVgrow(table, Priority.ALWAYS);
        right.getStyleClass().addAll("on-sheet", "form-panel");
        rest(right);
        lay(heading(navigator), left, ScreenSizes.RECORD_SIDE, ScreenSizes.RECORD_ABOVE);
        owns(model.rowsValue().subscribe(all -> list(all)));
        owns(model.openedProperty()
                .subscribe((was, is) -> list(model.rowsValue().getValue())));
        owns(model.sheetProperty().subscribe(this::show));
        owns(model.writtenProperty().subscribe(this::show));
    }

    @Override
    public void onShown() {
        model.load();
    }

    @Override
    protected void arranged() {
        list(model.rowsValue().getValue());
        show();
    }

    /** Every row, and behind the one that is open its story, a line each. */
    private void list(List<RecordRow> all) {
        List<Region> lines = new ArrayList<>();
        int opened = -1;
        for (RecordRow row : all) {
            lines.add(rows.row(row, large, isWide(), () -> model.open(row.step())));
            if (model.openedProperty().get().equals(Optional.of(row.step()))) {
                opened = lines.size() - 1;
                lines.addAll(rows.story(model.story(row.step()), large));
            }
        }
        table.show(lines);
        if (opened >= 0) {
            table.reveal(opened);
        }
    }

    private Heading heading(Navigator navigator) {
        return RunHeading.titled(title(), words, navigator::back)
                .cell(
                        words.say("ask.part"),
                        said(sheet -> words.say(
                                "ask.part-revision",
                                sheet.plan().part().number(),
                                sheet.plan().part().revision())))
                .cell(words.say("ask.serial"), said(sheet -> sheet.run().begun().serial()))
                .cell(words.say("sheet.name"), said(sheet -> sheet.plan().name()));
    }

    private ObservableValue<String> said(Function<Sheet, String> say) {
        return model.sheetProperty().map(sheet -> sheet.map(say).orElse(""));
    }

    private void show() {
        model.sheetProperty().get().ifPresent(this::tell);
    }

    private void tell(Sheet sheet) {
        List<Region> said = new ArrayList<>();
        for (Caution caution : model.cautions()) {
            Label head = Texts.label(caution.head(), "strong", "unproven");
            head.setId("caution");
            said.add(head);
            if (!caution.why().isEmpty()) {
                said.add(Texts.label(caution.why(), "body"));
            }
        }
        Label outcome = Texts.label(model.outcomeValue().getValue(), "strong");
        outcome.setId("outcome");
        HBox heading = new HBox(12, outcome);
        heading.setAlignment(Pos.TOP_LEFT);
        OutcomeWords.shape(sheet).filter(shape -> model.cautions().isEmpty()).ifPresent(shape -> {
            String spoken = outcome.getText() + " " + model.signedValue().getValue();
            Region mark = pictures.fixed(new VerdictMark(shape, spoken), MARK, MARK, Role.PAPER);
            HBox.setMargin(mark, new Insets(large ? BESIDE_LARGE : BESIDE_USUAL, 0, 0, 0));
            heading.getChildren().add(0, mark);
        });
        said.add(heading);
        if (!model.writtenProperty().get().isEmpty()) {
            said.add(Texts.label(model.writtenProperty().get(), "body", "bold"));
        }
        if (model.opensFile()) {
            said.add(openKey());
        }
        said.add(Texts.label(model.signedValue().getValue(), "body", "bold"));
        for (RecordViewModel.Count count : model.countsValue().getValue()) {
            HBox line = new HBox(
                    12,
                    pictures.fixed(new VerdictMark(count.standing(), count.words()), MARK, MARK, Role.PAPER),
                    Texts.label(count.words(), "body"));
            line.setAlignment(Pos.CENTER_LEFT);
            said.add(line);
        }
        if (model.hasDocuments() && model.onwardsValue().getValue() == RecordWays.GO_ON) {
            said.add(documents(Key.Kind.PLAIN));
        }
        left.getChildren().setAll(side);
        new Pictures(words).numbered(sheet.plan()).ifPresent(part -> {
            if (large) {
                return;
            }
            if (isWide()) {
                said.add(pictures.small(part, ScreenSizes.RECORD_SIDE, OUTLINE_HEIGHT, Role.PAPER));
            } else {
                left.getChildren().add(pictures.fixed(part, OUTLINE_BESIDE, OUTLINE_HEIGHT, Role.PAPER));
            }
        });
        model.factsValue().getValue().forEach(fact -> said.add(Texts.label(fact, "body", "second")));
        side.show(said);
    }

    private Key openKey() {
        Key key = new Key(Key.Kind.PLAIN, words.say("sheet.open-file"), model::openFile);
        key.setId("open-file");
        key.disableProperty().bind(model.openingProperty());
        return key;
    }

    private VBox foot() {
        HBox files = new HBox(8, way("pages", Key.Kind.PLAIN, words.say("sheet.pages"), model::pages));
        for (RecordFormat as : model.formats()) {
            String name = name(as);
            Key key = way("hand-" + as.extension().replace('.', '-'), Key.Kind.PLAIN, name, () -> model.hand(as));
            key.speak(words.say("sheet.hand", name));
            if (isOfTheDrawing(as)) {
                key.setPrefWidth(USE_COMPUTED_SIZE);
            }
            files.getChildren().add(key);
        }
        HBox onwards = new HBox(8);
        VBox foot = new VBox(8, files, onwards);
        foot.getStyleClass().add("record-foot");
        foot.setMinHeight(USE_PREF_SIZE);
        owns(model.onwardsValue().subscribe(now -> onwards.getChildren().setAll(onwards(now))));
        return foot;
    }

    /** A kind of file by its ending; a table of the drawing has another word before that. */
    private String name(RecordFormat as) {
        return isOfTheDrawing(as)
                ? words.say("sheet.drawing-as-table")
                : as.extension().toUpperCase(Locale.ROOT);
    }

    private static boolean isOfTheDrawing(RecordFormat as) {
        return as.extension().indexOf('.') >= 0;
    }

    private List<Key> onwards(RecordWays now) {
        return switch (now) {
            case GO_ON ->
                List.of(
                        way("hand-over", Key.Kind.PLAIN, words.say("sheet.hand-over"), model::handOver),
                        way("sign", Key.Kind.PLAIN, words.say("sheet.sign"), model::sign),
                        way("go-on", Key.Kind.COMMIT, words.say("home.go-on"), model::goOn));
            case NOTHING -> List.of(history());
            case LOOK -> List.of(history(), way("go-on", Key.Kind.PLAIN, words.say("home.look"), model::goOn));
            case DOCUMENTS ->
                List.of(
                        history(),
                        bundle(),
                        way("sign-further", Key.Kind.PLAIN, words.say("sheet.sign-further"), model::sign),
                        documents(Key.Kind.COMMIT));
            case SIGN_AGAIN ->
                List.of(
                        history(),
                        bundle(),
                        way("sign-further", Key.Kind.PLAIN, words.say("sheet.sign-further"), model::sign));
        };
    }

    private Key history() {
        return way("history", Key.Kind.PLAIN, words.say("history.title"), model::history);
    }

    private Key bundle() {
        Key key = way("hand-bundle", Key.Kind.PLAIN, words.say("hand-bundle.key"), model::bundle);
        key.speak(words.say("hand-bundle.spoken"));
        return key;
    }

    private Key documents(Key.Kind kind) {
        return way("documents", kind, words.say("documents.title"), model::documents);
    }

    private Key way(String id, Key.Kind kind, String text, Runnable press) {
        Key key = new Key(kind, text, press).shared();
        key.setId(id);
        key.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.busyProperty().get()
                                || model.sheetProperty().get().isEmpty(),
                        model.busyProperty(),
                        model.sheetProperty()));
        return key;
    }
}
