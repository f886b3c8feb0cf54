package org.tenthwise.app.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.util.Subscription;
import org.tenthwise.app.ui.form.RunHeading;
import org.tenthwise.app.ui.keys.Key;
import org.tenthwise.app.ui.keys.Typing;
import org.tenthwise.app.ui.shell.Arrangement;
import org.tenthwise.app.ui.shell.Screen;
import org.tenthwise.app.ui.theme.PictureFrames;
import org.tenthwise.model.words.Words;

/** The bench: the list of sums, or the one in hand. */
public final class BenchView extends BorderPane implements Screen {

    private final BenchViewModel model;
    private final PictureFrames pictures;
    private final Words words;
    private final List<Subscription> following = new ArrayList<>();
    private Optional<SumView> sum = Optional.empty();
    private final BenchTiles tiles;
    private Arrangement arrangement = Arrangement.LANDSCAPE;

    public BenchView(BenchViewModel model, PictureFrames pictures, Words words) {
        this.model = model;
        this.pictures = pictures;
        this.words = words;
        tiles = new BenchTiles(model, pictures, words);
        Key published = new Key(Key.Kind.PLAIN, words.say("reference.title"), model::published);
        published.setId("published");
        published.getStyleClass().add("home-setting");
        published.setMinWidth(USE_PREF_SIZE);
        setTop((model.run().isEmpty()
                        ? RunHeading.titled(words.say("bench.title"), words, model::back)
                        : RunHeading.of(
                                words.say("bench.title"), new SimpleObjectProperty<>(model.run()), words, model::back))
                .end(published));
        following.add(model.inHandProperty().subscribe(this::show));
        following.add(pictures.look().largeTextProperty().subscribe(large -> arrange()));
        following.add(pictures.look().glovesProperty().subscribe(gloves -> arrange()));
    }

    private void show(Optional<SumViewModel> inHand) {
        sum = inHand.map(one -> new SumView(one, model::list, pictures, words));
        arrange();
        setCenter(sum.<Region>map(view -> view).orElse(tiles));
    }

    private void arrange() {
        tiles.arrange(arrangement);
        sum.ifPresent(view -> view.arrange(
                arrangement,
                pictures.look().largeTextProperty().get(),
                pictures.look().glovesProperty().get()));
    }

    @Override
    public Region root() {
        return this;
    }

    @Override
    public String title() {
        return words.say("bench.title");
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

    @Override
    public void onGone() {
        following.forEach(Subscription::unsubscribe);
    }
}
