package foretress;

import java.util.Map;

/** The addresses that take a file, and the field it comes in. A new one stands here, and whoever adds it sees the tests that hold for all of them. */
public final class UploadDoors {
    public static final Map<String, String> ALL =
        Map.of("/a/{token}/photo", "photo", "/visits/{id}/bench/tests/{test}/photo", "photo",
            "/visits/{id}/noted/{note}/paper", "paper", "/visits/{id}/hair/photo", "photo", "/answers/photos/send",
            "photo");

    private UploadDoors() {}
}
