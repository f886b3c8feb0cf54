package org.tenthwise.app.ui.bench;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.layout.Region;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.words.Words;

/** The bench: the list of sums, or the one in hand. */
public final class BenchView extends Screen {

    private final BenchViewModel model;
    private final PictureFrames pictures;
    private final Words words;
    private final Map<SumViewModel, SumView> sums = new HashMap<>();
    private Optional<SumView> sum = Optional.empty();
    private final BenchList list;
    private Arrangement arrangement = Arrangement.LANDSCAPE;

    public BenchView(BenchViewModel model, PictureFrames pictures, Words words) {
        super(words.say("bench.title"));
        this.model = model;
        this.pictures = pictures;
        this.words = words;
        list = new BenchList(model, pictures, words);
        Key published = new Key(Key.Kind.PLAIN, words.say("reference.title"), model::published);
        published.setId("published");
        published.getStyleClass().add("home-setting");
        published.setMinWidth(USE_PREF_SIZE);
        setTop((model.run().isEmpty()
                        ? RunHeading.titled(title(), words, model::back)
                        : RunHeading.of(title(), new SimpleObjectProperty<>(model.run()), words, model::back))
                .end(published));
        owns(model.groupProperty().subscribe(list::show));
        owns(model.inHandProperty().subscribe(this::show));
        owns(pictures.look().largeTextProperty().subscribe(large -> arrange()));
        owns(pictures.look().glovesProperty().subscribe(gloves -> arrange()));
    }

    private void show(Optional<SumViewModel> inHand) {
        sum = inHand.map(one -> sums.computeIfAbsent(one, this::view));
        arrange();
        setCenter(sum.<Region>map(view -> view).orElse(list));
    }

    private SumView view(SumViewModel one) {
        SumView view = new SumView(one, model::list, pictures, words);
        owns(one.shownProperty().subscribe(view::show));
        return view;
    }

    private void arrange() {
        list.arrange(arrangement);
        sum.ifPresent(view -> view.arrange(arrangement, pictures.look()));
    }

    @Override
    public void arrange(Arrangement now) {
        arrangement = now;
        arrange();
    }

    @Override
    public Typing typing() {
        return model;
    }
}
