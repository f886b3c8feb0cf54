package org.tenthwise.app.ui.run;

import java.time.Clock;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.value.ObservableValue;
import org.tenthwise.app.ui.keys.Settling;
import org.tenthwise.app.ui.run.RunScreenState.OtherWay;
import org.tenthwise.model.words.Words;

/**
 * The key that keeps a figure that is far off, on purpose. Where there is none it leads to the other way the pass can
 * go on, and where there is none of these either it measures the check anew.
 */
final class KeepOrAgain {

    private final ReadOnlyObjectProperty<RunScreenState> shown;
    private final ReadOnlyObjectProperty<Optional<String>> keepable;
    private final Words words;
    private final Settling settling;

    /** @param keepable the figure far off; absent where none was refused */
    KeepOrAgain(
            ReadOnlyObjectProperty<RunScreenState> shown,
            ReadOnlyObjectProperty<Optional<String>> keepable,
            Words words,
            Clock clock) {
        this.shown = shown;
        this.keepable = keepable;
        this.words = words;
        this.settling = new Settling(clock);
        shown.subscribe(now -> settling.means(keepsOrLeads()));
        keepable.subscribe(figure -> settling.means(keepsOrLeads()));
    }

    /** What it says. */
    ObservableValue<String> label() {
        return Bindings.createStringBinding(
                () -> keepable.get()
                        .map(figure -> words.say("run.keep", figure.replace('-', '\u2212')))
                        .or(() -> otherWay().map(OtherWay::label))
                        .orElseGet(() -> words.say("run.read-again")),
                keepable,
                shown);
    }

    /** Whether there is anything for it to do. */
    ObservableValue<Boolean> possible() {
        return Bindings.createBooleanBinding(
                () -> keepable.get().isPresent()
                        || otherWay().isPresent()
                        || shown.get().allowed().again(),
                keepable,
                shown);
    }

    /** Whether it has meant the same for long enough to act. */
    boolean isSettled() {
        return settling.settled();
    }

    Optional<OtherWay> otherWay() {
        return shown.get().allowed().otherWay();
    }

    /** The figure it keeps, or the other way it leads to; that it measures anew is neither. */
    private Optional<Object> keepsOrLeads() {
        return keepable.get().<Object>map(figure -> figure).or(() -> otherWay().map(OtherWay::meaning));
    }
}
