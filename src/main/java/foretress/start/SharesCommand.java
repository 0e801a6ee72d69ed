package foretress.start;

import foretress.backup.KeyShares;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "key-shares",
    description = { "Prints master.key in shares for people to keep, so many of which together give it back.",
        "With --join it reads typed shares, one a line, and writes master.key where none is." })
final class SharesCommand extends StoreCommand {
    @Option(names = "--needed", paramLabel = "M", defaultValue = "3",
        description = "How many give the key back: 2 to all; otherwise 3.") int needed;
    @Option(names = "--of", paramLabel = "N", defaultValue = "5",
        description = "How many are made: at most 16; otherwise 5.") int of;
    @Option(names = "--join", paramLabel = "FILE", description = "Shares as they were typed, one a line.") Path join;

    SharesCommand(PrintStream out, PrintStream err) {
        super(out, err);
    }

    @Override
    int run(Settings settings, KeyFolder keys) throws StartRefused, IOException {
        return join == null ? print(keys) : recover(keys);
    }

    private int print(KeyFolder keys) throws StartRefused {
        if (needed < KeyShares.FEWEST || needed > of || of > KeyShares.MOST) {
            err.println("There can be %d to %d shares, and at least %d of them are needed.".formatted(KeyShares.FEWEST,
                KeyShares.MOST, KeyShares.FEWEST));
            return BAD_INPUT;
        }
        List<String> shares = KeyShares.split(keys.masters().at(clock.instant()).key(), needed, of, new SecureRandom());
        for (int i = 0; i < shares.size(); i++) {
            out.println("%n- - - - - - - - - - - - - - - - cut here - - - - - - - - - - - - - - - -%n".formatted());
            out.println("Share %d of %d of a salon's master.key; any %d of them give it back.".formatted(i + 1, of,
                needed));
            out.println("Keep it apart from the others and tell nobody. There is no 0 and no 1 in it.%n".formatted());
            out.println(shares.get(i).replaceAll("((?:\\S{4} ){5}\\S{4}) ", "$1%n".formatted()));
        }
        return FINE;
    }

    private int recover(KeyFolder keys) throws IOException {
        try {
            List<String> typed = Files.readAllLines(join).stream().filter(line -> !line.isBlank()).toList();
            keys.putMaster(KeyShares.join(typed));
        } catch (KeyShares.Unusable unusable) {
            err.println(unusable.getMessage());
            return BAD_INPUT;
        }
        out.println("master.key was written into %s. Delete %s.".formatted(keys.folder(), join));
        return FINE;
    }
}
