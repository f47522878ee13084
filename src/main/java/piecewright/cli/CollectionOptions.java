package piecewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import piecewright.app.CollectionCalendar.Choices;
import piecewright.publish.Account;
import piecewright.publish.CalDavPublisher.IfAbsent;
import piecewright.publish.CollectionUrl;
import piecewright.publish.PasswordSource;

/** A collection of a calendar server, and who is let in. The password is never stored. */
final class CollectionOptions {
    @Option(
            names = "--collection",
            paramLabel = "URL",
            description = "Publish to this CalDAV calendar: its https address, from the account's calendar settings.")
    private @Nullable String collection;

    @Option(names = "--user", paramLabel = "NAME", description = "Name of the account there.")
    private @Nullable String user;

    @Option(
            names = "--password-env",
            paramLabel = "VARIABLE",
            description = "Environment variable with the app password. Left out: you are asked.")
    private @Nullable String variable;

    @Option(names = "--password-file", paramLabel = "FILE", description = "Or a file with it that only you may read.")
    private @Nullable Path file;

    @Option(names = "--make", description = "Make the collection if there is none.")
    private boolean make;

    @Option(
            names = "--overwrite",
            paramLabel = "ACT",
            description = "Of an entry that you changed there: write the plan's, such as steep-1.drain.")
    private List<String> overwrite = new ArrayList<>();

    @Option(names = "--keep", paramLabel = "ACT", description = "Or keep yours until the plan changes it again.")
    private List<String> keep = new ArrayList<>();

    boolean given() {
        return collection != null;
    }

    CollectionUrl collection() throws OptionException {
        String typed = String.valueOf(collection);
        Optional<CollectionUrl.Refusal> refusal = CollectionUrl.refusalOf(typed);
        if (refusal.isEmpty()) return CollectionUrl.of(typed);
        throw new OptionException(
                "--collection",
                switch (refusal.get()) {
                    case NOT_AN_ADDRESS ->
                        "is no address of a calendar; write it like https://calendar.example.org/me/malt/";
                    case NOT_HTTPS -> "must begin with https://, or anybody on the way could read the password";
                    case HOLDS_A_PASSWORD -> "must not hold name or password; give --user, the password is asked for";
                });
    }

    IfAbsent ifAbsent() {
        return make ? IfAbsent.MAKE_IT : IfAbsent.REFUSE;
    }

    Choices choices() throws OptionException {
        for (String act : keep) {
            if (overwrite.contains(act)) {
                throw new OptionException("--keep", act + " stands behind --overwrite too; keep one of the two");
            }
        }
        return new Choices(new HashSet<>(overwrite), new HashSet<>(keep));
    }

    Account account(Secrets secrets) throws OptionException {
        if (user == null) throw new OptionException("--user", "is missing; give the name of the account");
        char[] password = password(secrets);
        try {
            return new Account(user, password);
        } catch (IllegalArgumentException notAName) {
            throw new OptionException("--user", "must be some text without colon");
        } finally {
            Arrays.fill(password, '\0');
        }
    }

    private char[] password(Secrets secrets) throws OptionException {
        if (variable != null && file != null) {
            throw new OptionException("--password-file", "stands beside --password-env; give one of the two");
        }
        if (variable != null) {
            return found("--password-env", PasswordSource.inEnvironment(secrets.environment(), variable));
        }
        if (file != null) return found("--password-file", PasswordSource.inFile(file));
        return secrets.asked()
                .get()
                .filter(typed -> typed.length > 0)
                .orElseThrow(() -> new OptionException(
                        "--password-env",
                        "is missing, and there is nobody to ask; give the password in an environment variable or a"
                                + " file (--password-file)"));
    }

    private static char[] found(String option, PasswordSource.Answer answer) throws OptionException {
        if (answer instanceof PasswordSource.Answer.Found found) return found.password();
        if (answer instanceof PasswordSource.Answer.NotSet empty) {
            throw new OptionException(option, empty.where() + " holds nothing; put the app password there");
        }
        if (answer instanceof PasswordSource.Answer.OpenToOthers open) {
            throw new OptionException(
                    option, open.file() + " can be read by others; let only its owner read it (chmod 600)");
        }
        PasswordSource.Answer.Unreadable gone = (PasswordSource.Answer.Unreadable) answer;
        throw new OptionException(option, gone.file() + " cannot be read; check its name and permissions");
    }
}
