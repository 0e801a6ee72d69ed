package foretress.start;

import foretress.running.OwnerOnly;
import foretress.vault.KeyFingerprint;
import foretress.vault.MasterKeys;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The folder with the keys, which should lie elsewhere than the database they open. */
record KeyFolder(Path folder) {
    private static final SecureRandom RANDOM = new SecureRandom();

    Path file(Key key) {
        return folder.resolve(key.file);
    }

    /** Makes every key that is not there; call it only where no database exists that an old key belongs to. */
    List<Key> makeMissing() throws IOException {
        OwnerOnly.folder(folder);
        return made(key -> true);
    }

    /** @throws FileAlreadyExistsException where there is one */
    void putMaster(byte[] bytes) throws IOException {
        OwnerOnly.folder(folder);
        if (Files.exists(file(Key.MASTER))) {
            throw new FileAlreadyExistsException(file(Key.MASTER) + " is there already and was left as it is");
        }
        OwnerOnly.write(file(Key.MASTER), Base64.getEncoder().encodeToString(bytes) + "\n");
    }

    /** Those that may be made afresh at any time; which of them were missing. */
    List<Key> makeReplaceable() throws IOException {
        return made(key -> !key.irreplaceable);
    }

    private List<Key> made(Predicate<Key> which) throws IOException {
        var made = new ArrayList<Key>();
        for (Key key : Key.values()) {
            if (which.test(key) && Files.notExists(file(key))) {
                make(key);
                made.add(key);
            }
        }
        return made;
    }

    boolean has(Key key) {
        return Files.exists(file(key));
    }

    String backupKeyWasMade() {
        return "backup.key was made in %s. Copy it away like the others: backups from now on open with no other key, "
            .formatted(folder) + "and with an older backup.key you open only those of before.";
    }

    private void make(Key key) throws IOException {
        OwnerOnly.write(file(key), Base64.getEncoder().encodeToString(random()) + "\n");
    }

    private static byte[] random() {
        byte[] bytes = new byte[Key.BYTES];
        RANDOM.nextBytes(bytes);
        return bytes;
    }

    /** @throws StartRefused naming the first key that is not there, though a database was made with it */
    void needAll() throws StartRefused {
        for (Key key : Key.values()) {
            if (key.irreplaceable && Files.notExists(file(key))) {
                throw new StartRefused(StartRefused.Reason.KEY_MISSING,
                    "There is a database, but not its key %s. Put the key back from where you keep it "
                        + "(FORETRESS_KEYS names the folder); without it the database cannot be opened, and a new key would not help.",
                    file(key));
            }
        }
    }

    byte[] read(Key key) throws StartRefused {
        byte[] bytes = decoded(key);
        if (bytes.length < Key.BYTES) {
            throw new StartRefused(
                key.irreplaceable ? StartRefused.Reason.KEY_WRONG : StartRefused.Reason.KEY_TOO_SHORT,
                "The key in %s is too short: it has %d bytes and needs %d in base64. %s", file(key), bytes.length,
                Key.BYTES,
                key.irreplaceable ? "Put the right key back from where you keep it."
                    : "Delete the file; a new one is made at the next start.");
        }
        return Arrays.copyOf(bytes, Key.BYTES);
    }

    private byte[] decoded(Key key) throws StartRefused {
        try {
            return Base64.getDecoder().decode(Files.readString(file(key), StandardCharsets.US_ASCII).strip());
        } catch (IllegalArgumentException e) {
            return new byte[0];
        } catch (IOException e) {
            throw unreadable(key, e);
        }
    }

    private StartRefused unreadable(Key key, IOException e) {
        return new StartRefused(StartRefused.Reason.FOLDER,
            "The key %s cannot be read by the user who starts the server: %s.", file(key), e.getMessage());
    }

    /** The master keys there are: the one that wraps, those to come and those of before. */
    MasterKeys masters() throws StartRefused {
        try {
            return MasterKeys.read(Files.readString(file(Key.MASTER), StandardCharsets.US_ASCII));
        } catch (IllegalArgumentException e) {
            throw new StartRefused(StartRefused.Reason.KEY_WRONG,
                "The key in %s cannot be read: %s. Put the right key back from where you keep it.", file(Key.MASTER),
                e.getMessage());
        } catch (IOException e) {
            throw unreadable(Key.MASTER, e);
        }
    }

    /** A fresh one beside those there are, used from that moment on. */
    void addMaster(Instant from) throws StartRefused, IOException {
        putMasters(masters().with(random(), from));
    }

    /** In place of those there are. */
    void putMasters(MasterKeys keys) throws IOException {
        OwnerOnly.write(file(Key.MASTER), keys.text());
    }

    /** Of the keys that a database can belong to, the newest master key's first. */
    List<String> fingerprints() throws StartRefused {
        String ledger = KeyFingerprint.of(read(Key.LEDGER));
        return masters().newestFirst().stream().map(master -> master.fingerprint() + "-" + ledger).toList();
    }

    /** @throws StartRefused naming what a restore needs, and what of it is not there */
    void needForRestore() throws StartRefused {
        List<Key> missing =
            Stream.of(Key.MASTER, Key.LEDGER, Key.BACKUP).filter(key -> Files.notExists(file(key))).toList();
        if (!missing.isEmpty()) {
            throw new StartRefused(StartRefused.Reason.KEY_MISSING,
                "A restore needs three keys of the salon in %s: master.key, ledger.key and backup.key. Not there: %s. "
                    + "Copy them from where you keep them; new ones would open nothing.",
                folder, missing.stream().map(key -> key.file).collect(Collectors.joining(", ")));
        }
    }

    List<Path> openToOthers() throws IOException {
        var open = new ArrayList<Path>();
        for (Key key : Key.values()) {
            if (Files.exists(file(key)) && OwnerOnly.isOpenToOthers(file(key))) {
                open.add(file(key));
            }
        }
        return open;
    }
}
