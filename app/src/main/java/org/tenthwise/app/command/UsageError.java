package org.tenthwise.app.command;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tenthwise.model.words.Message;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * What is wrong with a command as it was typed, of which picocli speaks in English alone.
 *
 * @param typed all that was typed behind the name of the program
 */
record UsageError(ParameterException e, List<String> typed) {

    private static final String DASH = "-";

    /** Absent for what is not known here. */
    Optional<Message> why() {
        if (e instanceof UnmatchedArgumentException unmatched) {
            return Optional.of(unmatched(unmatched));
        }
        if (e instanceof MissingParameterException missing) {
            return Optional.of(missing(missing.getMissing()));
        }
        if (e instanceof OverwrittenOptionException twice) {
            ArgSpec option = twice.getOverwritten();
            return Optional.of(Message.of("command.wrong.twice", name(option), option.paramLabel()));
        }
        return Optional.ofNullable(e.getArgSpec()).flatMap(this::value);
    }

    private Message unmatched(UnmatchedArgumentException unmatched) {
        List<String> which = unmatched.getUnmatched();
        String first = which.get(0);
        if (!first.startsWith(DASH) && e.getCommandLine().getParent() == null) {
            return Message.of("command.no-command", first);
        }
        String key = unmatched.isUnknownOption() ? "command.wrong.unknown" : "command.wrong.unmatched";
        return listed(key, which).with("at", place(first));
    }

    /** Where it stands; the same behind an option is the value of that. */
    private int place(String unmatched) {
        return IntStream.range(0, typed.size())
                .filter(i -> typed.get(i).equals(unmatched))
                .filter(i -> i == 0 || !typed.get(i - 1).startsWith(DASH))
                .reduce(0, (earlier, later) -> later);
    }

    private Message missing(List<ArgSpec> missing) {
        List<String> which = missing.stream()
                .map(one -> one.isOption() ? name(one) + "=" + one.paramLabel() : one.paramLabel())
                .toList();
        if (missing.stream().noneMatch(ArgSpec::isOption)) {
            return listed("command.wrong.missing-parameters", which);
        }
        if (!missing.stream().allMatch(ArgSpec::isOption)) {
            return listed("command.wrong.missing-both", which);
        }
        int option = typed.indexOf(name(missing.get(0)));
        if (option < 0) {
            return listed("command.wrong.missing-options", which);
        }
        return option + 1 < typed.size()
                ? Message.of("command.wrong.option-behind", typed.get(option), typed.get(option + 1))
                : Message.of(
                        "command.wrong.nothing-behind",
                        typed.get(option),
                        missing.get(0).paramLabel());
    }

    private Optional<Message> value(ArgSpec argument) {
        List<Class<?>> types = List.of(argument.auxiliaryTypes());
        Optional<String> key = types.contains(LocalDate.class)
                ? Optional.of("command.wrong.no-day")
                : types.contains(Integer.class) || types.contains(BigDecimal.class)
                        ? Optional.of("command.wrong.no-number")
                        : argument.arity().max() == 0 ? Optional.of("command.wrong.flag") : Optional.empty();
        return key.map(wrong -> Message.of(wrong, name(argument), e.getValue()));
    }

    private static Message listed(String key, List<String> which) {
        return Message.of(key)
                .with("n", which.size())
                .with(
                        "which",
                        which.stream()
                                .map(one -> Message.of("command.wrong.quoted", one))
                                .toList());
    }

    private static String name(ArgSpec argument) {
        return argument.isOption() ? ((OptionSpec) argument).longestName() : argument.paramLabel();
    }
}
