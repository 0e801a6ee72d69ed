package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * What a JSON value must look like. It checks one and describes itself in JSON Schema (draft 2020-12, as OpenAPI 3.1 uses it),
 * so that what is documented is what is checked.
 */
interface Shape {
    Pattern NOT_BLANK = Pattern.compile("\\S", Pattern.UNICODE_CHARACTER_CLASS);

    void check(JsonNode value, String pointer, Faults faults);

    /** @param named where the schemas that have a name of their own are gathered */
    ObjectNode describe(Map<String, ObjectNode> named);

    /** The same with a sentence for the document. */
    default Shape saying(String words) {
        Shape plain = this;
        return new Shape() {
            @Override
            public void check(JsonNode value, String pointer, Faults faults) {
                plain.check(value, pointer, faults);
            }

            @Override
            public ObjectNode describe(Map<String, ObjectNode> named) {
                return plain.describe(named).put("description", words);
            }
        };
    }

    /** The same under a name of its own in the document. */
    default Shape named(String name) {
        Shape plain = this;
        return new Shape() {
            @Override
            public void check(JsonNode value, String pointer, Faults faults) {
                plain.check(value, pointer, faults);
            }

            @Override
            public ObjectNode describe(Map<String, ObjectNode> named) {
                if (!named.containsKey(name)) {
                    named.put(name, plain.describe(named));
                }
                return node().put("$ref", "#/components/schemas/" + name);
            }
        };
    }

    private static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }

    private static ObjectNode typed(String type) {
        return node().put("type", type);
    }

    /** The parts of a shape without parts. */
    record Plain(Predicate<JsonNode> holds, String belongs, ObjectNode schema) implements Shape {
        @Override
        public void check(JsonNode value, String pointer, Faults faults) {
            faults.expect(holds.test(value), pointer, belongs);
        }

        @Override
        public ObjectNode describe(Map<String, ObjectNode> named) {
            return schema.deepCopy();
        }
    }

    static Shape flag() {
        return new Plain(JsonNode::isBoolean, "true or false belongs here", typed("boolean"));
    }

    /** 2.0 is whole, as JSON Schema counts. */
    static Shape whole(int least, int most) {
        return new Plain(
            n -> n.isNumber() && n.doubleValue() == Math.rint(n.doubleValue()) && n.doubleValue() >= least
                && n.doubleValue() <= most,
            "a whole number from %d to %d belongs here".formatted(least, most),
            typed("integer").put("minimum", least).put("maximum", most));
    }

    static Shape number(double least, double most) {
        return new Plain(n -> n.isNumber() && n.doubleValue() >= least && n.doubleValue() <= most,
            "a number from %s to %s belongs here".formatted(least, most),
            typed("number").put("minimum", least).put("maximum", most));
    }

    /** Any number; for answers only. */
    static Shape number() {
        return new Plain(JsonNode::isNumber, "a number belongs here", typed("number"));
    }

    /**
     * Text of so many characters, whole ones as JSON Schema counts them, and not only blanks where there must be any. Half a
     * surrogate pair is no character and could not be sent back.
     */
    static Shape text(int least, int most) {
        ObjectNode schema = typed("string").put("minLength", least).put("maxLength", most);
        return new Plain(n -> n.isTextual() && fits(n.textValue(), least, most),
            "text of %d to %d characters belongs here".formatted(least, most),
            least == 0 ? schema : schema.put("pattern", NOT_BLANK.pattern()));
    }

    private static boolean fits(String text, int least, int most) {
        int length = text.codePointCount(0, text.length());
        return length >= least && length <= most && wellFormed(text) && (least == 0 || NOT_BLANK.matcher(text).find());
    }

    /** Any text; for answers only. */
    static Shape text() {
        return new Plain(JsonNode::isTextual, "text belongs here", typed("string"));
    }

    private static boolean wellFormed(String text) {
        return text.codePoints().noneMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE || c == 0);
    }

    /** Text that a standard class can read. */
    static Shape read(Predicate<String> readable, String belongs, String format) {
        return new Plain(n -> n.isTextual() && readable.test(n.textValue()), belongs,
            typed("string").put("format", format));
    }

    static Shape matching(String pattern, Predicate<String> readable, String belongs) {
        Pattern compiled = Pattern.compile(pattern);
        return new Plain(
            n -> n.isTextual() && compiled.matcher(n.textValue()).matches() && readable.test(n.textValue()), belongs,
            typed("string").put("pattern", pattern));
    }

    static Shape code(Collection<String> codes) {
        Set<String> known = Set.copyOf(codes);
        ObjectNode schema = typed("string");
        codes.forEach(schema.putArray("enum")::add);
        return new Plain(n -> n.isTextual() && known.contains(n.textValue()), belongs(codes), schema);
    }

    private static String belongs(Collection<String> codes) {
        return codes.size() <= 60 ? "one of these codes belongs here: " + String.join(", ", codes)
            : "no such code is known here";
    }

    static Shape list(Shape entry, int least, int most) {
        return new Many(entry, least, most, false);
    }

    /** No entry may stand in it twice. */
    static Shape set(Shape entry, int least, int most) {
        return new Many(entry, least, most, true);
    }

    record Many(Shape entry, int least, int most, boolean distinct) implements Shape {
        @Override
        public void check(JsonNode value, String pointer, Faults faults) {
            if (!value.isArray() || value.size() < least || value.size() > most) {
                faults.add(pointer, "a list of %d to %d entries belongs here", least, most);
                return;
            }
            Set<JsonNode> seen = new HashSet<>();
            for (int i = 0; i < value.size(); i++) {
                String place = pointer + "/" + i;
                entry.check(value.get(i), place, faults);
                faults.expect(!distinct || seen.add(value.get(i)), place, "this stands in the list already");
            }
        }

        @Override
        public ObjectNode describe(Map<String, ObjectNode> named) {
            ObjectNode schema = typed("array");
            schema.set("items", entry.describe(named));
            if (distinct) {
                schema.put("uniqueItems", true);
            }
            return schema.put("minItems", least).put("maxItems", most);
        }
    }

    static Fields object() {
        return new Fields(new LinkedHashMap<>(), Set.of());
    }

    /** An object with these fields and no other. */
    record Fields(Map<String, Shape> shapes, Set<String> needed) implements Shape {
        /** With one more field that must be there. */
        Fields need(String name, Shape shape) {
            Set<String> more = new HashSet<>(needed);
            more.add(name);
            return new Fields(with(name, shape), more);
        }

        /** With one more field that may be left out. */
        Fields may(String name, Shape shape) {
            return new Fields(with(name, shape), needed);
        }

        /** With all of the other's too. */
        Fields and(Fields other) {
            Set<String> more = new HashSet<>(needed);
            more.addAll(other.needed);
            Map<String, Shape> all = new LinkedHashMap<>(shapes);
            all.putAll(other.shapes);
            return new Fields(all, more);
        }

        private Map<String, Shape> with(String name, Shape shape) {
            Map<String, Shape> more = new LinkedHashMap<>(shapes);
            more.put(name, shape);
            return more;
        }

        @Override
        public void check(JsonNode value, String pointer, Faults faults) {
            if (!value.isObject()) {
                faults.add(pointer, "an object belongs here");
                return;
            }
            shapes.keySet().stream().filter(name -> needed.contains(name) && !value.has(name))
                .forEach(name -> faults.add(Faults.below(pointer, name), "this field is missing"));
            value.properties().forEach(
                field -> checkField(field.getKey(), field.getValue(), Faults.below(pointer, field.getKey()), faults));
        }

        private void checkField(String name, JsonNode value, String pointer, Faults faults) {
            Optional<Shape> shape = Optional.ofNullable(shapes.get(name));
            faults.expect(shape.isPresent(), pointer, "there is no such field here");
            shape.ifPresent(s -> s.check(value, pointer, faults));
        }

        @Override
        public ObjectNode describe(Map<String, ObjectNode> named) {
            ObjectNode schema = typed("object");
            ObjectNode properties = schema.putObject("properties");
            shapes.forEach((name, shape) -> properties.set(name, shape.describe(named)));
            if (!needed.isEmpty()) {
                ArrayNode required = schema.putArray("required");
                shapes.keySet().stream().filter(needed::contains).forEach(required::add);
            }
            return schema.put("additionalProperties", false);
        }
    }

    /** An object by whatever names. */
    static Shape map(Shape entry) {
        return new Shape() {
            @Override
            public void check(JsonNode value, String pointer, Faults faults) {
                faults.expect(value.isObject(), pointer, "an object belongs here");
                value.properties().forEach(f -> entry.check(f.getValue(), Faults.below(pointer, f.getKey()), faults));
            }

            @Override
            public ObjectNode describe(Map<String, ObjectNode> named) {
                ObjectNode schema = typed("object");
                schema.set("additionalProperties", entry.describe(named));
                return schema;
            }
        };
    }

    static Either either() {
        return new Either(new LinkedHashMap<>());
    }

    /** One of several objects, told apart by the first of these fields that is there. */
    record Either(Map<String, Fields> byField) implements Shape {
        Either or(String field, Fields fields) {
            Map<String, Fields> more = new LinkedHashMap<>(byField);
            more.put(field, fields);
            return new Either(more);
        }

        @Override
        public void check(JsonNode value, String pointer, Faults faults) {
            Optional<Fields> meant =
                byField.entrySet().stream().filter(e -> value.has(e.getKey())).map(Map.Entry::getValue).findFirst();
            faults.expect(meant.isPresent(), pointer,
                "an object with one of these fields belongs here: " + String.join(", ", byField.keySet()));
            meant.ifPresent(fields -> fields.check(value, pointer, faults));
        }

        @Override
        public ObjectNode describe(Map<String, ObjectNode> named) {
            List<ObjectNode> ways = new ArrayList<>();
            byField.values().forEach(fields -> ways.add(fields.describe(named)));
            if (ways.size() == 1) {
                return ways.get(0);
            }
            ObjectNode schema = node();
            schema.putArray("oneOf").addAll(ways);
            return schema;
        }
    }
}
