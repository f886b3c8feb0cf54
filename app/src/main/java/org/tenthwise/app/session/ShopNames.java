package org.tenthwise.app.session;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.app.history.History;
import org.tenthwise.app.history.NameUse;
import org.tenthwise.app.session.ShopBook.Shop;
import org.tenthwise.app.store.Ledger;
import org.tenthwise.model.run.ShopEvent;

/**
 * The machines and the people of a shop: those of its runs, that of the run last worked on first, and those that were
 * only named. Used from the thread of the ledger.
 */
public final class ShopNames {

    /** What is named. */
    public enum Kind {
        MACHINE,
        PERSON
    }

    /**
     * One of them.
     *
     * @param used whether a run has it: then it is offered whatever is on the list
     * @param known what was last said of the register, of a machine
     */
    public record Name(String name, boolean used, Optional<ShopEvent.MachineKnown> known) {}

    private final Ledger ledger;
    private final ShopBook book;

    ShopNames(Ledger ledger, ShopBook book) {
        this.ledger = ledger;
        this.book = book;
    }

    /** What is offered where a person is asked for. */
    public List<String> people() {
        return offered(NameUse.Kind.PERSON, book.kept().people());
    }

    /** What is offered where a machine is asked for. */
    public List<String> machines() {
        return offered(NameUse.Kind.MACHINE, book.kept().machines());
    }

    private List<String> offered(NameUse.Kind kind, List<String> named) {
        return Stream.concat(used(kind).stream(), named.stream()).distinct().toList();
    }

    private List<String> used(NameUse.Kind kind) {
        History history = ledger.history();
        return history.names(kind, "");
    }

    /** Those of {@code kind}, with what is known of them. */
    public List<Name> all(Kind kind) {
        return switch (kind) {
            case MACHINE -> all(used(NameUse.Kind.MACHINE), machines(), new MachineRack(ledger)::find);
            case PERSON -> all(used(NameUse.Kind.PERSON), people(), name -> Optional.empty());
        };
    }

    private static List<Name> all(
            List<String> used, List<String> offered, Function<String, Optional<ShopEvent.MachineKnown>> known) {
        return offered.stream()
                .map(name -> new Name(name, used.contains(name), known.apply(name)))
                .toList();
    }

    public void add(Kind kind, String name) {
        book.keep(book.kept().with(kind, name));
    }

    /** Takes a name off the list; in the runs it stands as it stood. */
    public void remove(Kind kind, String name) {
        book.keep(book.kept().without(kind, name));
    }

    /** Whether the shop has no run and has not left the first pages. */
    public boolean isNew() {
        return !book.kept().begun() && ledger.history().last().isEmpty();
    }

    /** The first pages were left: they are not shown by themselves any more. */
    public void begun() {
        Shop shop = book.kept();
        book.keep(new Shop(shop.machines(), shop.people(), true));
    }
}
