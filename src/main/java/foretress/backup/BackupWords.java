package foretress.backup;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words about backups on the owner's page; they stand in messages/backup.properties under the same keys. */
@MessageBundle("backup")
public interface BackupWords {
    @Message
    String failed();
    @Message
    String last(String when);
    @Message
    String late();
    @Message
    String never();
    @Message
    String now();
    @Message
    String text();
    @Message
    String title();
    @Message
    String unset();
}
