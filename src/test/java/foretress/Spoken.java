package foretress;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a screen reader is given: Chromium's accessibility tree of the page as it stands, asked for over its own protocol. */
public final class Spoken {
    /** What can be acted on; each needs a name that says what for. */
    private static final Set<String> CONTROLS =
        Set.of("button", "link", "radio", "checkbox", "textbox", "combobox", "spinbutton", "DisclosureTriangle");
    /** What only its neighbours explain: it must stand in a group with the question for a name. */
    private static final Set<String> CHOICES = Set.of("radio", "checkbox");
    private static final Set<String> GROUPS = Set.of("group", "radiogroup");

    private final Map<String, JsonObject> nodes = new HashMap<>();

    private Spoken(Page page) {
        CDPSession session = page.context().newCDPSession(page);
        session.send("Accessibility.getFullAXTree").getAsJsonArray("nodes").forEach(node -> {
            JsonObject one = node.getAsJsonObject();
            nodes.put(one.get("nodeId").getAsString(), one);
        });
        session.detach();
    }

    /** What is missing from the tree: one heading of the first level, names, the group of each choice, the mistake of each wrong field. */
    public static List<String> faults(Page page) {
        return new Spoken(page).faults();
    }

    private List<String> faults() {
        List<String> found = new ArrayList<>();
        long first =
            nodes.values().stream().filter(n -> role(n).equals("heading") && property(n, "level").equals("1")).count();
        if (first != 1) {
            found.add(first + " headings of the first level");
        }
        for (String landmark : List.of("main", "banner")) {
            if (nodes.values().stream().noneMatch(n -> role(n).equals(landmark))) {
                found.add("no " + landmark);
            }
        }
        nodes.values().stream().filter(n -> !n.get("ignored").getAsBoolean()).forEach(n -> look(n, found));
        return found;
    }

    private void look(JsonObject node, List<String> found) {
        String role = role(node);
        String what = role + " '" + name(node) + "'";
        if (name(node).isBlank() && (CONTROLS.contains(role) || role.equals("alert"))) {
            found.add(what + " has no name");
        }
        if (property(node, "focusable").equals("true") && Set.of("generic", "none").contains(role)) {
            found.add(what + " can be reached and has no role");
        }
        if (CHOICES.contains(role) && !grouped(node)) {
            found.add(what + " stands in no group with a question");
        }
        if (property(node, "invalid").equals("true") && text(node, "description").isBlank()) {
            found.add(what + " is wrong and does not say why");
        }
    }

    private boolean grouped(JsonObject node) {
        for (JsonObject above = parent(node); above != null; above = parent(above)) {
            if (GROUPS.contains(role(above)) && !name(above).isBlank()) {
                return true;
            }
        }
        return false;
    }

    private JsonObject parent(JsonObject node) {
        return node.has("parentId") ? nodes.get(node.get("parentId").getAsString()) : null;
    }

    private static String role(JsonObject node) {
        return text(node, "role");
    }

    private static String name(JsonObject node) {
        return text(node, "name");
    }

    private static String text(JsonObject node, String key) {
        return node.has(key) && node.getAsJsonObject(key).has("value")
            ? node.getAsJsonObject(key).get("value").getAsString() : "";
    }

    private static String property(JsonObject node, String key) {
        JsonArray all = node.has("properties") ? node.getAsJsonArray("properties") : new JsonArray();
        for (JsonElement each : all) {
            JsonObject one = each.getAsJsonObject();
            if (one.get("name").getAsString().equals(key) && one.getAsJsonObject("value").has("value")) {
                return one.getAsJsonObject("value").get("value").getAsString();
            }
        }
        return "";
    }
}
